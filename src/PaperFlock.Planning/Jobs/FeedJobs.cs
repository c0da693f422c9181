using NodaTime;

namespace PaperFlock.Planning.Jobs;

/// <summary>The jobs of feeding: when ewes are sorted, and from the charts when each begins and a second feed is given.</summary>
internal static class FeedJobs
{
    public static IEnumerable<PlannedJob> Of(FeedingPlan feeding)
    {
        foreach (var day in feeding.Sorts.Select(s => s.Day).Distinct())
        {
            yield return Job(JobIds.Sort, "Sort by lambs carried", day, "the scan says who carries how many") with
            {
                Basis = new JobBasis(day, "scanning", "the day they are scanned"),
            };
        }

        foreach (var chart in feeding.Charts.Where(c => !c.IsForageOnly))
        {
            var first = chart.Rows.First(r => r.KgPerEwePerDay > 0);
            yield return Job(JobIds.FeedFrom, $"Start feeding by {chart.Code}", chart, first.From);
            if (chart.Rows.FirstOrDefault(r => r.FedAt.Length > 1) is { } two)
            {
                yield return Job(JobIds.TwoFeeds, $"Two feeds a day by {chart.Code}", chart, two.From);
            }
        }
    }

    private static PlannedJob Job(string id, string title, FeedChart chart, LocalDate day) => Job(id, title, day, $"{chart.Code} says so") with
    {
        Basis = new JobBasis(chart.CountedFrom, "the day their weeks are counted back from", $"the first of the ewes fed by {chart.Code}"),
    };

    private static PlannedJob Job(string id, string title, LocalDate day, string why) => new(
        id, title, Group: null, day, day, day, day, Handled: false, Fixed: true, Minutes: null, why, JobSources.CommonPractice(), Trouble: null);
}
