using CsCheck;
using NodaTime;

namespace PaperFlock.Planning.Tests.Jobs;

/// <summary>Four to six weeks before lambing: Teagasc, reported by Agriland.</summary>
public class BoosterBatchTests
{
    /// <summary>147 days after 14 Aug is 8 Jan, after 25 Aug 19 Jan and after 12 Sep 6 Feb: six to four weeks before are 27 Nov to 11 Dec, 8 to 22 Dec and 26 Dec to 9 Jan.</summary>
    [Fact]
    public void Early_and_late_ewes_have_a_day_each_where_one_would_miss_some()
    {
        var plan = SeasonPlanner.Plan(
            Sample.Flock([Sample.Group("Orchard")], Sample.Ewe("Bracken", "Orchard", "2026-08-14"), Sample.Ewe("Fern", "Orchard", "2026-08-25"), Sample.Ewe("Sorrel", "Orchard", "2026-09-12"))
                with
            { KeeperDays = Sample.Free(Sample.EveryDay) },
            Sample.Day("2026-11-01"));
        var boosters = plan.Jobs.Where(j => j.Kind == JobKind.Booster).ToArray();

        Assert.Equal([["Bracken", "Fern"], ["Sorrel"]], boosters.Select(j => plan.BatchOf(j).Select(e => e.Ewe.Name)));
        Assert.Equal([(Sample.Day("2026-12-08"), Sample.Day("2026-12-11")), (Sample.Day("2026-12-26"), Sample.Day("2027-01-09"))], boosters.Select(j => (j.Earliest, j.Latest)));
    }

    [Fact]
    public void Every_ewe_in_lamb_is_in_one_batch_whose_days_are_all_in_her_weeks() => AnyFlock.Drawn.Sample(
        flock =>
        {
            var plan = SeasonPlanner.Plan(flock, flock.Season.TupIn);
            var (first, last) = flock.Practice.BoosterWeeksBeforeLambing;
            foreach (var ewe in plan.Ewes.Where(e => e.Due is not null))
            {
                var likely = ewe.Due!.Likely;
                var job = Assert.Single(plan.Jobs, j => j.Kind == JobKind.Booster && j.Group!.Name == ewe.Ewe.Group && (j.Batch?.Contains(likely) ?? true));
                Assert.InRange(job.Earliest, likely.PlusDays(-7 * first), job.Latest);
                Assert.InRange(job.Latest, job.Earliest, likely.PlusDays(-7 * last));
            }
        },
        iter: 100);

    [Fact]
    public void One_more_batch_than_needed_is_never_made() => Gen.Int[0, 41].Array[1, 8].Sample(
        days =>
        {
            var flock = Sample.Flock([Sample.Group("Orchard")], [.. days.Select((d, i) => Sample.Ewe($"E{i}", "Orchard", NodaTime.Text.LocalDatePattern.Iso.Format(Sample.TupIn.PlusDays(d))))]) with
            {
                KeeperDays = Sample.Free(Sample.EveryDay),
            };
            var plan = SeasonPlanner.Plan(flock, Sample.Day("2026-11-01"));
            var likely = plan.Ewes.Select(e => e.Due!.Likely).Distinct().Order().ToArray();

            // Every choice of days, the fewest that come within a fortnight of all, counted out.
            var fewest = Enumerable.Range(1, likely.Length).First(n => Covers(likely, n));
            return plan.Jobs.Count(j => j.Kind == JobKind.Booster) == fewest;
        },
        iter: 100);

    private static bool Covers(LocalDate[] days, int batches) =>
        days.Length == 0 || (batches > 0 && Enumerable.Range(1, days.Length).Any(n => Period.DaysBetween(days[0], days[n - 1]) <= 14 && Covers(days[n..], batches - 1)));
}
