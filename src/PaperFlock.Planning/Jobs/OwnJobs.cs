namespace PaperFlock.Planning.Jobs;

/// <summary>The keeper's own jobs: one day for the whole flock, or a window for each group.</summary>
internal static class OwnJobs
{
    public static IEnumerable<Job> For(Flock flock, IReadOnlyList<GroupAnchors> groups)
    {
        foreach (var own in flock.OwnJobs)
        {
            if (own.On is { } day)
            {
                yield return OnDay(own, day, groups);
                continue;
            }

            foreach (var group in groups)
            {
                if (group.DayOf(own.Window!.Anchor, flock.Practice) is { } anchor)
                {
                    yield return InWindow(own, own.Window, group, anchor);
                }
            }
        }
    }

    private static Job OnDay(OwnJob own, LocalDate day, IReadOnlyList<GroupAnchors> groups)
    {
        var late = own.Handled && groups.Any(g => LastSixWeeks.Of(g.Due)?.Overlaps(day, day) == true);
        var rule = new JobRule(JobKind.Own, null, JobWindow.Day(0), own.Handled, JobReason.FlockFileGivesTheDay, FigureSource.FlockFile)
        {
            IsFixed = true,
            Own = own,
            Late = late ? LateHandling.Standing : LateHandling.None,
        };
        return new(rule, null, day) { Minutes = Minutes(own, groups.Sum(g => g.Ewes)) };
    }

    private static Job InWindow(OwnJob own, OwnJobWindow asked, GroupAnchors group, LocalDate anchor)
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
        return new(rule, group.Group, anchor) { Minutes = Minutes(own, group.Ewes) };
    }

    private static int? Minutes(OwnJob own, int ewes) => own.MinutesPerEwe is { } minutes ? (int)decimal.Ceiling(minutes * ewes) : null;
}
