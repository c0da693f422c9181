namespace PaperFlock.Planning;

/// <summary>Everything worked out from one flock file and one as-of date. Arrays of dated things are in date order.</summary>
public sealed record SeasonPlan(Flock Flock, LocalDate AsOf)
{
    public required SeasonDates Dates { get; init; }

    /// <summary>First day the paper covers: the Monday (or the keeper's week start) of the earliest job.</summary>
    public required LocalDate From { get; init; }

    /// <summary>Last day the paper covers, included: a month after the last due date, or after the last job if that is later.</summary>
    public required LocalDate To { get; init; }

    public required ImmutableArray<GroupPlan> Groups { get; init; }

    /// <summary>In the order of the flock file.</summary>
    public required ImmutableArray<EwePlan> Ewes { get; init; }

    /// <summary>By the day they are shown on, then by group, what is the whole flock's first, then in the order of the calendar.</summary>
    public required ImmutableArray<Job> Jobs { get; init; }

    public required ImmutableArray<Gathering> Gatherings { get; init; }

    public required Whereabouts Whereabouts { get; init; }

    public required FeedingPlan Feeding { get; init; }

    public required ImmutableArray<StoreItem> Stores { get; init; }

    public required LambingCurve Lambing { get; init; }

    public required SeasonOutcome Outcome { get; init; }

    public required HousingPlan Housing { get; init; }

    public required ImmutableArray<RoundDay> Rounds { get; init; }

    /// <summary>What the plan noticed about the file, with the place in it.</summary>
    public required ImmutableArray<PlanWarning> Warnings { get; init; }

    /// <summary>The gathering a job is part of; null where ewes are not gathered for it, or it has no day.</summary>
    public Gathering? GatheringOf(Job job) => job.Handled ? Gatherings.FirstOrDefault(g => g.Date == job.Date) : null;

    /// <summary>The ewes still to lamb that a job for a batch is for, by the day each is likely to; empty for a job of a whole group.</summary>
    public IEnumerable<EwePlan> BatchOf(Job job) => job.Batch is { } days
        ? Ewes.Where(e => e.Ewe.Group == job.Group!.Name && e.Due is { } due && days.Contains(due.Likely)).OrderBy(e => e.Due!.Likely)
        : [];

    /// <summary>Gatherings in the window of a job, on days that are not its to have because the keeper is not free.</summary>
    public IEnumerable<Gathering> NotJoined(Job job) => job is { Handled: true, IsFixed: false, Date: { } date }
        ? Gatherings.Where(g => g.Date != date && job.Earliest <= g.Date && g.Date <= job.Latest && !Flock.KeeperDays.IsFree(g.Date))
        : [];
}

/// <param name="TupIn">Earliest of the groups'.</param>
/// <param name="TupOut">Latest of the groups'.</param>
/// <param name="FirstDue">Earliest of the groups'; null when no ewe can be in lamb.</param>
/// <param name="LastDue">Latest of the groups'; null when no ewe can be in lamb.</param>
public sealed record SeasonDates(LocalDate TupIn, LocalDate TupOut, LocalDate? FirstDue, LocalDate? LastDue);

/// <param name="Due">Null when no ewe of the group can be in lamb.</param>
/// <param name="Housed">The day the housing job stands on, or should have where it has no day, since they are housed all the same; null when the group is not housed.</param>
public sealed record GroupPlan(TuppingGroup Group, GroupDueDates? Due, LocalDate? Housed)
{
    public LocalDate? FirstDue => Due?.First.Day;

    public LocalDate? LastDue => Due?.Last.Day;

    /// <summary>Null when the group has no such day: nothing can be due where no ewe is in lamb.</summary>
    internal LocalDate? DayOf(JobAnchor anchor, Practice practice) => anchor switch
    {
        JobAnchor.TupIn => Group.TupIn,
        JobAnchor.TupOut => Group.TupOut,
        JobAnchor.Scan => Group.TupIn.PlusDays(practice.ScanDaysAfterTupIn.First),
        JobAnchor.Feeding => FirstDue?.PlusDays(-7 * practice.FeedWeeksBeforeLambing.Twin),
        JobAnchor.Housing => FirstDue?.PlusDays(-practice.HouseDaysBeforeLambing),
        JobAnchor.FirstDue => FirstDue,
        JobAnchor.LastDue => LastDue,
        _ => throw new ArgumentOutOfRangeException(nameof(anchor)),
    };
}
