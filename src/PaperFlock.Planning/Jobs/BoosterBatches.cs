using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Jobs;

/// <summary>
/// The booster, so many weeks before each ewe is likely to lamb. Where one day would miss some ewe's weeks, the group is parted by due date
/// into as few batches as will do: the day is the last free one for the first ewe still without, and all whose weeks hold it are in.
/// </summary>
internal static class BoosterBatches
{
    /// <param name="groups">Those with no due dates get none.</param>
    public static IEnumerable<Job> Of(Flock flock, IEnumerable<GroupPlan> groups, KeeperCalendar calendar)
    {
        var (first, last) = flock.Practice.BoosterWeeksBeforeLambing;

        // As if none had lambed or been lost, so that a job already done does not move.
        var dated = EwePlans.Of(flock).Where(e => e.WasToLamb).Select(e => (e.Ewe.Group, DueWindows.Of(flock, e.Ewe).Likely)).OrderBy(e => e.Likely).ToArray();
        foreach (var group in groups.Where(g => g.Due is not null).Select(g => g.Group))
        {
            var batches = new List<LocalDate[]>();
            var left = dated.Where(e => e.Group == group.Name).Select(e => e.Likely).ToArray();
            while (left.Length > 0)
            {
                var day = calendar.LastFree(left[0].PlusDays(-7 * first), left[0].PlusDays(-7 * last));
                var batch = left.TakeWhile(likely => likely.PlusDays(-7 * first) <= day).ToArray();
                batches.Add(batch);
                left = left[batch.Length..];
            }

            foreach (var batch in batches)
            {
                var (from, to) = (batch[0], batch[^1]);
                var (earliest, latest) = (Period.DaysBetween(from, to) - (7 * first), -7 * last);
                var rule = new JobRule(
                    JobKind.Booster, null, new(earliest, (earliest + latest) / 2, latest), Handled: true, JobReason.FirstMilkProtectsLambs, FigureSource.Booster);
                yield return new Job(rule, group, from) { Batch = batches.Count == 1 ? null : new DateInterval(from, to) };
            }
        }
    }
}
