namespace PaperFlock.Planning.Tests.Jobs;

/// <summary>
/// The demonstration season, each day counted by hand on a calendar: tup in Mon 10 Aug 2026 to Mon 21 Sep, 147 days, a keeper
/// free at weekends and away from Sun 27 Dec to Sat 2 Jan.
/// </summary>
public class DemoSeasonTests
{
    private static readonly SeasonPlan Plan = SeasonPlanner.Plan(Sample.Flock(Sample.Ewe(), Sample.Ewe("Fern")), Sample.Day("2026-05-01"));

    [Theory]
    // id, earliest, best, latest, the day given, handled
    [InlineData(JobIds.TupCheck, "2026-05-25", "2026-06-01", "2026-06-08", "2026-05-31", false)]
    [InlineData(JobIds.TeethToesTeats, "2026-06-08", "2026-06-15", "2026-06-29", "2026-06-14", true)]
    [InlineData(JobIds.Shear, "2026-06-01", "2026-06-15", "2026-07-27", "2026-06-14", true)]
    [InlineData(JobIds.TupIn, "2026-08-10", "2026-08-10", "2026-08-10", "2026-08-10", true)]
    [InlineData(JobIds.TupOut, "2026-09-21", "2026-09-21", "2026-09-21", "2026-09-21", true)]
    [InlineData(JobIds.Scan, "2026-10-24", "2026-10-24", "2026-10-29", "2026-10-24", true)]
    [InlineData(JobIds.FeedFrom, "2026-11-23", "2026-11-23", "2026-11-23", "2026-11-23", false)]
    [InlineData(JobIds.BucketsOut, "2026-11-23", "2026-11-23", "2026-11-23", "2026-11-23", false)]
    [InlineData(JobIds.HeavyRounds, "2026-11-23", "2026-11-23", "2026-11-23", "2026-11-23", false)]
    [InlineData(JobIds.Booster, "2026-11-23", "2026-11-30", "2026-12-07", "2026-11-29", true)]
    [InlineData(JobIds.TwoFeeds, "2026-12-10", "2026-12-10", "2026-12-10", "2026-12-10", false)]
    [InlineData(JobIds.ShedReady, "2026-12-14", "2026-12-21", "2026-12-25", "2026-12-20", false)]
    [InlineData(JobIds.House, "2026-12-25", "2026-12-28", "2026-12-30", "2026-12-26", true)]
    [InlineData(JobIds.Dag, "2026-12-25", "2026-12-28", "2026-12-30", "2026-12-26", true)]
    [InlineData(JobIds.FirstDue, "2027-01-04", "2027-01-04", "2027-01-04", "2027-01-04", false)]
    [InlineData(JobIds.LastDue, "2027-02-15", "2027-02-15", "2027-02-15", "2027-02-15", false)]
    public void Each_job_has_its_window_and_its_day(string id, string earliest, string best, string latest, string date, bool handled)
    {
        var job = Assert.Single(Plan.Jobs, j => j.Id == id);

        Assert.Equal(Sample.Day(earliest), job.Earliest);
        Assert.Equal(Sample.Day(best), job.Best);
        Assert.Equal(Sample.Day(latest), job.Latest);
        Assert.Equal(Sample.Day(date), job.Date);
        Assert.Equal(handled, job.Handled);
    }

    [Fact]
    public void Colours_change_every_cycle_while_the_tup_is_in()
    {
        var changes = Plan.Jobs.Where(j => j.Id == JobIds.RaddleChange).Select(j => (j.Title, j.Date));

        Assert.Equal([("Raddle to orange", Sample.Day("2026-08-27")), ("Raddle to red", Sample.Day("2026-09-13"))], changes);
        Assert.Equal("Tup in, raddle yellow", Plan.Jobs.Single(j => j.Id == JobIds.TupIn).Title);
    }

    [Fact]
    public void Ewes_are_gathered_six_times()
    {
        Assert.Equal(
            ["2026-06-14", "2026-08-10", "2026-09-21", "2026-10-24", "2026-11-29", "2026-12-26"],
            Plan.Gatherings.Select(g => NodaTime.Text.LocalDatePattern.Iso.Format(g.Date)));
        Assert.Equal([JobIds.TeethToesTeats, JobIds.Shear], Plan.Gatherings[0].Jobs.Select(j => j.Id));
        Assert.Equal([JobIds.House, JobIds.Dag], Plan.Gatherings[^1].Jobs.Select(j => j.Id));
    }

    [Theory]
    [InlineData(JobIds.Scan, "75 days after the tup went in, when lambs can be counted.")]
    [InlineData(JobIds.Booster, "5 weeks before the first is due, so that her first milk carries it to her lambs; handle her standing; the nearest free day.")]
    [InlineData(JobIds.House, "1 week before the first is due, so that they are settled before lambs come; the nearest free day, as the keeper is away on Mon 28 Dec; one gathering with Dag.")]
    [InlineData(JobIds.Shear, "8 weeks before the tup goes in; the nearest free day; one gathering with Teeth, toes, teats and condition.")]
    [InlineData(JobIds.TeethToesTeats, "8 weeks before the tup goes in, so that there is time to mend feet and condition; the nearest free day; one gathering with Shear.")]
    [InlineData(JobIds.FeedFrom, "FEED-NOT-SCANNED-1 says so")]
    public void Each_job_says_why_it_is_on_its_day(string id, string why) =>
        Assert.Equal(why, Plan.Jobs.Single(j => j.Id == id).Why);

    [Fact]
    public void The_paper_runs_from_the_week_of_the_first_job_to_a_month_after_the_last_lamb()
    {
        Assert.Equal(new SeasonDates(Sample.TupIn, Sample.TupOut, Sample.Day("2027-01-04"), Sample.Day("2027-02-15")), Plan.Dates);
        Assert.Equal((Sample.Day("2026-05-25"), Sample.Day("2027-03-17")), (Plan.From, Plan.To));
        Assert.Equal(Plan.From, Plan.Rounds[0].Date);
        Assert.Equal(Plan.To, Plan.Rounds[^1].Date);
        Assert.Equal(new GroupPlan(Plan.Flock.Groups[0], Sample.Day("2027-01-04"), Sample.Day("2027-02-15"), Sample.Day("2026-12-26")), Assert.Single(Plan.Groups) with { FirstDueWhy = "", LastDueWhy = "" });
    }

    [Fact]
    public void Jobs_stand_in_date_order_and_name_a_source()
    {
        Assert.Equal(Plan.Jobs.OrderBy(j => j.ShownOn).Select(j => j.Title), Plan.Jobs.Select(j => j.Title));
        Assert.All(Plan.Jobs, j => Assert.NotEmpty(j.Source));
        Assert.All(Plan.Jobs, j => Assert.Null(j.Trouble));
    }
}
