using NodaTime;

namespace PaperFlock.Flocks;

/// <summary>Every figure the plan uses that a keeper may set for herself.</summary>
/// <param name="ScanDaysAfterTupIn">First and last day worth scanning, both included.</param>
/// <param name="BoosterWeeksBeforeLambing">Earliest (the larger) and latest (the smaller), both included.</param>
/// <param name="ChangeoverDays">The oestrous cycle, and so the days between raddle colours.</param>
/// <param name="GestationSpreadDays">Standard deviation of a ewe's gestation round her own mean, in days.</param>
/// <param name="GestationLitterDays">Days added to the gestation length for one, two, and three or more lambs.</param>
/// <param name="ConceptionPerCycle">Chance, 0 to 1, that a ewe mated in one cycle holds.</param>
/// <param name="EwesPerTup">More than this with one tup is warned of.</param>
/// <param name="LastRound">When the late round of the day is walked.</param>
/// <param name="FirstRoundNotBefore">First light is walked no earlier than this.</param>
public sealed record Practice(
    int TeethToesTeatsWeeksBeforeTupping,
    (int First, int Last) ScanDaysAfterTupIn,
    FeedingWeeks FeedWeeksBeforeLambing,
    int TwoFeedsWeeksBeforeLambing,
    int HouseDaysBeforeLambing,
    Dagging Dag,
    Shearing Shear,
    (int Earliest, int Latest) BoosterWeeksBeforeLambing,
    ChecksPerDay ChecksPerDay,
    int ChangeoverDays,
    decimal GestationSpreadDays,
    (int Single, int Twin, int More) GestationLitterDays,
    decimal ConceptionPerCycle,
    int EwesPerTup,
    LocalTime LastRound,
    LocalTime FirstRoundNotBefore)
{
    public (int First, int Last) ScanDaysAfterTupIn { get; init; } =
        (ScanDaysAfterTupIn.First, Require.NotBefore(ScanDaysAfterTupIn.Last, ScanDaysAfterTupIn.First));

    public (int Earliest, int Latest) BoosterWeeksBeforeLambing { get; init; } =
        (Require.NotBefore(BoosterWeeksBeforeLambing.Earliest, BoosterWeeksBeforeLambing.Latest), BoosterWeeksBeforeLambing.Latest);

    public int ChangeoverDays { get; init; } = Require.Within(ChangeoverDays, 1, int.MaxValue);

    public decimal GestationSpreadDays { get; init; } = Require.Within(GestationSpreadDays, 0, decimal.MaxValue);

    public decimal ConceptionPerCycle { get; init; } = Require.Positive(ConceptionPerCycle, 1);

    public int EwesPerTup { get; init; } = Require.Within(EwesPerTup, 1, int.MaxValue);
}

public sealed record ChecksPerDay(int Normal, int Heavy, int HeavyFromWeeksBeforeLambing)
{
    public int Normal { get; init; } = Require.Within(Normal, 1, int.MaxValue);

    public int Heavy { get; init; } = Require.Within(Heavy, 1, int.MaxValue);
}

public enum Dagging
{
    AtHousing,
    BeforeHousing,
    None,
}

public enum Shearing
{
    BeforeTupping,
    AtHousing,
    AfterLambing,
    None,
}
