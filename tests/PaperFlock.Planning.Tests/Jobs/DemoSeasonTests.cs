namespace PaperFlock.Planning.Tests.Jobs;

/// <summary>
/// The demonstration season, each day counted by hand on a calendar: tup in Mon 10 Aug 2026 to Mon 21 Sep, 147 days, a keeper
/// free at weekends and away from Sun 27 Dec to Sat 2 Jan.
/// </summary>
public class DemoSeasonTests
{
    private static readonly SeasonPlan Plan = SeasonPlanner.Plan(Sample.Flock(Sample.Ewe(), Sample.Ewe("Fern")), Sample.Day("2026-05-01"));

    [Theory]
    // kind, earliest, best, latest, the day given, handled
    [InlineData(JobKind.TupCheck, "2026-05-25", "2026-06-01", "2026-06-08", "2026-05-31", false)]
    [InlineData(JobKind.AbortionVaccine, "2026-05-18", "2026-06-08", "2026-06-29", "2026-06-07", false)]
    [InlineData(JobKind.BoughtTup, "2026-06-15", "2026-06-29", "2026-07-13", "2026-06-28", false)]
    [InlineData(JobKind.TeethToesTeats, "2026-06-08", "2026-06-15", "2026-06-29", "2026-06-14", true)]
    [InlineData(JobKind.Shear, "2026-06-01", "2026-06-15", "2026-07-27", "2026-06-14", true)]
    [InlineData(JobKind.TupIn, "2026-08-10", "2026-08-10", "2026-08-10", "2026-08-10", true)]
    [InlineData(JobKind.TupOut, "2026-09-21", "2026-09-21", "2026-09-21", "2026-09-21", true)]
    [InlineData(JobKind.Scan, "2026-10-24", "2026-10-24", "2026-10-29", "2026-10-24", true)]
    [InlineData(JobKind.FeedFrom, "2026-11-23", "2026-11-23", "2026-11-23", "2026-11-23", false)]
    [InlineData(JobKind.BucketsOut, "2026-11-23", "2026-11-23", "2026-11-23", "2026-11-23", false)]
    [InlineData(JobKind.HeavyRounds, "2026-11-23", "2026-11-23", "2026-11-23", "2026-11-23", false)]
    [InlineData(JobKind.Booster, "2026-12-03", "2026-12-10", "2026-12-17", "2026-12-06", true)]
    [InlineData(JobKind.TwoFeeds, "2026-12-10", "2026-12-10", "2026-12-10", "2026-12-10", false)]
    [InlineData(JobKind.ShedReady, "2026-12-14", "2026-12-21", "2026-12-25", "2026-12-20", false)]
    [InlineData(JobKind.House, "2026-12-25", "2026-12-28", "2026-12-30", "2026-12-26", true)]
    [InlineData(JobKind.Dag, "2026-12-25", "2026-12-28", "2026-12-30", "2026-12-26", true)]
    [InlineData(JobKind.FirstDue, "2027-01-04", "2027-01-04", "2027-01-04", "2027-01-04", false)]
    [InlineData(JobKind.RingAndTag, "2027-01-05", "2027-01-05", "2027-01-05", "2027-01-05", false)]
    [InlineData(JobKind.Turnout, "2027-01-14", "2027-01-14", "2027-01-14", "2027-01-14", false)]
    [InlineData(JobKind.LastDue, "2027-02-15", "2027-02-15", "2027-02-15", "2027-02-15", false)]
    public void Each_job_has_its_window_and_its_day(JobKind kind, string earliest, string best, string latest, string date, bool handled)
    {
        var job = Assert.Single(Plan.Jobs, j => j.Kind == kind);

        Assert.Equal(Sample.Day(earliest), job.Earliest);
        Assert.Equal(Sample.Day(best), job.Best);
        Assert.Equal(Sample.Day(latest), job.Latest);
        Assert.Equal(Sample.Day(date), job.Date);
        Assert.Equal(handled, job.Handled);
        Assert.Null(job.Batch);
    }

    [Fact]
    public void Colours_change_every_cycle_while_the_tup_is_in() => Assert.Equal(
        [("orange", Sample.Day("2026-08-27")), ("red", Sample.Day("2026-09-13"))],
        Plan.Jobs.Where(j => j.Kind == JobKind.RaddleChange).Select(j => (j.Rule.Colour, j.Date)));

    /// <summary>Eight and four weeks before, Mon 9 Nov and Mon 7 Dec: the Sundays before.</summary>
    [Fact]
    public void Ewes_are_looked_over_eight_and_four_weeks_before() => Assert.Equal(
        [Sample.Day("2026-11-08"), Sample.Day("2026-12-06")], Plan.Jobs.Where(j => j.Kind == JobKind.LookOver).Select(j => j.Date!.Value));

    /// <summary>In the middle of autumn, and two weeks before they come in: Mon 21 Dec, the Sunday before.</summary>
    [Fact]
    public void The_vet_is_asked_about_fluke_and_worms_in_autumn_and_before_housing() => Assert.Equal(
        [Sample.Day("2026-10-01"), Sample.Day("2026-12-20")], Plan.Jobs.Where(j => j.Kind == JobKind.FlukeAndWorms).Select(j => j.Date!.Value));

    [Fact]
    public void Ewes_are_gathered_seven_times()
    {
        Assert.Equal(
            ["2026-06-14", "2026-08-10", "2026-09-21", "2026-10-24", "2026-11-08", "2026-12-06", "2026-12-26"],
            Plan.Gatherings.Select(g => NodaTime.Text.LocalDatePattern.Iso.Format(g.Date)));
        Assert.Equal([JobKind.TeethToesTeats, JobKind.Shear], Plan.Gatherings[0].Jobs.Select(j => j.Kind));
        Assert.Equal([JobKind.LookOver, JobKind.Booster], Plan.Gatherings[^2].Jobs.Select(j => j.Kind));
        Assert.Equal([JobKind.House, JobKind.Dag], Plan.Gatherings[^1].Jobs.Select(j => j.Kind));
    }

    [Theory]
    [InlineData(JobKind.Scan, JobReason.LambsCanBeCounted, DayReason.Best)]
    [InlineData(JobKind.Booster, JobReason.FirstMilkProtectsLambs, DayReason.SavesGathering)]
    [InlineData(JobKind.House, JobReason.SettledBeforeLambing, DayReason.NearestFreeSinceAway)]
    [InlineData(JobKind.Shear, JobReason.ShornBeforeTupping, DayReason.NearestFree)]
    [InlineData(JobKind.TeethToesTeats, JobReason.TimeToMendFeetAndCondition, DayReason.NearestFree)]
    [InlineData(JobKind.FeedFrom, JobReason.FeedChartSaysSo, DayReason.Best)]
    public void Each_job_has_its_reason_for_the_time_and_for_the_day(JobKind kind, JobReason reason, DayReason day)
    {
        var job = Plan.Jobs.Single(j => j.Kind == kind);

        Assert.Equal((reason, day), (job.Rule.Reason, job.WhyThatDay));
    }

    [Fact]
    public void The_paper_runs_from_the_week_of_the_first_job_to_a_month_after_the_last_lamb()
    {
        Assert.Equal(new SeasonDates(Sample.TupIn, Sample.TupOut, Sample.Day("2027-01-04"), Sample.Day("2027-02-15")), Plan.Dates);
        Assert.Equal((Sample.Day("2026-05-25"), Sample.Day("2027-03-17")), (Plan.From, Plan.To));
        Assert.Equal(Plan.From, Plan.Rounds[0].Date);
        Assert.Equal(Plan.To, Plan.Rounds[^1].Date);
        var group = Assert.Single(Plan.Groups);
        Assert.Equal((Plan.Flock.Groups[0], Sample.Day("2027-01-04"), Sample.Day("2027-02-15"), Sample.Day("2026-12-26")), (group.Group, group.FirstDue, group.LastDue, group.Housed));
    }

    [Fact]
    public void Jobs_stand_in_date_order_and_all_have_a_day()
    {
        Assert.Equal(Plan.Jobs.OrderBy(j => j.ShownOn), Plan.Jobs);
        Assert.All(Plan.Jobs, j => Assert.NotNull(j.Date));
    }
}
