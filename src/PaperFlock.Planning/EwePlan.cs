using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning;

/// <param name="Standing">Whether she still counts for feeding, housing and the lambing curve.</param>
/// <param name="Litter">Lambs she is planned for: as scanned, 1 where nobody has scanned her, 0 when empty.</param>
/// <param name="Due">Null when she is empty, left out of the tup, or has lambed.</param>
/// <param name="Advice">What to do about her before the tup, with the reason.</param>
/// <param name="Chart">Code of the feed chart she is fed by in lamb; null when she is not to lamb this season.</param>
/// <param name="Pen">Name of the housing pen she is planned into; null when none.</param>
public sealed record EwePlan(
    Ewe Ewe,
    Standing Standing,
    int Litter,
    DueWindow? Due,
    TupAdvice Advice,
    string? Chart,
    string? Pen)
{
    public bool IsScanned => Ewe.Scan is not null;

    /// <summary>Still to lamb, as far as anyone knows.</summary>
    public bool IsCarrying => Standing == Standing.ToLamb;
}

public enum Standing
{
    ToLamb,
    Empty,
    LeftOut,
    Lambed,
}

/// <summary>When she should lamb, from the strongest evidence there is.</summary>
/// <param name="Words">The evidence in a shepherd's words, such as "marked Fri 14 Aug".</param>
/// <param name="FirstPossible">Gestation length after the first day this evidence allows; anchors feeding.</param>
/// <param name="LastPossible">Gestation length after the last day this evidence allows.</param>
/// <param name="Earliest">5 % point of <paramref name="Chances"/>.</param>
/// <param name="Likely">50 % point.</param>
/// <param name="Latest">95 % point.</param>
/// <param name="Chances">Chance of lambing on each day; sums to 1.</param>
public sealed record DueWindow(
    Evidence Evidence,
    string Words,
    LocalDate FirstPossible,
    LocalDate LastPossible,
    LocalDate Earliest,
    LocalDate Likely,
    LocalDate Latest,
    DayDistribution Chances)
{
    /// <summary>How the days are counted from the evidence, in sentences; empty where nothing was counted.</summary>
    public string Reckoning { get; init; } = "";
}

/// <summary>Strongest first.</summary>
public enum Evidence
{
    Lambed,
    MatingDay,
    Mark,
    ScanStage,
    TupStay,
}

/// <summary>Chances over consecutive days.</summary>
/// <param name="First">The day of the first element.</param>
/// <param name="Chances">Chance of each day from <paramref name="First"/> on; none negative.</param>
public sealed record DayDistribution(LocalDate First, ImmutableArray<double> Chances)
{
    public double On(LocalDate day)
    {
        var i = Period.DaysBetween(First, day);
        return i >= 0 && i < Chances.Length ? Chances[i] : 0;
    }

    /// <summary>The first day by which at least <paramref name="share"/> (0 to 1) of the chance has passed.</summary>
    public LocalDate Quantile(double share) => First.PlusDays(Quantiles.Of(Chances.AsSpan(), share));
}

/// <param name="Reason">Empty when nothing speaks against her.</param>
public sealed record TupAdvice(TupVerdict Verdict, string Reason);

public enum TupVerdict
{
    ToTheTup,
    TreatFirst,
    LeaveOut,
    Cull,
}
