using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests;

public class SeasonPlannerTests
{
    private static readonly LocalDate AsOf = new(2026, 8, 1);

    [Fact]
    public void Today_moves_no_date()
    {
        var flock = Large(groups: 2, own: 2, ewes: 10);

        Assert.Equal(SeasonPlanner.Plan(flock, AsOf).Jobs, SeasonPlanner.Plan(flock, AsOf.PlusDays(200)).Jobs);
    }

    [Fact]
    public void Ewes_stay_in_the_order_of_the_file_and_groups_in_theirs()
    {
        var flock = Large(groups: 3, own: 0, ewes: 9);

        var plan = SeasonPlanner.Plan(flock, AsOf);

        Assert.Equal(flock.Ewes, plan.Ewes.Select(e => e.Ewe));
        Assert.Equal(flock.Groups, plan.Groups.Select(g => g.Group));
    }

    [Theory]
    [InlineData(IsoDayOfWeek.Monday, "2026-05-25")]
    [InlineData(IsoDayOfWeek.Sunday, "2026-05-31")]
    [InlineData(IsoDayOfWeek.Saturday, "2026-05-30")]
    public void The_first_row_of_the_paper_is_a_whole_week(IsoDayOfWeek weekStarts, string from)
    {
        var flock = Sample.Flock(Sample.Ewe()) with { Print = Sample.Print() with { WeekStarts = weekStarts } };

        // The first job is the check of the tup on Sun 31 May.
        Assert.Equal(Sample.Day(from), SeasonPlanner.Plan(flock, AsOf).From);
    }

    /// <summary>147 days from each tup's first and last day; lambing is from the first day for 9 in 10 of the first to the last day there is.</summary>
    [Fact]
    public void A_season_runs_from_the_first_group_to_the_last()
    {
        var plan = SeasonPlanner.Plan(
            Sample.Flock(
                [Sample.Group("Orchard"), Sample.Group("Paddock", Sample.Day("2026-08-03"), Sample.Day("2026-09-28"))],
                Sample.Ewe("Bracken", "Orchard", "2026-08-14"), Sample.Ewe("Fern", "Paddock", "2026-08-07"), Sample.Ewe("Sorrel", "Paddock")),
            AsOf);
        Assert.Equal(new SeasonDates(Sample.Day("2026-08-03"), Sample.Day("2026-09-28"), plan.Groups[1].FirstDue, plan.Groups[1].LastDue), plan.Dates);
        Assert.Equal(Sample.Day("2027-02-22"), plan.Groups[1].LastDue);
        var lambing = plan.Rounds.Where(r => r.Why == RoundReason.Lambing).Select(r => r.Date).ToList();
        Assert.Equal((plan.Ewes.Min(e => e.Due!.Earliest), Sample.Day("2027-02-22")), (lambing[0], lambing[^1]));
    }

    [Fact]
    public void A_job_of_the_keepers_own_takes_time_for_each_ewe_of_its_group()
    {
        var plan = SeasonPlanner.Plan(
            Sample.Flock([Sample.Group("Orchard"), Sample.Group("Paddock")], Sample.Ewe("Bracken", "Orchard"), Sample.Ewe("Fern", "Orchard"), Sample.Ewe("Sorrel", "Paddock")) with
            {
                OwnJobs = [Sample.Own("Feet", JobAnchor.TupOut, 7, 14) with { MinutesPerEwe = 5 }],
            },
            AsOf);
        Assert.Equal([("Orchard", 10), ("Paddock", 5)], plan.Jobs.Where(j => j.Kind == JobKind.Own).Select(j => (j.Group!.Name, j.Minutes!.Value)).Order());
    }

    /// <summary>The keeper has weekends: gatherings on other days are not his to join.</summary>
    [Fact]
    public void Gatherings_in_the_window_of_a_job_that_it_could_not_join_are_told()
    {
        var plan = SeasonPlanner.Plan(Sample.Flock(Sample.Ewe()), AsOf);
        var job = plan.Jobs.First(j => j is { Handled: true, IsFixed: false, Date: not null } && j.Earliest < j.Date && j.Date < j.Latest);
        LocalDate[] days = [.. Enumerable.Range(-1, Period.DaysBetween(job.Earliest, job.Latest) + 3).Select(job.Earliest.PlusDays)];
        var every = plan with { Gatherings = [.. days.Select(d => new Gathering(d, []))] };

        Assert.Equal(days[1..^1].Where(d => d != job.Date && !plan.Flock.KeeperDays.IsFree(d)), every.NotJoined(job).Select(g => g.Date));
        Assert.Contains(every.NotJoined(job), g => g.Date == job.Earliest || g.Date == job.Latest);
        Assert.Equal(job.Date, every.GatheringOf(job)!.Date);
        Assert.Null(every.GatheringOf(plan.Jobs.First(j => !j.Handled && days.Contains(j.ShownOn))));
        Assert.Null((plan with { Gatherings = [] }).GatheringOf(job));
    }

    [Theory]
    [InlineData(-15, false)]
    [InlineData(-14, true)]
    [InlineData(-7, true)]
    [InlineData(-6, false)]
    public void A_window_holds_its_first_and_its_last_day(int day, bool held) => Assert.Equal(held, new JobWindow(-14, -10, -7).Holds(day));

    /// <summary>In whole percents 99.5 is 100.</summary>
    [Theory]
    [InlineData(0.994, false)]
    [InlineData(0.995, true)]
    [InlineData(1, true)]
    public void A_sire_is_certain_when_nothing_is_left_for_another(double chance, bool certain) => Assert.Equal(certain, new Sire("Bramley", chance).IsCertain);

    [Fact]
    public void A_job_after_the_last_lambs_keeps_the_paper_going()
    {
        var flock = Sample.Flock(Sample.Ewe()) with { OwnJobs = [Sample.OwnOn("Wean", "2027-06-01")] };

        Assert.Equal(Sample.Day("2027-06-01"), SeasonPlanner.Plan(flock, AsOf).To);
    }

    /// <summary>Beyond any flock the paper is for: a dozen groups, forty jobs of the keeper's own, three hundred ewes.</summary>
    [Fact]
    public void A_very_large_flock_hangs_together()
    {
        var plan = SeasonPlanner.Plan(Large(groups: 12, own: 40, ewes: 300), AsOf);

        Assert.Equal(300, plan.Feeding.Charts.Sum(c => c.Ewes.Length));
        Assert.Equal(12 * 40, plan.Jobs.Count(j => j.Kind == JobKind.Own));
        Assert.Equal(300, plan.Lambing.Days.Sum(d => d.ExpectedEwes), 1e-9);
        Assert.All(plan.Jobs, j => Assert.True(j.Date is null ? j.WhyThatDay == DayReason.NoDay : j.Earliest <= j.Date && j.Date <= j.Latest, j.Kind.ToString()));
        Assert.Equal(
            plan.Jobs.Where(j => j is { Handled: true, Date: not null }).Select(j => j.Date!.Value).Distinct(),
            plan.Gatherings.Select(g => g.Date));
    }

    private static Flock Large(int groups, int own, int ewes) =>
        Sample.Flock(
            [.. Enumerable.Range(0, groups).Select(i => Sample.Group($"G{i}", Sample.TupIn.PlusDays(i % 15), tup: $"T{i}"))],
            [.. Enumerable.Range(0, ewes).Select(i => Sample.Ewe($"{i:0000}", $"G{i % groups}", i % 3 == 0 ? "2026-08-30" : ""))]) with
        {
            OwnJobs = [.. Enumerable.Range(0, own).Select(i => Sample.Own($"Job {i}", (JobAnchor)(i % 7), -(i % 90), 10 + (i % 30)))],
        };
}
