using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning;

/// <param name="Standing">Whether she still counts for feeding, housing and the lambing curve.</param>
/// <param name="Litter">Lambs she is planned for: as scanned, 1 where nobody has scanned her, 0 when empty.</param>
/// <param name="Due">Null unless she is still to lamb.</param>
/// <param name="Advice">What to do about her before the tup.</param>
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
    /// <summary>What she would be, had she not lost her lambs or left the flock.</summary>
    public required Standing BeforeLoss { get; init; }

    /// <summary>
    /// She is, or was, to lamb this season: charts, pens, jobs and lists to write on are made for her, and a lambing or a loss
    /// moves none of them. One lost before the scan leaves no trace in them.
    /// </summary>
    public required bool WasToLamb { get; init; }

    /// <summary>Who the sire of her lambs is, likeliest first; empty where no tup is named, or she carries none.</summary>
    public ImmutableArray<Sire> Sires { get; init; } = [];

    /// <summary>Null where it may be either of two, or none is named.</summary>
    public string? CertainSire => Sires is [{ IsCertain: true } sire, ..] ? sire.Tup : null;

    public bool IsScanned => Ewe.Scan is not null;

    /// <summary>She has lost her lambs, or left the flock.</summary>
    public bool IsLost => Standing is Standing.LostLambs or Standing.Gone;

    /// <summary>Still to lamb, as far as anyone knows.</summary>
    public bool IsCarrying => Standing == Standing.ToLamb;

    /// <summary>Lambs she rears once she has lambed: those born alive; where nobody wrote that down, those listed, else those scanned, else two.</summary>
    internal int LambsAtFoot => Ewe.BornAlive ?? (Ewe.Scan is { } scan and > 0 ? scan : 2);
}

public enum Standing
{
    ToLamb,
    Empty,
    LeftOut,
    Lambed,

    /// <summary>She carried, and was seen to have lost her lambs before their time.</summary>
    LostLambs,
    Gone,
}

/// <summary>When she should lamb, from the strongest evidence there is.</summary>
/// <param name="Carries">Days she carries by her breed.</param>
/// <param name="Mean">Days she is planned at: more or fewer with the lambs counted in her.</param>
/// <param name="Earliest">5 % point of <paramref name="Chances"/>.</param>
/// <param name="Likely">50 % point.</param>
/// <param name="Latest">95 % point.</param>
/// <param name="Chances">Chance of lambing on each day; sums to 1.</param>
public sealed record DueWindow(
    MatingEvidence Evidence,
    int Carries,
    int Mean,
    LocalDate Earliest,
    LocalDate Likely,
    LocalDate Latest,
    DayDistribution Chances)
{
    /// <summary>Gestation length after the first day the evidence allows; anchors feeding.</summary>
    public LocalDate FirstPossible => Evidence.FirstDay.PlusDays(Carries);

    /// <summary>Gestation length after the last day the evidence allows.</summary>
    public LocalDate LastPossible => Evidence.LastDay.PlusDays(Carries);
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
