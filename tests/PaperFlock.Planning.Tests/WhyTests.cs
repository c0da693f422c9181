using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests;

/// <summary>The facts a plan gives for its reasons. Days are counted on a calendar.</summary>
public sealed class WhyTests
{
    private static readonly SeasonPlan Plan = SeasonPlanner.Plan(
        Sample.Flock(
            [Sample.Group("Orchard", tup: "Bramley"), Sample.Group("Paddock", tup: "Damson")],
            Sample.Ewe("Bracken", "Orchard", "2026-08-14", scan: 2),
            Sample.Ewe("Sorrel", "Orchard", "2026-08-12", scan: 1),
            Sample.Ewe("Heather", "Paddock", "2026-08-18"),
            Sample.Ewe("Lovage", "Paddock")),
        Sample.Day("2026-11-01"));

    [Fact]
    public void Every_job_but_those_put_on_a_day_hangs_on_a_day_of_its_group_or_its_chart()
    {
        Assert.All(Plan.Jobs.Where(j => j.Rule.Chart is null && j.Kind != JobKind.Booster && j.Rule.Reason != JobReason.AutumnFluke), j => Assert.NotNull(j.Rule.Anchor));
        Assert.All(Plan.Jobs.Where(j => j.Kind == JobKind.Booster), j => Assert.Contains(Plan.Ewes, e => e.Ewe.Group == j.Group!.Name && e.Due?.Likely == j.Anchor));
        Assert.All(Plan.Jobs.Where(j => j.Rule.Chart is not null), j => Assert.Equal(Plan.Feeding.Charts.Single(c => c.Code == j.Rule.Chart).CountedFrom, j.Anchor));
        var scan = Plan.Jobs.First(j => j.Kind == JobKind.Scan);
        Assert.Equal((JobAnchor.TupIn, Sample.Day("2026-08-10")), (scan.Rule.Anchor, scan.Anchor));
    }

    [Theory]
    [InlineData("Bracken", 147, 147)]
    [InlineData("Sorrel", 147, 148)]
    public void A_due_window_keeps_what_it_was_counted_from(string ewe, int carries, int mean)
    {
        var due = Plan.Ewes.Single(e => e.Ewe.Name == ewe).Due!;

        Assert.Equal((Evidence.Mark, carries, mean), (due.Evidence.Kind, due.Carries, due.Mean));
    }

    [Fact]
    public void A_job_that_is_not_on_its_best_day_says_why_and_one_that_is_does_not()
    {
        var away = SeasonPlanner.Plan(
            Sample.Flock([Sample.Group("Orchard")], Sample.Ewe("Bracken", "Orchard", "2026-08-14")) with
            {
                KeeperDays = Sample.Free(Sample.EveryDay, Sample.Away("2026-10-24", "2026-10-25")),
            },
            Sample.Day("2026-08-01"));
        var scan = away.Jobs.Single(j => j.Kind == JobKind.Scan);
        Assert.Equal((Sample.Day("2026-10-26"), DayReason.NearestFreeSinceAway), (scan.Date, scan.WhyThatDay));
        Assert.Equal(DayReason.Best, Plan.Jobs.First(j => j.Kind == JobKind.Scan).WhyThatDay);
    }

    [Fact]
    public void A_round_says_why_there_are_so_many()
    {
        Assert.Equal(RoundReason.HeavyWeeks, Plan.Rounds.First(r => r.Times.Length == 4).Why);
        Assert.Equal((6, RoundReason.Lambing), Plan.Rounds.Where(r => r.Date == Sample.Day("2027-01-08")).Select(r => (r.Times.Length, r.Why)).Single());
        Assert.Equal(RoundReason.OutsideHeavyWeeks, Plan.Rounds.First(r => r.Times.Length == 2).Why);
    }
}
