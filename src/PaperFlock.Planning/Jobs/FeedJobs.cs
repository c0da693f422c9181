namespace PaperFlock.Planning.Jobs;

/// <summary>The jobs of feeding: when ewes are sorted, and from the charts when each begins and a second feed is given.</summary>
internal static class FeedJobs
{
    public static IEnumerable<Job> Of(FeedingPlan feeding)
    {
        foreach (var day in feeding.Sorts.Select(s => s.Day).Distinct())
        {
            yield return On(day, day, new JobRule(JobKind.Sort, JobAnchor.Scan, JobWindow.Day(0), Handled: false, JobReason.ScanTellsLambs, FigureSource.CommonPractice));
        }

        // Of a class that nobody is left of no chart is printed.
        foreach (var chart in feeding.Charts.Where(c => !c.IsForageOnly && c.Ewes.Any(e => !e.IsLost)))
        {
            yield return By(chart, JobKind.FeedFrom, chart.Rows.First(r => r.KgPerEwePerDay > 0).From);
            if (chart.Rows.FirstOrDefault(r => r.FedAt.Length > 1) is { } two)
            {
                yield return By(chart, JobKind.TwoFeeds, two.From);
            }
        }
    }

    private static Job By(FeedChart chart, JobKind kind, LocalDate day)
    {
        var window = JobWindow.Day(Period.DaysBetween(chart.CountedFrom, day));
        return On(day, chart.CountedFrom, new JobRule(kind, null, window, Handled: false, JobReason.FeedChartSaysSo, FigureSource.CommonPractice) { Chart = chart.Code });
    }

    private static Job On(LocalDate day, LocalDate anchor, JobRule rule) => new(rule with { IsFixed = true }, Group: null, anchor) { Date = day };
}
