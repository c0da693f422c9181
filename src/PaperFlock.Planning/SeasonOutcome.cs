using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning;

/// <summary>What came of the season so far, and how good the forecast was.</summary>
/// <param name="ToLamb">Ewes that were to lamb, as the file has it today; those lost before the scan are not among them.</param>
/// <param name="Lambings">Of those that have lambed, by the day.</param>
/// <param name="LostLambs">Of those that lost their lambs, in the order of the flock file.</param>
/// <param name="Gone">All that have left the flock, by the day.</param>
/// <param name="NotAgain">Ewes still there that should not go to the tup again for what was found in them, in the order of the flock file.</param>
/// <param name="Empty">Scanned empty and still there, in the order of the flock file.</param>
public sealed record SeasonOutcome(
    int ToLamb,
    ImmutableArray<LambingOutcome> Lambings,
    ImmutableArray<EwePlan> LostLambs,
    ImmutableArray<EwePlan> Gone,
    ImmutableArray<EwePlan> NotAgain,
    ImmutableArray<EwePlan> Empty)
{
    public int StillToLamb { get; init; }

    /// <summary>Some have lambed, and none is left to.</summary>
    public bool IsOver => StillToLamb == 0 && Lambings.Length > 0;

    /// <summary>Lambs counted at the scan in all that were to lamb and were scanned.</summary>
    public int LambsScanned { get; init; }

    public int BornAlive => Lambings.Sum(l => l.Ewe.Ewe.BornAlive ?? 0);

    public int BornDead => Lambings.Sum(l => l.Ewe.Ewe.Lambing.Dead ?? 0);

    /// <summary>Lambings of which nobody wrote down the lambs.</summary>
    public int Uncounted => Lambings.Count(l => l.Ewe.Ewe.BornAlive is null);

    public int InsideSpan => Lambings.Count(l => l.IsInsideSpan);

    /// <summary>Mean of the days by which the likely day was out, either way; null before the first lambing.</summary>
    public double? MeanDaysOut => Lambings.IsEmpty ? null : Lambings.Average(l => Math.Abs((double)l.DaysLate));

    public int Helped(LambingHelp help) => Lambings.Count(l => l.Ewe.Ewe.Lambing.Help == help);

    internal static SeasonOutcome Of(Flock flock, ImmutableArray<EwePlan> ewes)
    {
        var toLamb = ewes.Where(e => e.WasToLamb).ToList();
        return new(
            toLamb.Count,
            [.. toLamb.Where(e => e.Ewe.Lambed is not null).Select(e => new LambingOutcome(e, DueWindows.Of(flock, e.Ewe))).OrderBy(l => l.Ewe.Ewe.Lambed)],
            [.. ewes.Where(e => e.Ewe.LostLambs is not null)],
            [.. ewes.Where(e => e.Ewe.Gone is not null).OrderBy(e => e.Ewe.Gone!.On)],
            [.. ewes.Where(e => e.Ewe.Gone is null && e.Advice.Findings is [<= TupFinding.HadMastitis, ..])],
            [.. ewes.Where(e => e.Standing == Standing.Empty)])
        {
            StillToLamb = toLamb.Count(e => e.IsCarrying),
            LambsScanned = toLamb.Sum(e => e.Ewe.Scan ?? 0),
        };
    }
}

/// <param name="Window">When she was to lamb, by the marks and the scan.</param>
public sealed record LambingOutcome(EwePlan Ewe, DueWindow Window)
{
    private LocalDate Lambed => Ewe.Ewe.Lambed!.Value;

    /// <summary>In the days that nine in ten such ewes lamb on; both ends are days of them.</summary>
    public bool IsInsideSpan => Window.Earliest <= Lambed && Lambed <= Window.Latest;

    /// <summary>After her likely day; negative before it.</summary>
    public int DaysLate => Period.DaysBetween(Window.Likely, Lambed);
}
