namespace PaperFlock.Planning.Jobs;

/// <summary>From anchors to jobs on their days.</summary>
internal static class JobPlanner
{
    /// <returns>By the day they are shown on, then by group, what is the whole flock's first, then in the order of the calendar.</returns>
    public static ImmutableArray<Job> Plan(Flock flock, IReadOnlyList<GroupPlan> groups)
    {
        var calendar = new KeeperCalendar(flock.KeeperDays);
        ImmutableArray<Job> jobs =
        [
            .. groups.SelectMany(g => OfTheTrade(flock, g)),
            .. BoosterBatches.Of(flock, groups, calendar),
            .. AutumnJobs.Of(flock, groups),
            .. OwnJobs.For(flock, groups),
        ];
        return Sorted(flock, new JobPlacer(calendar).Place(jobs));
    }

    /// <summary>In the order in which a plan has them.</summary>
    public static ImmutableArray<Job> Sorted(Flock flock, IEnumerable<Job> jobs)
    {
        var order = flock.Groups.Select((g, i) => (Group: g, Order: i)).ToDictionary(g => g.Group, g => g.Order);
        return [.. jobs.OrderBy(j => j.ShownOn).ThenBy(j => j.Group is { } group ? order[group] : -1)];
    }

    /// <summary>The trade's calendar for one group; what hangs on a day the group does not have is left off.</summary>
    private static IEnumerable<Job> OfTheTrade(Flock flock, GroupPlan anchors) =>
        from rule in TuppingRules.For(anchors.Group, flock.Practice)
            .Concat(LambingRules.For(flock))
        let day = anchors.DayOf(rule.Anchor!.Value, flock.Practice)
        where day is not null
        select new Job(rule, anchors.Group, day.Value);
}
