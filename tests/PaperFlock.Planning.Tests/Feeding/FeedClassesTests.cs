using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>Who is fed by which chart, at which trough.</summary>
public sealed class FeedClassesTests
{
    private static readonly LocalDate Due = FeedingSample.FirstDue;

    [Fact]
    public void Lambs_carried_part_them_and_twins_a_fortnight_apart_have_charts_of_their_own()
    {
        ImmutableArray<EwePlan> ewes = [.. FeedingSample.Ewes(3, 1), .. FeedingSample.Ewes(3, 2, from: 4), .. FeedingSample.Ewes(3, 2, from: 7, due: 14), .. FeedingSample.Ewes(2, 3, from: 10)];
        var plan = FedFlock.Plan(FedFlock.Stepped(ewes), ewes);
        Assert.Equal(["FEED-SINGLES-1", "FEED-TWINS-1", "FEED-TWINS-3", "FEED-TRIPLETS-1"], plan.Charts.Select(c => c.Code));
        Assert.Equal([3, 3, 3, 2], plan.Charts.Select(c => c.MostHeads));
    }

    /// <summary>Three days apart, but in two weeks of the keeper's.</summary>
    [Fact]
    public void Ewes_due_in_weeks_that_follow_each_other_are_one_class()
    {
        ImmutableArray<EwePlan> ewes = [.. FeedingSample.Ewes(3, 2, due: 6), .. FeedingSample.Ewes(3, 2, from: 4, due: 9)];
        Assert.Equal("FEED-TWINS-1", Assert.Single(FedFlock.Plan(FedFlock.Stepped(ewes), ewes).Charts).Code);
    }

    /// <summary>Rations go by the week, so that the earliest of a week can leave it and the others eat on as before.</summary>
    [Fact]
    public void A_ewe_scanned_again_leaves_the_charts_of_the_others_as_they_are()
    {
        ImmutableArray<EwePlan> ewes = [.. FeedingSample.Ewes(4, 1, due: 2), FeedingSample.Ewe(5, 2), .. FeedingSample.Ewes(4, 2, from: 6, due: 5)];
        ImmutableArray<EwePlan> again = [.. ewes.Select(e => e.Ewe.Tag == ewes[4].Ewe.Tag ? FeedingSample.Ewe(5, 1) : e)];
        var (before, after) = (FedFlock.Plan(FedFlock.Stepped(ewes), ewes), FedFlock.Plan(FedFlock.Stepped(again), again));
        Assert.Equal([4, 5], before.Charts.Select(c => c.Ewes.Length));
        Assert.Equal([5, 4], after.Charts.Select(c => c.Ewes.Length));
        Assert.Equal(before.Charts.Select(c => c.Code), after.Charts.Select(c => c.Code));
        Assert.Equal(Given(before), Given(after));

        static IEnumerable<(LocalDate, decimal)> Given(FeedingPlan plan) => plan.Charts.SelectMany(c => c.Rows).Select(r => (r.From, r.KgPerEwePerDay));
    }

    [Theory]
    [InlineData(2, 1)]
    [InlineData(3, 2)]
    public void Two_late_twins_eat_with_the_others_and_three_by_themselves(int late, int charts)
    {
        ImmutableArray<EwePlan> ewes = [.. FeedingSample.Ewes(4, 2), .. FeedingSample.Ewes(late, 2, from: 5, due: 21)];
        var plan = FedFlock.Plan(FedFlock.Stepped(ewes), ewes);
        Assert.Equal(charts, plan.Charts.Length);
        Assert.Equal(4 + late, plan.Charts.Sum(c => c.Ewes.Length));
        Assert.All(plan.Charts, c => Assert.Empty(c.Joined));
    }

    [Fact]
    public void One_by_herself_joins_the_class_above_or_where_there_is_none_the_one_below()
    {
        ImmutableArray<EwePlan> ewes = [FeedingSample.Ewe(1, 1), .. FeedingSample.Ewes(4, 2, from: 2), FeedingSample.Ewe(9, 3)];
        var plan = FedFlock.Plan(FedFlock.Stepped(ewes), ewes);
        var chart = Assert.Single(plan.Charts);
        Assert.Equal(("FEED-TWINS-1", 6), (chart.Code, chart.Ewes.Length));
        Assert.Equal(["ZZ 0123456 00001", "ZZ 0123456 00009"], chart.Joined.Select(e => e.Ewe.Tag).Order());

        var joined = plan.Warnings.Where(w => w.Kind == FeedWarningKind.Joined).ToList();
        Assert.True(joined.Single(w => w.Ewes[0].Scan == 3) is var triplet && triplet.Number < triplet.Against);
        Assert.True(joined.Single(w => w.Ewes[0].Scan == 1) is var single && single.Number > single.Against);

        // She is due her eight weeks, and they all begin with her.
        Assert.Equal(Due.PlusWeeks(-8), chart.Start);
    }

    [Fact]
    public void A_twin_due_by_herself_is_counted_with_the_other_twins_from_the_first_of_them()
    {
        ImmutableArray<EwePlan> ewes = [.. FeedingSample.Ewes(3, 2), FeedingSample.Ewe(4, 2, due: 20), .. FeedingSample.Ewes(3, 1, from: 5)];
        var twins = FedFlock.Plan(FedFlock.Stepped(ewes), ewes).Chart(FeedKind.Twins);
        Assert.Equal((4, Due), (twins.Ewes.Length, twins.CountedFrom));
        Assert.Empty(twins.Joined);
    }

    [Fact]
    public void Thin_ewes_go_with_the_class_above_and_begin_at_eight_weeks()
    {
        ImmutableArray<EwePlan> ewes = [.. FeedingSample.Ewes(3, 1), FeedingSample.Ewe(4, 1, condition: 2), .. FeedingSample.Ewes(3, 2, from: 5)];
        var plan = FedFlock.Plan(FedFlock.Stepped(ewes), ewes);
        Assert.Equal(4, plan.Chart(FeedKind.Twins).Ewes.Length);
        Assert.Equal(Due.PlusWeeks(-8), plan.Chart(FeedKind.Twins).Start);
        Assert.Equal(Due.PlusWeeks(-6), plan.Chart(FeedKind.Singles).Start);
    }

    [Fact]
    public void Ewes_that_are_not_parted_share_a_chart_and_it_is_said_who_gets_less()
    {
        ImmutableArray<EwePlan> ewes = [.. FeedingSample.Ewes(3, 1), .. FeedingSample.Ewes(3, 2, from: 4), .. FeedingSample.Ewes(3, 3, from: 7)];
        var plan = FedFlock.Plan(FedFlock.Stepped(ewes, f => f with { Parted = Parting.No }), ewes);
        var chart = Assert.Single(plan.Charts);
        Assert.Equal(("FEED-MIXED-1", 9), (chart.Code, chart.MostHeads));
        var lacks = plan.Warnings.Where(w => w.Kind == FeedWarningKind.Shared).ToList();
        Assert.Equal(FeedKind.Triplets, lacks.MaxBy(w => w.Against - w.Number)!.Of);
        Assert.DoesNotContain(lacks, w => w.Of == FeedKind.Singles);

        // By heads, the mean of what each kind would have had.
        var parted = FedFlock.Plan(FedFlock.Stepped(ewes), ewes);
        var apart = parted.Charts.Average(c => c.Rows[^1].KgPerEwePerDay);
        Assert.InRange(chart.Rows[^1].KgPerEwePerDay, apart - 0.05m, apart);
    }

    /// <summary>Six ewes of 70 kg want 3 m, and a hurdle takes 0.6 m: Teagasc, and the Irish Farmers Journal on walk-through troughs.</summary>
    [Theory]
    [InlineData(3.6, 2)]
    [InlineData(3.5, 1)]
    public void A_pen_is_parted_where_the_trough_is_long_enough_for_the_hurdle(double trough, int charts)
    {
        ImmutableArray<EwePlan> ewes = [.. FeedingSample.Ewes(3, 1), .. FeedingSample.Ewes(3, 2, from: 4)];
        var flock = FedFlock.Stepped(ewes).WithPens(FeedingSample.Pen("North bay", 6, 4, (decimal)trough));
        Assert.Equal(charts, FedFlock.Plan(flock, ewes, Due.PlusDays(-7), _ => "North bay").Charts.Length);
    }

    [Fact]
    public void The_unscanned_are_fed_as_the_flock_on_average_and_never_below_the_first_step_of_twins()
    {
        ImmutableArray<EwePlan> ewes = [.. FeedingSample.Ewes(4, 1), .. FeedingSample.Ewes(4, null, from: 5), .. FeedingSample.Ewes(4, 2, from: 9)];
        var plan = FedFlock.Plan(FedFlock.Stepped(ewes), ewes);
        var unscanned = plan.Chart(FeedKind.NotScanned);
        Assert.Equal(1.5m, unscanned.Lambs);
        Assert.InRange(unscanned.Rows[^1].KgPerEwePerDay, plan.Chart(FeedKind.Singles).Rows[^1].KgPerEwePerDay, plan.Chart(FeedKind.Twins).Rows[^1].KgPerEwePerDay);

        ImmutableArray<EwePlan> singles = [.. FeedingSample.Ewes(4, 1), .. FeedingSample.Ewes(4, null, from: 5)];
        var amongSingles = FedFlock.Plan(FedFlock.Stepped(singles), singles).Chart(FeedKind.NotScanned);
        Assert.True(amongSingles.Rows.First(r => !r.IsStep).KgPerEwePerDay >= 0.35m);
    }

    [Fact]
    public void A_lambing_moves_no_chart()
    {
        ImmutableArray<EwePlan> ewes = [.. FeedingSample.Ewes(3, 1), .. FeedingSample.Ewes(4, 2, from: 4), .. FeedingSample.Ewes(4, 2, from: 8, due: 14)];
        var flock = FedFlock.Stepped(ewes);
        var before = FedFlock.Plan(flock, ewes);
        ImmutableArray<EwePlan> after =
        [
            .. ewes.Select((e, i) => i is 0 or 3 or 4 or 5 ? e with { Standing = Standing.Lambed, Ewe = e.Ewe with { Lambed = Due.PlusDays(i) } } : e),
        ];
        var now = FedFlock.Plan(flock, after);
        Assert.Equal(
            before.Charts.SelectMany(c => c.Rows.Select(r => (c.Code, r.From, r.KgPerEwePerDay))),
            now.Charts.SelectMany(c => c.Rows.Select(r => (c.Code, r.From, r.KgPerEwePerDay))));
        Assert.DoesNotContain(now.On(Due.PlusDays(6)).Where(t => t.Kind is not null), t => t.Ewes.Any(e => e.Tag == ewes[0].Ewe.Tag));
        Assert.Contains(now.On(Due.PlusDays(6)), t => t.Chart == FeedCodes.Lambed && t.Ewes.Any(e => e.Tag == ewes[0].Ewe.Tag));
    }

    [Fact]
    public void Hardy_ewes_on_forage_alone_have_rows_and_nothing_to_weigh()
    {
        var ewes = FeedingSample.Ewes(4);
        var plan = FedFlock.Plan(FedFlock.Stepped(ewes, f => f with { ForageOnly = true }), ewes);
        Assert.All(Assert.Single(plan.Charts).Rows, r => Assert.Equal((0m, 0), (r.KgPerEwePerDay, r.FedAt.Length)));
        Assert.Contains(plan.Warnings, w => w.Kind == FeedWarningKind.ForageCannotCarry && w.Number < w.Against);
    }
}
