namespace PaperFlock.Planning.Jobs;

/// <summary>The keeper's own jobs: one day for the whole flock, or a window for each group.</summary>
internal static class OwnJobs
{
    public static IEnumerable<Job> For(Flock flock, IReadOnlyList<GroupPlan> groups) =>
        flock.OwnJobs.SelectMany(own => own.On is { } day ? [OnDay(flock, own, day, groups)] : OfGroups(flock, own, own.Window!, groups));

    private static IEnumerable<Job> OfGroups(Flock flock, OwnJob own, OwnJobWindow window, IReadOnlyList<GroupPlan> groups) =>
        from of in groups
        let anchor = of.DayOf(window.Anchor, flock.Practice)
        where anchor is not null
        select InWindow(flock, own, window, of, anchor.Value);

    private static Job OnDay(Flock flock, OwnJob own, LocalDate day, IReadOnlyList<GroupPlan> groups)
    {
        var late = own.Handled && groups.Any(g => LastSixWeeks.Of(g.Due)?.Overlaps(day, day) == true);
        var rule = new JobRule(JobKind.Own, null, JobWindow.Day(0), own.Handled, JobReason.FlockFileGivesTheDay, FigureSource.FlockFile)
        {
            IsFixed = true,
            Own = own,
            Late = late ? LateHandling.Standing : LateHandling.None,
        };
        return new(rule, null, day) { Minutes = Minutes(own, flock.Ewes.Length) };
    }

    private static Job InWindow(Flock flock, OwnJob own, OwnJobWindow asked, GroupPlan group, LocalDate anchor)
    {
        var (last, late) = (asked.LastDay, LateHandling.None);
        if (own.Handled && LastSixWeeks.Of(group.Due) is { } heavy && heavy.Overlaps(anchor.PlusDays(asked.FirstDay), anchor.PlusDays(last)))
        {
            var before = Period.DaysBetween(anchor, heavy.From) - 1;
            (last, late) = asked.FirstDay <= before ? (before, LateHandling.KeptBefore) : (last, LateHandling.Standing);
        }

        var window = new JobWindow(asked.FirstDay, asked.FirstDay + ((last - asked.FirstDay) / 2), last);
        var rule = new JobRule(JobKind.Own, asked.Anchor, window, own.Handled, JobReason.FlockFileGivesTheWindow, FigureSource.FlockFile)
        {
            Own = own,
            Late = late,
        };
        return new(rule, group.Group, anchor) { Minutes = Minutes(own, flock.Ewes.Count(e => e.Group == group.Group.Name)) };
    }

    private static int? Minutes(OwnJob own, int ewes) => own.MinutesPerEwe is { } minutes ? (int)decimal.Ceiling(minutes * ewes) : null;
}
