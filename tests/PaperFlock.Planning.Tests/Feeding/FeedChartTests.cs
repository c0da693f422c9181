using NodaTime;
using PaperFlock.Planning.Jobs;

namespace PaperFlock.Planning.Tests.Feeding;

public sealed class FeedChartTests
{
    private static readonly LocalDate Start = new(2026, 11, 23);

    /// <summary>Weeks with the same feed are one step; the same amount in more feeds is another.</summary>
    [Fact]
    public void Weeks_with_the_same_feed_are_one_step()
    {
        var chart = Chart((0, 0), (0.3m, 1), (0.3m, 1), (0.3m, 2), (0.4m, 2));
        Assert.Equal(
            [(0m, 0, 7), (0.3m, 7, 21), (0.3m, 21, 28), (0.4m, 28, 35)],
            chart.Steps.Select(s => (s.KgPerEwePerDay, Period.DaysBetween(Start, s.From), Period.DaysBetween(Start, s.To) + 1)));
    }

    [Fact]
    public void Forage_alone_is_a_chart_without_a_single_feed()
    {
        Assert.True(Chart((0, 0), (0, 0)).IsForageOnly);
        Assert.False(Chart((0, 0), (0.3m, 1)).IsForageOnly);
    }

    [Fact]
    public void Feeding_begins_with_the_first_week_that_has_any_and_two_feeds_where_there_are_two()
    {
        string[] Jobs(params (decimal Kg, int Feeds)[] weeks) =>
            [.. FeedJobs.Of(new FeedingPlan([Chart(weeks) with { Ewes = [FeedingSample.Ewe(1)] }], [], [], [], [], [])).Select(j => $"{j.Kind} {Period.DaysBetween(Start, j.Date!.Value)}")];
        Assert.Equal(["FeedFrom 7"], Jobs((0, 0), (0.3m, 1), (0.4m, 1)));
        Assert.Equal(["FeedFrom 7", "TwoFeeds 14"], Jobs((0, 0), (0.3m, 1), (0.4m, 2), (0.5m, 2)));
        Assert.Empty(Jobs((0, 0), (0, 0)));
    }

    [Fact]
    public void Feeds_of_a_day_stand_in_the_order_of_the_day()
    {
        var plan = SeasonPlanner.Plan(
            Sample.Flock(
                Sample.Ewe(marks: "2026-08-14", scan: 2), Sample.Ewe("Tansy", marks: "2026-08-14", scan: 2),
                Sample.Ewe("Fern", marks: "2026-08-14", scan: 2) with { Lambed = Sample.Day("2027-01-06") }),
            Sample.Day("2027-01-07"));
        var day = Sample.Day("2027-01-07");
        Assert.Equal([FeedTime.FirstLight, FeedTime.Midday, FeedTime.Dusk], plan.Feeding.FedAt(FeedCodes.Lambed, day));
        Assert.Equal([FeedTime.FirstLight, FeedTime.Midday, FeedTime.Dusk], plan.Feeding.FedAt(day));
        Assert.Empty(plan.Feeding.FedAt(plan.Ewes[0].Chart!, Sample.Day("2026-09-01")));
        Assert.Null(plan.Feeding.ChartOf(plan.Ewes[0] with { Chart = null }));
    }

    private static FeedChart Chart(params (decimal Kg, int Feeds)[] weeks) => new(
        FeedKind.Twins, 1, 2, [], [], Start, Start, Start, 1,
        [.. weeks.Select((w, i) => new FeedRow(
            Start.PlusWeeks(i), Start.PlusWeeks(i).PlusDays(6), w.Kg, [.. Enum.GetValues<FeedTime>().Take(w.Feeds)], [], default, default, 0, 0, 0, 0, false))]);
}
