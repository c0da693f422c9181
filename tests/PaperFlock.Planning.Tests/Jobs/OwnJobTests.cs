using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests.Jobs;

public class OwnJobTests
{
    private static readonly LocalDate FirstDue = new(2027, 1, 4);

    [Theory]
    [InlineData(JobAnchor.TupIn, "2026-08-10", "after the tup goes in")]
    [InlineData(JobAnchor.TupOut, "2026-09-21", "after the tup comes out")]
    [InlineData(JobAnchor.Scan, "2026-10-24", "after scanning")]
    [InlineData(JobAnchor.Feeding, "2026-11-23", "after feeding starts")]
    [InlineData(JobAnchor.Housing, "2026-12-28", "after housing")]
    [InlineData(JobAnchor.FirstDue, "2027-01-04", "after the first is due")]
    [InlineData(JobAnchor.LastDue, "2027-02-15", "after the last is due")]
    public void A_window_hangs_on_its_groups_own_day(JobAnchor anchor, string day, string words)
    {
        var job = Only(Sample.Own("Footbath", anchor, 1, 5, handled: false));

        Assert.Equal((Sample.Day(day).PlusDays(1), Sample.Day(day).PlusDays(5)), (job.Earliest, job.Latest));
        Assert.StartsWith($"The flock file asks for it 1 to 5 days {words}", job.Why, StringComparison.Ordinal);
        Assert.Equal("the flock file", job.Source);
    }

    [Theory]
    [InlineData(-21, -14, "21 to 14 days before scanning")]
    [InlineData(-7, -7, "7 days before scanning")]
    [InlineData(0, 0, "on the same day as scanning")]
    [InlineData(-3, 0, "3 to 0 days before scanning")]
    [InlineData(0, 5, "0 to 5 days after scanning")]
    [InlineData(-3, 1, "from 3 days before to 1 day after scanning")]
    public void Its_window_is_said_in_words(int first, int last, string words) =>
        Assert.StartsWith(
            $"The flock file asks for it {words}", Only(Sample.Own("Footbath", JobAnchor.Scan, first, last, handled: false)).Why, StringComparison.Ordinal);

    [Fact]
    public void A_job_on_a_day_stands_there_for_the_whole_flock()
    {
        var job = Only(Sample.OwnOn("Feed merchant closed", "2026-12-31", handled: false));

        Assert.Equal(Sample.Day("2026-12-31"), job.Date);
        Assert.True(job.Fixed);
        Assert.Null(job.Group);
        Assert.Contains("the keeper is away that day", job.Why, StringComparison.Ordinal);
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
    [InlineData(-50, -30, "2026-11-15", "2026-11-22", "kept out of the last six weeks")]
    [InlineData(-43, 0, "2026-11-22", "2026-11-22", "kept out of the last six weeks")]
    // Its last day is the first of them.
    [InlineData(-50, -42, "2026-11-15", "2026-11-22", "kept out of the last six weeks")]
    // Wholly inside them: it says it must.
    [InlineData(-42, -30, "2026-11-23", "2026-12-05", "handle her standing")]
    [InlineData(10, 20, "2027-01-14", "2027-01-24", "handle her standing")]
    // Its first day is the one the last are due on.
    [InlineData(42, 50, "2027-02-15", "2027-02-23", "handle her standing")]
    public void No_ewe_is_turned_over_in_the_last_six_weeks_unless_the_job_says_it_must(int first, int last, string earliest, string latest, string words)
    {
        var job = Only(Sample.Own("Trim feet", JobAnchor.FirstDue, first, last));

        Assert.Equal((Sample.Day(earliest), Sample.Day(latest)), (job.Earliest, job.Latest));
        Assert.Contains(words, job.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-50, -43, true)]
    [InlineData(-50, -30, false)]
    [InlineData(50, 60, true)]
    public void Outside_those_weeks_or_without_handling_nothing_is_said(int first, int last, bool handled)
    {
        var job = Only(Sample.Own("Trim feet", JobAnchor.FirstDue, first, last, handled));

        Assert.Equal((FirstDue.PlusDays(first), FirstDue.PlusDays(last)), (job.Earliest, job.Latest));
        Assert.DoesNotContain("six weeks", job.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_handled_job_on_its_own_day_is_a_gathering_others_share()
    {
        var plan = Plan(Sample.OwnOn("Vet's visit", "2026-06-20"));

        Assert.Equal(Sample.Day("2026-06-20"), plan.Jobs.Single(j => j.Id == JobIds.Shear).Date);
        Assert.Contains("one gathering with", plan.Jobs.Single(j => j.Id == JobIds.Shear).Why, StringComparison.Ordinal);
        Assert.Equal(3, plan.Gatherings.Single(g => g.Date == Sample.Day("2026-06-20")).Jobs.Length);
    }

    [Theory]
    [InlineData("2026-12-05", true, true)]
    [InlineData("2026-12-05", false, false)]
    [InlineData("2026-11-21", true, false)]
    public void A_handled_job_on_a_day_of_the_last_six_weeks_says_to_handle_her_standing(string day, bool handled, bool said) =>
        Assert.Equal(said, Only(Sample.OwnOn("Vet's visit", day, handled)).Why.Contains("handle her standing", StringComparison.Ordinal));

    [Fact]
    public void A_job_on_a_day_is_for_the_ewes_of_every_group_and_minds_the_heaviest()
    {
        // Six weeks before the first lambs of each group: 23 November and 7 December.
        var flock = Sample.Flock(
            [Sample.Group("Orchard"), Sample.Group("Paddock", Sample.TupIn.PlusDays(14))],
            Sample.Ewe(group: "Orchard"), Sample.Ewe("Fern", group: "Orchard"), Sample.Ewe("Sedge", group: "Paddock"));
        var plan = SeasonPlanner.Plan(
            flock with { OwnJobs = [Sample.OwnOn("Vet's visit", "2026-11-28") with { MinutesPerEwe = 2 }] }, Sample.Day("2026-05-01"));

        var job = plan.Jobs.Single(j => j.Id == JobIds.Own);
        Assert.Equal(6, job.Minutes);
        Assert.Contains("handle her standing", job.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gathering_for_many_jobs_names_three_others_and_counts_the_rest()
    {
        var plan = SeasonPlanner.Plan(
            Sample.Flock(Sample.Ewe()) with { OwnJobs = [.. new[] { "A", "B", "C", "D", "E" }.Select(t => Sample.OwnOn(t, "2026-07-01"))] },
            Sample.Day("2026-05-01"));
        Assert.EndsWith("one gathering with B, C, D and 1 more.", plan.Jobs.Single(j => j.Title == "A").Why, StringComparison.Ordinal);

        var four = SeasonPlanner.Plan(
            Sample.Flock(Sample.Ewe()) with { OwnJobs = [.. new[] { "A", "B", "C", "D" }.Select(t => Sample.OwnOn(t, "2026-07-01"))] },
            Sample.Day("2026-05-01"));
        Assert.EndsWith("one gathering with B, C, D.", four.Jobs.Single(j => j.Title == "A").Why, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_for_the_whole_flock_comes_first_on_its_day() =>
        Assert.Equal([JobIds.Own, JobIds.TupIn], Plan(Sample.OwnOn("Vet's visit", "2026-08-10")).Jobs.Where(j => j.ShownOn == Sample.TupIn).Select(j => j.Id));

    [Fact]
    public void What_hangs_on_lambing_is_left_off_where_nothing_is_in_lamb() =>
        Assert.DoesNotContain(
            SeasonPlanner.Plan(Sample.Flock(Sample.Ewe(scan: 0)) with { OwnJobs = [Sample.Own("Drench", JobAnchor.Housing, -21, -14)] }, FirstDue).Jobs,
            j => j.Id == JobIds.Own);

    private static PlannedJob Only(OwnJob job, params Ewe[] ewes) => Assert.Single(Plan(job, ewes).Jobs, j => j.Id == JobIds.Own);

    private static SeasonPlan Plan(OwnJob job, params Ewe[] ewes) =>
        SeasonPlanner.Plan(Sample.Flock(ewes.Length == 0 ? [Sample.Ewe()] : ewes) with { OwnJobs = [job] }, Sample.Day("2026-05-01"));
}
