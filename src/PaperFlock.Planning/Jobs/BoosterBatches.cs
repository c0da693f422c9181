using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Jobs;

/// <summary>
/// The booster, so many weeks before each ewe is likely to lamb. Where one day would miss some ewe's weeks, the group is parted by due date
/// into as few batches as will do: the day is the last free one for the first ewe still without, and all whose weeks hold it are in.
/// </summary>
internal static class BoosterBatches
{
    public static IEnumerable<Job> Of(Flock flock, KeeperCalendar calendar)
    {
        var (first, last) = flock.Practice.BoosterWeeksBeforeLambing;

        // As if none had lambed, so that a job already done does not move.
        var dated = EwePlans.Of(flock with { Ewes = [.. flock.Ewes.Select(e => e with { Lambed = null })] });
        foreach (var group in flock.Groups)
        {
            var batches = new List<EwePlan[]>();
            var left = dated.Where(e => e.Due is not null && e.Ewe.Group == group.Name).OrderBy(e => e.Due!.Likely).ToArray();
            while (left.Length > 0)
            {
                var likely = left[0].Due!.Likely;
                var day = calendar.LastFree(likely.PlusDays(-7 * first), likely.PlusDays(-7 * last));
                var batch = left.TakeWhile(e => e.Due!.Likely.PlusDays(-7 * first) <= day).ToArray();
                batches.Add(batch);
                left = left[batch.Length..];
            }

            foreach (var batch in batches)
            {
                var (from, to) = (batch[0].Due!.Likely, batch[^1].Due!.Likely);
                var (earliest, latest) = (Period.DaysBetween(from, to) - (7 * first), -7 * last);
                var rule = new JobRule(
                    JobKind.Booster, null, new(earliest, (earliest + latest) / 2, latest), Handled: true, JobReason.FirstMilkProtectsLambs, FigureSource.Booster);
                yield return new Job(rule, group, from) { Batch = batches.Count == 1 ? null : new DateInterval(from, to) };
            }
        }
    }
}
