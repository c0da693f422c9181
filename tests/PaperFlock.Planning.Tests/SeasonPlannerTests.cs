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
