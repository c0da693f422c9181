namespace PaperFlock.Flocks;

/// <summary>
/// Every figure the plan uses that a keeper may set for herself, with what it is where she does not. Defaults are common practice of the
/// trade without a source, but for those that name one.
/// </summary>
public sealed record Practice
{
    public int TeethToesTeatsWeeksBeforeTupping { get; init; } = 8;

    /// <summary>First and last day worth scanning, both included.</summary>
    public (int First, int Last) ScanDaysAfterTupIn { get; init => field = (value.First, Require.NotBefore(value.Last, value.First)); } = (75, 80);

    /// <summary>
    /// Triplets two weeks before twins: Teagasc, reported by Agriland and the Irish Farmers Journal (8 to 10 weeks); thin ewes too
    /// (Irish Farmers Journal).
    /// </summary>
    public FeedingWeeks FeedWeeksBeforeLambing { get; init; } = new(Single: 6, Twin: 6, Triplet: 8, Thin: 8);

    public int TwoFeedsWeeksBeforeLambing { get; init; } = 3;

    public int HouseDaysBeforeLambing { get; init; } = 7;

    public Dagging Dag { get; init; } = Dagging.AtHousing;

    public Shearing Shear { get; init; } = Shearing.BeforeTupping;

    /// <summary>Earliest (the larger) and latest (the smaller), both included.</summary>
    public (int Earliest, int Latest) BoosterWeeksBeforeLambing { get; init => field = (Require.NotBefore(value.Earliest, value.Latest), value.Latest); } = (6, 4);

    public ChecksPerDay ChecksPerDay { get; init; } = new(Normal: 2, Heavy: 4, HeavyFromWeeksBeforeLambing: 6);

    /// <summary>The oestrous cycle, and so the days between raddle colours: 17 days, range 14 to 19 ("Raising Sheep", a textbook).</summary>
    public int ChangeoverDays { get; init => field = Require.Within(value, 1, int.MaxValue); } = 17;

    /// <summary>Standard deviation of a ewe's gestation round her own mean, in days: 2 to 2.5 within a breed (from memory: general literature).</summary>
    public decimal GestationSpreadDays { get; init => field = Require.Within(value, 0, decimal.MaxValue); } = 2.5m;

    /// <summary>
    /// Days added to the gestation length for one, two, and three or more lambs: it is shorter with more lambs (Barbados Blackbelly and
    /// St Croix ewes, 1,291 gestations: single 149.8, twin 147.4, triplet 146.7 days).
    /// </summary>
    public (int Single, int Twin, int More) GestationLitterDays { get; init; } = (1, 0, -1);

    /// <summary>Chance, 0 to 1, that a ewe mated in one cycle holds: 70 to 90 % to one service in season (from memory: AHDB).</summary>
    public decimal ConceptionPerCycle { get; init => field = Require.Positive(value, 1); } = 0.80m;

    /// <summary>More than this with one tup is warned of.</summary>
    public int EwesPerTup { get; init => field = Require.Within(value, 1, int.MaxValue); } = 50;

    /// <summary>When the late round of the day is walked, where the keeper has no time of her own for it.</summary>
    public static LocalTime UsualLastRound => new(21, 30);

    /// <summary>When the late round of the day is walked.</summary>
    public LocalTime LastRound { get; init; } = UsualLastRound;

    /// <summary>First light is walked no earlier than this.</summary>
    public LocalTime FirstRoundNotBefore { get; init; } = new(5, 0);
}

public sealed record ChecksPerDay(int Normal, int Heavy, int HeavyFromWeeksBeforeLambing)
{
    public int Normal { get; init; } = Require.Within(Normal, 1, int.MaxValue);

    public int Heavy { get; init; } = Require.Within(Heavy, 1, int.MaxValue);

    /// <summary>While any ewe may lamb, two of them by night: published practice is a look every hour.</summary>
    public int Lambing { get; init => field = Require.Within(value, 1, int.MaxValue); } = Math.Max(6, Heavy);
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
