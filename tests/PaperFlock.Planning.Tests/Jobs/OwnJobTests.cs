using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests.Jobs;

public class OwnJobTests
{
    private static readonly LocalDate FirstDue = new(2027, 1, 4);

    [Theory]
    [InlineData(JobAnchor.TupIn, "2026-08-10")]
    [InlineData(JobAnchor.TupOut, "2026-09-21")]
    [InlineData(JobAnchor.Scan, "2026-10-24")]
    [InlineData(JobAnchor.Feeding, "2026-11-23")]
    [InlineData(JobAnchor.Housing, "2026-12-28")]
    [InlineData(JobAnchor.FirstDue, "2027-01-04")]
    [InlineData(JobAnchor.LastDue, "2027-02-15")]
    public void A_window_hangs_on_its_groups_own_day(JobAnchor anchor, string day)
    {
        var job = Only(Sample.Own("Footbath", anchor, 1, 5, handled: false));

        Assert.Equal((Sample.Day(day).PlusDays(1), Sample.Day(day).PlusDays(5)), (job.Earliest, job.Latest));
        Assert.Equal((anchor, Sample.Day(day), FigureSource.FlockFile), (job.Rule.Anchor, job.Anchor, job.Rule.Source));
    }

    [Fact]
    public void A_job_on_a_day_stands_there_for_the_whole_flock()
    {
        var job = Only(Sample.OwnOn("Feed merchant closed", "2026-12-31", handled: false));

        Assert.Equal(Sample.Day("2026-12-31"), job.Date);
        Assert.True(job.IsFixed);
        Assert.Null(job.Group);
        Assert.Equal(DayReason.StandsThoughAway, job.WhyThatDay);
    }

    [Fact]
    public void Minutes_are_for_all_the_ewes_of_the_group()
    {
        var drench = Sample.Own("Drench as vet advised", JobAnchor.Scan, 0, 14) with { MinutesPerEwe = 2.5m };

        Assert.Equal(5, Only(drench, Sample.Ewe(), Sample.Ewe("Fern")).Minutes);
        Assert.Equal(3, Only(drench, Sample.Ewe()).Minutes);
        Assert.Null(Only(drench with { MinutesPerEwe = null }, Sample.Ewe()).Minutes);
    }

    [Theory]
    // Partly before the last six weeks: kept to that part, the day before them at the latest.
    [InlineData(-50, -30, "2026-11-15", "2026-11-22", LateHandling.KeptBefore)]
    [InlineData(-43, 0, "2026-11-22", "2026-11-22", LateHandling.KeptBefore)]
    // Its last day is the first of them.
    [InlineData(-50, -42, "2026-11-15", "2026-11-22", LateHandling.KeptBefore)]
    // Wholly inside them: it says it must.
    [InlineData(-42, -30, "2026-11-23", "2026-12-05", LateHandling.Standing)]
    [InlineData(10, 20, "2027-01-14", "2027-01-24", LateHandling.Standing)]
    // Its first day is the one the last are due on.
    [InlineData(42, 50, "2027-02-15", "2027-02-23", LateHandling.Standing)]
    public void No_ewe_is_turned_over_in_the_last_six_weeks_unless_the_job_says_it_must(int first, int last, string earliest, string latest, LateHandling late)
    {
        var job = Only(Sample.Own("Trim feet", JobAnchor.FirstDue, first, last));

        Assert.Equal((Sample.Day(earliest), Sample.Day(latest)), (job.Earliest, job.Latest));
        Assert.Equal(late, job.Rule.Late);
    }

    [Theory]
    [InlineData(-50, -43, true)]
    [InlineData(-50, -30, false)]
    [InlineData(50, 60, true)]
    public void Outside_those_weeks_or_without_handling_nothing_is_said(int first, int last, bool handled)
    {
        var job = Only(Sample.Own("Trim feet", JobAnchor.FirstDue, first, last, handled));

        Assert.Equal((FirstDue.PlusDays(first), FirstDue.PlusDays(last)), (job.Earliest, job.Latest));
        Assert.Equal(LateHandling.None, job.Rule.Late);
    }

    [Fact]
    public void A_handled_job_on_its_own_day_is_a_gathering_others_share()
    {
        var plan = Plan(Sample.OwnOn("Vet's visit", "2026-06-20"));

        Assert.Equal(Sample.Day("2026-06-20"), plan.Jobs.Single(j => j.Kind == JobKind.Shear).Date);
        Assert.Equal(3, plan.Gatherings.Single(g => g.Date == Sample.Day("2026-06-20")).Jobs.Length);
    }

    [Theory]
    [InlineData("2026-12-05", true, true)]
    [InlineData("2026-12-05", false, false)]
    [InlineData("2026-11-21", true, false)]
    public void A_handled_job_on_a_day_of_the_last_six_weeks_says_to_handle_her_standing(string day, bool handled, bool said) =>
        Assert.Equal(said ? LateHandling.Standing : LateHandling.None, Only(Sample.OwnOn("Vet's visit", day, handled)).Rule.Late);

    [Fact]
    public void A_job_on_a_day_is_for_the_ewes_of_every_group_and_minds_the_heaviest()
    {
        // Six weeks before the first lambs of each group: 23 November and 7 December.
        var flock = Sample.Flock(
            [Sample.Group("Orchard"), Sample.Group("Paddock", Sample.TupIn.PlusDays(14))],
            Sample.Ewe(group: "Orchard"), Sample.Ewe("Fern", group: "Orchard"), Sample.Ewe("Sedge", group: "Paddock"));
        var plan = SeasonPlanner.Plan(
            flock with { OwnJobs = [Sample.OwnOn("Vet's visit", "2026-11-28") with { MinutesPerEwe = 2 }] }, Sample.Day("2026-05-01"));

        var job = plan.Jobs.Single(j => j.Kind == JobKind.Own);
        Assert.Equal(6, job.Minutes);
        Assert.Equal(LateHandling.Standing, job.Rule.Late);
    }

    [Fact]
    public void What_is_for_the_whole_flock_comes_first_on_its_day() =>
        Assert.Equal([JobKind.Own, JobKind.TupIn], Plan(Sample.OwnOn("Vet's visit", "2026-08-10")).Jobs.Where(j => j.ShownOn == Sample.TupIn).Select(j => j.Kind));

    [Fact]
    public void What_hangs_on_lambing_is_left_off_where_nothing_is_in_lamb() =>
        Assert.DoesNotContain(
            SeasonPlanner.Plan(Sample.Flock(Sample.Ewe(scan: 0)) with { OwnJobs = [Sample.Own("Drench", JobAnchor.Housing, -21, -14)] }, FirstDue).Jobs,
            j => j.Kind == JobKind.Own);

    private static Job Only(OwnJob job, params Ewe[] ewes) => Assert.Single(Plan(job, ewes).Jobs, j => j.Kind == JobKind.Own);

    private static SeasonPlan Plan(OwnJob job, params Ewe[] ewes) =>
        SeasonPlanner.Plan(Sample.Flock(ewes.Length == 0 ? [Sample.Ewe()] : ewes) with { OwnJobs = [job] }, Sample.Day("2026-05-01"));
}
