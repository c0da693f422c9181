using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

public sealed class TroughGroupsTests
{
    private static readonly LocalDate Housed = FeedingSample.FirstDue.PlusDays(-7);
    private static readonly HousingPlan NoPens = HousingPlan.None;

    [Fact]
    public void Six_ewes_with_twins_at_a_pound_a_lamb_get_2_72_kg_a_feed()
    {
        var ewes = FeedingSample.Ewes(6);
        var group = Assert.Single(Plan(FeedingSample.Flock(ewes), ewes));
        Assert.Equal("Twins", group.Name);
        Assert.All(group.Weeks, week =>
        {
            Assert.Equal(0.90718474m, week.KgPerEwePerDay); // two pounds, exact: Weights and Measures Act 1985, section 1
            Assert.Equal(2, week.FeedsPerDay);
            Assert.Equal(2.72m, Math.Round(week.KgPerFeedForGroup, 2));
            Assert.Equal(2m, week.ScoopsPerFeed);
        });
    }

    [Fact]
    public void Weeks_run_from_the_feed_week_to_the_one_that_holds_the_last_due_date()
    {
        ImmutableArray<EwePlan> ewes = [FeedingSample.Ewe(1, due: 0, stay: 10), FeedingSample.Ewe(2, due: 5, stay: 9)];
        var group = Assert.Single(Plan(FeedingSample.Flock(ewes), ewes));
        Assert.Equal(new LocalDate(2027, 1, 4), group.FirstDue);
        Assert.Equal(new LocalDate(2027, 1, 18), group.LastDue);
        Assert.Equal(new LocalDate(2026, 11, 23), group.Weeks[0].WeekBeginning);
        Assert.Equal([6, 5, 4, 3, 2, 1, 0, -1, -2], group.Weeks.Select(w => w.WeeksBefore));
        Assert.Equal(new LocalDate(2027, 1, 18), group.Weeks[^1].WeekBeginning); // the last due date itself begins a week
    }

    [Fact]
    public void A_lambing_on_29_February_is_counted_back_from_like_any_other()
    {
        var due = Period.DaysBetween(FeedingSample.FirstDue, new LocalDate(2028, 2, 29));
        ImmutableArray<EwePlan> ewes = [FeedingSample.Ewe(1, due: due, stay: 0)];
        var group = Assert.Single(Plan(FeedingSample.Flock(ewes), ewes));
        Assert.Equal(new LocalDate(2028, 1, 18), group.Weeks[0].WeekBeginning);
        Assert.Equal(0, group.Weeks[^1].WeeksBefore);
    }

    [Fact]
    public void Each_litter_is_a_group_and_the_unscanned_are_fed_as_singles()
    {
        ImmutableArray<EwePlan> ewes =
        [
            FeedingSample.Ewe(1, 3), FeedingSample.Ewe(2, null), FeedingSample.Ewe(3, 1), FeedingSample.Ewe(4, 2), FeedingSample.Ewe(5, 4),
            FeedingSample.Ewe(6, 5), FeedingSample.Ewe(7, 2),
        ];
        var groups = Plan(FeedingSample.Flock(ewes), ewes);
        Assert.Equal(["Singles", "Not scanned", "Twins", "Triplets", "Quads", "Fives"], groups.Select(g => g.Name));
        Assert.Equal([1, 2, 3, 4, 5, 6], groups.Select(g => g.Number));
        Assert.Equal([1, 1, 2, 3, 4, 5], groups.Select(g => g.Litter));
        Assert.Equal([true, false, true, true, true, true], groups.Select(g => g.Scanned));
    }

    [Fact]
    public void Ewes_not_to_lamb_are_in_no_group()
    {
        ImmutableArray<EwePlan> ewes =
        [
            FeedingSample.Ewe(1) with { Standing = Standing.Empty, Litter = 0, Due = null },
            FeedingSample.Ewe(2) with { Standing = Standing.Lambed, Due = null },
            FeedingSample.Ewe(3) with { Standing = Standing.LeftOut, Due = null },
            FeedingSample.Ewe(4),
        ];
        var (groups, placed) = TroughGroups.Plan(FeedingSample.Flock(ewes), ewes, _ => Housed, NoPens);
        Assert.Equal(placed[3].Ewe.Tag, Assert.Single(Assert.Single(groups).Ewes).Ewe.Tag);
        Assert.Equal([null, null, null, "Twins"], placed.Select(e => e.TroughGroup));
    }

    [Fact]
    public void Nobody_in_lamb_makes_no_groups() => Assert.Empty(Plan(FeedingSample.Flock(), []));

    /// <summary>A cluster runs a cycle from its own first date: 17 days with the usual changeover.</summary>
    [Theory]
    [InlineData(new[] { 0, 17 }, new[] { "Twins" })]
    [InlineData(new[] { 0, 18 }, new[] { "Twins, early", "Twins, late" })]
    [InlineData(new[] { 0, 17, 18, 35 }, new[] { "Twins, early", "Twins, late" })]
    [InlineData(new[] { 36, 0, 18 }, new[] { "Twins, first", "Twins, second", "Twins, third" })]
    public void A_litter_is_split_where_due_dates_lie_more_than_a_cycle_apart(int[] due, string[] names)
    {
        var ewes = due.Select((d, i) => FeedingSample.Ewe(i + 1, due: d)).ToImmutableArray();
        Assert.Equal(names, Plan(FeedingSample.Flock(ewes), ewes).Select(g => g.Name));
    }

    [Fact]
    public void Classes_past_the_eighth_are_numbered()
    {
        var ewes = Enumerable.Range(0, 9).Select(i => FeedingSample.Ewe(i + 1, due: 18 * i)).ToImmutableArray();
        Assert.Equal("Twins, 9th", Plan(FeedingSample.Flock(ewes), ewes)[^1].Name);
    }

    [Fact]
    public void Groups_come_in_the_order_they_are_first_fed()
    {
        ImmutableArray<EwePlan> ewes = [FeedingSample.Ewe(1, 1, due: 9), FeedingSample.Ewe(2, 3, due: 4), FeedingSample.Ewe(3, 2, due: 4)];
        Assert.Equal(["Twins", "Triplets", "Singles"], Plan(FeedingSample.Flock(ewes), ewes).Select(g => g.Name));
    }

    [Fact]
    public void Pens_split_a_group_and_name_its_parts()
    {
        var ewes = FeedingSample.Ewes(4);
        HousingPlan housing = new(
            [Pen("North bay", ewes[2], ewes[0]), Pen("South bay", ewes[1])], [ewes[3].Ewe], []);
        var (groups, placed) = TroughGroups.Plan(FeedingSample.Flock(ewes), ewes, _ => Housed, housing);
        Assert.Equal(["Twins, North bay", "Twins, South bay", "Twins, without a pen"], groups.Select(g => g.Name));
        Assert.Equal(["North bay", "South bay", null], groups.Select(g => g.Pen));
        Assert.Equal(["North bay", "South bay", "North bay", null], placed.Select(e => e.Pen));
        Assert.Equal([placed[0], placed[2]], groups[0].Ewes);
    }

    [Fact]
    public void One_pen_needs_no_name_in_the_group()
    {
        var ewes = FeedingSample.Ewes(2);
        var (groups, _) = TroughGroups.Plan(
            FeedingSample.Flock(ewes), ewes, _ => Housed, new HousingPlan([Pen("North bay", [.. ewes])], [], []));
        Assert.Equal(("Twins", "North bay"), (Assert.Single(groups).Name, groups[0].Pen));
    }

    [Fact]
    public void Indoors_counts_from_the_week_whose_middle_she_is_in_for()
    {
        var ewes = FeedingSample.Ewes(2);
        var weeks = Assert.Single(Plan(FeedingSample.Flock(ewes), ewes)).Weeks;
        Assert.All(weeks, w => Assert.Equal(w.WeeksBefore <= 1, w.FromHousing));

        var (outdoors, _) = TroughGroups.Plan(FeedingSample.Flock(ewes), ewes, _ => null, NoPens);
        Assert.All(outdoors[0].Weeks, w => Assert.False(w.FromHousing));
    }

    [Fact]
    public void Need_and_energy_balance_hang_together()
    {
        var ewes = FeedingSample.Ewes(5);
        var flock = FeedingSample.Flock(ewes).WithFeeds(f => f with { Method = FeedMethod.EnergyBalance });
        var weeks = Assert.Single(Plan(flock, ewes)).Weeks;
        Assert.All(weeks, week =>
        {
            Assert.Equal(week.EnergyBalanceKg, week.KgPerEwePerDay);
            Assert.Equal(0m, week.EnergyBalanceKg % 0.05m);

            // Rounding moves the supply by half a step of concentrate at most; coming indoors leaves it over the need.
            var halfStep = 0.025m * 0.86m * 12.5m;
            Assert.True(week.Supply.Energy >= week.Need.Energy - halfStep - 0.01m);
            if (!week.FromHousing)
            {
                Assert.True(week.Supply.Energy <= week.Need.Energy + halfStep + 0.01m);
            }
        });
    }

    /// <summary>By hand, three weeks before (days 21 to 15, so day 129), out on lowland: the ewe of 70 kg eats 1.05 kg hay at 8.8 MJ, 9.24 MJ.</summary>
    [Fact]
    public void A_weeks_amount_follows_by_hand()
    {
        var ewes = FeedingSample.Ewes(1);
        var week = Assert.Single(Plan(FeedingSample.Flock(ewes), ewes)).Weeks.Single(w => w.WeeksBefore == 3);

        var amount = 0.0;
        var need = 0.0;
        for (var i = 0; i < 100; i++)
        {
            var density = (9.24 + (amount * 0.86 * 12.5)) / (1.05 + (amount * 0.86));
            var km = (0.35 * density / 18.8) + 0.503;
            var fasting = 0.23 * Math.Pow(70 / 1.08, 0.75);
            var et = Math.Pow(10, 3.322 - (4.979 * Math.Exp(-0.00643 * 129)));
            need = ((fasting + (0.0107 * 70)) / km) + (0.25 * 8.75 * et * 0.07372 * Math.Exp(-0.00643 * 129) / 0.133);
            amount = (need - 9.24) / (12.5 * 0.86);
        }

        Assert.Equal(Math.Round((decimal)need, 2), week.Need.Energy);
        Assert.Equal(Math.Round((decimal)amount * 20) / 20, week.EnergyBalanceKg);
    }

    [Fact]
    public void Amounts_never_step_down_and_are_level_from_the_first_due_date() =>
        AnyMob.Sample(sample =>
        {
            var weeks = Plan(sample.Flock, sample.Ewes).Single().Weeks;
            return weeks.Zip(weeks.Skip(1)).All(pair =>
                    pair.First.EnergyBalanceKg <= pair.Second.EnergyBalanceKg && pair.First.PerLambKg == pair.Second.PerLambKg)
                && weeks.Where(w => w.WeeksBefore <= 0).Select(w => w.EnergyBalanceKg).Distinct().Count() == 1;
        });

    [Fact]
    public void More_lambs_never_mean_less_energy() =>
        AnyMob.Where(s => s.Ewes[0].Litter < 5).Sample(sample =>
        {
            var more = sample.Ewes
                .Select(e => e with { Litter = e.Litter + 1, Ewe = e.Ewe with { Scan = e.Litter + 1 } })
                .ToImmutableArray();
            var fewer = Plan(sample.Flock, sample.Ewes).Single().Weeks;
            var greater = Plan(sample.Flock, more).Single().Weeks;
            return fewer.Zip(greater).All(w =>
                w.First.Need.Energy <= w.Second.Need.Energy && w.First.EnergyBalanceKg <= w.Second.EnergyBalanceKg);
        });

    [Fact]
    public void A_heavier_ewe_never_needs_less() =>
        Gen.Select(AnyMob, Gen.Int[0, 30]).Sample((sample, more) =>
        {
            var heavier = sample.Ewes
                .Select(e => e with { Ewe = e.Ewe with { Weight = new Mass(e.Ewe.Weight!.Value.Kilograms + more) } })
                .ToImmutableArray();
            return Plan(sample.Flock, sample.Ewes).Single().Weeks.Zip(Plan(sample.Flock, heavier).Single().Weeks)
                .All(w => w.First.Need.Energy <= w.Second.Need.Energy && w.First.Need.Protein <= w.Second.Need.Protein);
        });

    [Fact]
    public void A_ewe_without_a_weight_takes_her_breeds_and_then_70_kg_and_the_chart_says_so()
    {
        var named = FeedingSample.Ewe(1, weight: null);
        named = named with { Ewe = named.Ewe with { Breed = "Ryeland" } };
        var both = FeedingSample.Ewe(4, weight: 60);
        both = both with { Ewe = both.Ewe with { Breed = "Ryeland" } };
        ImmutableArray<EwePlan> ewes = [named, FeedingSample.Ewe(2, weight: null), FeedingSample.Ewe(3, weight: 60)];
        var flock = FeedingSample.Flock(ewes) with { Breeds = [new Breed("Ryeland", null, new Mass(55))] };
        Assert.Equal([55m, 70m, 60m], ewes.Select(e => EweWeights.Of(flock, e.Ewe)));
        Assert.Equal(60m, EweWeights.Of(flock, both.Ewe));
        Assert.Equal("1 of 3 ewes has no weight in the flock file: 70 kg (154 lb) is taken.", Assert.Single(Plan(flock, ewes)).Assumed);
        Assert.Equal("", Assert.Single(Plan(flock, ewes[2..])).Assumed);
        Assert.StartsWith("No ewe here has a weight", Assert.Single(Plan(flock, ewes[1..2])).Assumed, StringComparison.Ordinal);
    }

    private static Gen<(Flock Flock, ImmutableArray<EwePlan> Ewes)> AnyMob =>
        from litter in Gen.Int[1, 5]
        from weights in Gen.Int[40, 110].Array[1, 6]
        from condition in Gen.Int[2, 10]
        from energy in Gen.Double[5, 12]
        from rate in Gen.Double[0, 0.75]
        from ground in Gen.Enum<Ground>()
        let ewes = weights
            .Select((w, i) => FeedingSample.Ewe(i + 1, litter, due: i, weight: w, condition: condition / 2m))
            .ToImmutableArray()
        let forage = FeedingSample.Hay with { Energy = (decimal)energy, SubstitutionRate = (decimal)rate }
        select (FeedingSample.Flock(ewes).WithFeeds(f => f with { Forage = forage, Ground = ground }), ewes);

    private static ImmutableArray<TroughGroup> Plan(Flock flock, IReadOnlyList<EwePlan> ewes) =>
        TroughGroups.Plan(flock, ewes, _ => Housed, NoPens).Groups;

    private static PenPlan Pen(string name, params EwePlan[] ewes) =>
        new(FeedingSample.Pen(name, 6, 4), [.. ewes.Select(e => e.Ewe)], 0, 24, 0, null, 20);
}
