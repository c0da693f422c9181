using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>The ration of one kind in one week, by the method of steps, out of doors.</summary>
public sealed class ClassRationTests
{
    private static readonly LocalDate Due = FeedingSample.FirstDue;

    /// <summary>Hay so good that the energy sum is nothing: a tenth of a kilogram for each lamb, in whole grains.</summary>
    [Theory]
    [InlineData(new[] { 1, 1 }, 0.1)]
    [InlineData(new[] { 2, 2 }, 0.2)]
    [InlineData(new[] { 3, 3 }, 0.3)]
    [InlineData(new[] { 1, 2 }, 0.15)]
    public void There_is_a_least_for_each_lamb(int[] scans, double kilograms)
    {
        var good = Stepped(f => f with { Forage = f.Forage with { Energy = 13, Intake = 0.025m } });
        Assert.Equal((decimal)kilograms, Of(good, FeedKind.Twins, [.. scans.Select((s, i) => FeedingSample.Ewe(i + 1, s))]).In(Due.PlusWeeks(-1)).Ration);
    }

    /// <summary>Straw so poor that the sum is over a kilogram: the keeper's figure for each lamb holds it, but for a single up to 0.6 kg.</summary>
    [Theory]
    [InlineData(2, 0.2, 0.4)]
    [InlineData(2, 0.3, 0.6)]
    [InlineData(1, 0.2, 0.6)]
    [InlineData(1, 0.7, 0.7)]
    [InlineData(2, null, 2.0)]
    public void The_keepers_figure_holds_the_sum(int lambs, double? perLamb, double kilograms)
    {
        var poor = Stepped(f => f with { PerLamb = perLamb is { } kg ? new Mass((decimal)kg) : null, Forage = f.Forage with { Energy = 4, Intake = 0.005m } });
        var kind = FedEwe.KindOf(lambs);
        Assert.Equal((decimal)kilograms, Of(poor, kind, FeedingSample.Ewes(2, lambs, weight: 90)).In(Due.PlusWeeks(-1)).Ration);
    }

    /// <summary>A week that begins 17 days before she is due is reckoned 14 days before it: at day 133.</summary>
    [Fact]
    public void A_week_is_reckoned_at_its_middle()
    {
        var ewes = FeedingSample.Ewes(1);
        var flock = Stepped(f => f);
        var mob = new Mob(flock.Feeds, [new MobMember(new EweNeed(70, 2, 3), null)]);
        var day = Due.PlusDays(-17);
        Assert.Equal(Math.Round((decimal)mob.Balance(133, day).Need, 2), Of(flock, FeedKind.Twins, ewes).In(day).Need.Energy);
    }

    [Fact]
    public void A_thin_ewe_fed_with_the_class_above_has_her_more_that_way_and_not_twice()
    {
        var flock = Stepped(f => f);
        ImmutableArray<FedEwe> Fed(params ImmutableArray<EwePlan> ewes) => FedEwe.Of(flock, ewes, _ => null);
        decimal NeedOf(FedEwe ewe) => new ClassRation(flock, FeedKind.Twins, [ewe], Due, 2).In(Due.PlusWeeks(-1)).Need.Energy;
        var moved = Fed(FeedingSample.Ewe(1, 1, condition: 2), FeedingSample.Ewe(2, 2))[0];
        Assert.Equal((FeedKind.Twins, 2m), (moved.Kind, moved.Lambs));
        Assert.Equal(NeedOf(Fed(FeedingSample.Ewe(2, 2, condition: null))[0]), NeedOf(moved));
        Assert.True(NeedOf(Fed(FeedingSample.Ewe(3, 2, condition: 2))[0]) > NeedOf(moved));
        Assert.Equal(NeedOf(Fed(FeedingSample.Ewe(3, 2, condition: 2))[0]), NeedOf(Fed(FeedingSample.Ewe(3, null, condition: 2))[0] with { Lambs = 2 }));
    }

    [Fact]
    public void A_thin_ewe_goes_one_class_up_or_none()
    {
        FeedKind KindOf(decimal condition, int scan, params int[] others) =>
            FedEwe.Of(Stepped(f => f), [FeedingSample.Ewe(1, scan, condition: condition), .. others.Select((s, i) => FeedingSample.Ewe(i + 2, s))], _ => null)[0].Kind;
        Assert.Equal(FeedKind.Singles, KindOf(2, 1, 3, 3));
        Assert.Equal(FeedKind.Twins, KindOf(2, 1, 2, 3));
        Assert.Equal(FeedKind.Triplets, KindOf(2, 2, 4));
        Assert.Equal(FeedKind.Singles, KindOf(2.5m, 1, 2));
    }

    [Fact]
    public void The_unscanned_begin_with_the_first_week_of_twins_and_carry_the_flocks_average()
    {
        var flock = Stepped(f => f);
        var twins = Of(flock, FeedKind.Twins, FeedingSample.Ewes(2, 2));
        var fed = FedEwe.Of(flock, [.. FeedingSample.Ewes(2, 1), FeedingSample.Ewe(3, null)], _ => null)[2];
        Assert.Equal(1, fed.Lambs);
        Assert.Equal(twins.In(Due.PlusWeeks(-6)).EnergyBalance, new ClassRation(flock, FeedKind.NotScanned, [fed], Due, 2).In(Due.PlusWeeks(-6)).Ration);
        Assert.Equal(2, FedEwe.Of(flock, [FeedingSample.Ewe(1, 1), FeedingSample.Ewe(2, 3), FeedingSample.Ewe(3, null)], _ => null)[2].Lambs);
    }

    /// <summary>Hay of 8.8 MJ at 1.5 % of 70 kg, 9.24 MJ, and 12.5 MJ of 0.86 of the nuts, whatever each carries.</summary>
    [Fact]
    public void What_a_mixed_chart_gives_is_the_mean_of_its_ewes()
    {
        ImmutableArray<EwePlan> ewes = [.. FeedingSample.Ewes(2, 1), .. FeedingSample.Ewes(3, 2, from: 3)];
        var mixed = Assert.Single(FedFlock.Plan(FedFlock.Stepped(ewes, f => f with { Parted = Parting.No }), ewes).Charts);
        var twins = Assert.Single(FedFlock.Plan(FedFlock.Stepped(ewes[2..]), ewes[2..]).Charts);
        Assert.All(mixed.Rows, r => Assert.Equal(9.24 + (12.5 * 0.86 * (double)r.KgPerEwePerDay), (double)r.Supply.Energy, 0.011));
        foreach (var (of, alike) in mixed.Rows.Join(twins.Rows, r => r.KgPerEwePerDay, r => r.KgPerEwePerDay, (m, t) => (m, t)))
        {
            Assert.Equal((double)alike.Supply.Protein, (double)of.Supply.Protein, 0.1);
        }
    }

    [Fact]
    public void Shares_are_those_of_the_lightest_and_two_feeds_begin_on_their_day()
    {
        ImmutableArray<EwePlan> ewes = [FeedingSample.Ewe(1, weight: 55), FeedingSample.Ewe(2, weight: 90)];
        var flock = FedFlock.Stepped(ewes);
        var chart = Assert.Single(FedFlock.Plan(flock, ewes).Charts);
        var row = chart.Rows[^1];
        var (dryMatter, concentrate) = new FeedCaps(flock.Feeds).SharesInLamb(row.KgPerEwePerDay, 55);
        Assert.Equal((Math.Round(dryMatter, 4), Math.Round(concentrate, 4)), (row.DryMatterShare, row.ConcentrateShare));

        // A single's ration fits one feed until two are asked for.
        var singles = Assert.Single(FedFlock.Plan(FedFlock.Stepped(FeedingSample.Ewes(2, 1)), FeedingSample.Ewes(2, 1)).Charts);
        Assert.Equal(Due.PlusWeeks(-flock.Practice.TwoFeedsWeeksBeforeLambing), singles.Rows.First(r => r.FedAt.Length > 1).From);
    }

    private static ClassRation Of(Flock flock, FeedKind kind, ImmutableArray<EwePlan> ewes) =>
        new(flock, kind, [.. FedEwe.Of(flock, ewes, _ => null).Select(e => e with { Kind = kind })], Due, 2);

    private static Flock Stepped(Func<Feeds, Feeds> change) => FedFlock.Stepped([], change);
}
