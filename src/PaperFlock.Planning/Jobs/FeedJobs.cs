using System.Collections.Immutable;
using NodaTime;

namespace PaperFlock.Planning.Jobs;

/// <summary>The jobs of feeding, taken from the charts: when each begins, and when a second feed is given.</summary>
internal static class FeedJobs
{
    public static IEnumerable<PlannedJob> Of(ImmutableArray<FeedChart> charts)
    {
        foreach (var chart in charts.Where(c => !c.IsForageOnly))
        {
            var first = chart.Rows.First(r => r.KgPerEwePerDay > 0);
            yield return Job(JobIds.FeedFrom, $"Start feeding by {chart.Code}", chart, first.From);
            if (chart.Rows.FirstOrDefault(r => r.FedAt.Length > 1) is { } two)
            {
                yield return Job(JobIds.TwoFeeds, $"Two feeds a day by {chart.Code}", chart, two.From);
            }
        }
    }

    private static PlannedJob Job(string id, string title, FeedChart chart, LocalDate day) => new(
        id, title, Group: null, day, day, day, day, Handled: false, Fixed: true, Minutes: null,
        Why: $"{chart.Code} says so", JobSources.CommonPractice(), Trouble: null)
    {
        Basis = new JobBasis(chart.CountedFrom, "the day their weeks are counted back from", $"the first of the ewes fed by {chart.Code}"),
    };
}
