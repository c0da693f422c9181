using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>
/// Every warning of a ration on both sides of its limit. Charts are written by hand: twins of 70 kg on 0.4 kg by plan and by energy sum, who get what they need. Such
/// a ewe may have 1.05 kg of concentrate dry matter in lamb, six tenths of 2.5 % of her weight, or 1.2209 kg as it comes out of the bag.
/// </summary>
public sealed class FeedWarningTests
{
    private static readonly FeedSpans Spans = new(At(1), At(2), At(3), At(4), At(5));
    private static readonly FeedRow Sound = new(
        FeedingSample.FirstDue.PlusDays(-42), FeedingSample.FirstDue.PlusDays(60), 0.4m, [FeedTime.FirstLight], [0.4m],
        new(10, 100), new(10, 100), 0.02m, 0.2m, 0.9m, 0.4m, false);

    [Fact]
    public void A_sound_ration_is_warned_of_nothing() => Assert.Empty(Warnings(Sound));

    [Theory]
    [InlineData(0.69, false)]
    [InlineData(0.7, true)]
    public void A_figure_that_looks_like_pounds_is_asked_about(double kilograms, bool warned) => Is(
        Warnings(f => f with { PerLamb = new Mass((decimal)kilograms) }, Sound), warned, FeedWarningKind.KilogramForAPound, Spans.PerLamb, (decimal)kilograms, Mass.KilogramsPerPound);

    [Theory]
    [InlineData(0.5, false)]
    [InlineData(0.51, true)]
    public void A_feed_over_half_a_kilogram_is_held(double kilograms, bool warned) => Is(
        Warnings(f => f with { LargestFeed = new Mass((decimal)kilograms) }, Sound), warned, FeedWarningKind.LargestFeedHeld, Spans.LargestFeed, (decimal)kilograms, 0.5m);

    /// <summary>In milk she may have six tenths of 3.5 % of her 70 kg as dry matter, 1.709 kg of nuts: 1.7 in whole grains.</summary>
    [Fact]
    public void What_the_file_asks_for_ewes_with_lambs_is_held()
    {
        var asked = LambedFeeds.Usual with { Twin = new Mass(1.8m), Single = new Mass(1.7m) };
        Is(Warnings(f => f with { Lambed = asked }, Sound), true, FeedWarningKind.LambedHeld, Spans.Feeds, 1.7m, 1.8m);

        // The usual ration is held without a word: nobody asked for it.
        Assert.Empty(Warnings(f => f, [Sound], ewes: FeedingSample.Ewes(3, weight: 40)));
    }

    [Fact]
    public void Where_nothing_is_fed_no_figure_is_warned_of() => Assert.Empty(Warnings(
        f => f with { ForageOnly = true, PerLamb = new Mass(1), LargestFeed = new Mass(1) }, Sound with { ConcentrateShare = 0.9m }));

    [Fact]
    public void One_ewe_without_a_weight_among_others_is_forgotten()
    {
        ImmutableArray<EwePlan> Weighing(params decimal?[] weights) => [.. weights.Select((w, i) => FeedingSample.Ewe(i + 1, 2, weight: w))];
        var warning = Assert.Single(Warnings(f => f, [Sound], ewes: Weighing(70, null, 70)));
        Assert.Equal((FeedWarningKind.Unweighed, "ZZ 0123456 00002", 70m), (warning.Kind, Assert.Single(warning.Ewes).Tag, warning.Number));
        Assert.Empty(Warnings(f => f, [Sound], ewes: Weighing(null, null, null)));
        Assert.Empty(Warnings(f => f, [Sound], ewes: [FeedingSample.Ewe(1, 2), FeedingSample.Ewe(2, litter: null, weight: null)]));
    }

    /// <summary>Under nine tenths of her energy; 1.2 kg is as much as the caps leave her in whole grains, so there it is not the keeper's figure that holds her.</summary>
    [Theory]
    [InlineData(9.0, 0.4, FeedMethod.Stepped, null)]
    [InlineData(8.99, 0.4, FeedMethod.Stepped, FeedWarningKind.CeilingTooLow)]
    [InlineData(8.99, 1.15, FeedMethod.Stepped, FeedWarningKind.CeilingTooLow)]
    [InlineData(8.99, 1.2, FeedMethod.Stepped, FeedWarningKind.NeedNotMet)]
    [InlineData(8.99, 0.4, FeedMethod.PerLamb, FeedWarningKind.CeilingTooLow)]
    [InlineData(8.99, 0.4, FeedMethod.EnergyBalance, FeedWarningKind.NeedNotMet)]
    public void A_need_that_is_not_met_is_told(double supply, double kilograms, FeedMethod method, FeedWarningKind? kind)
    {
        var warnings = Warnings(
            f => f with { Method = method }, Sound with { KgPerEwePerDay = (decimal)kilograms, EnergyBalanceKg = (decimal)kilograms, Supply = new((decimal)supply, 100), PerLambKg = 0 });
        Assert.Equal(kind, warnings.SingleOrDefault()?.Kind);
        if (kind is not null)
        {
            Assert.Equal((kind == FeedWarningKind.CeilingTooLow ? Spans.PerLamb : Spans.Forage, (decimal)supply, 10m), (warnings[0].Span, warnings[0].Number, warnings[0].Against));
        }
    }

    [Fact]
    public void The_worst_day_is_told_and_days_of_bringing_on_are_not()
    {
        var bad = Sound with { Need = new(10, 100), Supply = new(8.5m, 100) };
        var worse = Sound with { Need = new(12, 100), Supply = new(8, 100) };
        Is(Warnings(bad, worse, Sound), true, FeedWarningKind.CeilingTooLow, Spans.PerLamb, 8, 12);
        Assert.Empty(Warnings(worse with { IsStep = true }, Sound));
        Is(Warnings(worse with { IsStep = true }, bad with { IsStep = true }), true, FeedWarningKind.CeilingTooLow, Spans.PerLamb, 8.5m, 10);
        Is(Warnings(f => f with { ForageOnly = true }, worse), true, FeedWarningKind.ForageCannotCarry, Spans.Forage, 8, 12);
    }

    [Fact]
    public void The_worst_is_where_most_is_lacking_and_not_where_most_is_wanted()
    {
        FeedRow Of(decimal given, decimal sum) => Sound with { KgPerEwePerDay = given, EnergyBalanceKg = sum };
        Is(Warnings(Sound with { Need = new(9, 100), Supply = new(6, 100) }, Sound with { Need = new(12, 100), Supply = new(10.9m, 100) }), true, FeedWarningKind.CeilingTooLow, Spans.PerLamb, 6, 9);
        Is(Warnings(Of(0.5m, 0.2m), Of(0.9m, 0.9m)), true, FeedWarningKind.OverEnergySum, Spans.PerLamb, 0.5m, 0.2m);
        Is(Warnings(Of(0.3m, 0.6m), Of(0.9m, 0.9m)), true, FeedWarningKind.UnderEnergySum, Spans.PerLamb, 0.3m, 0.6m);
    }

    [Theory]
    [InlineData(FeedMethod.PerLamb, FeedWarningKind.CeilingTooLow)]
    [InlineData(FeedMethod.Stepped, FeedWarningKind.NeedNotMet)]
    public void Without_a_figure_of_the_keepers_only_the_usual_one_can_hold_a_ration(FeedMethod method, FeedWarningKind kind) => Assert.Equal(
        kind, Assert.Single(Warnings(f => f with { Method = method, PerLamb = null }, Sound with { Supply = new(8, 100), PerLambKg = 0 })).Kind);

    /// <summary>0.3 kg a lamb would be 0.9 kg for triplets from eight weeks before. She is told what she gets at the worst from then to the day she is due, days of bringing on left out.</summary>
    [Fact]
    public void A_triplet_among_twins_is_told_what_she_lacks_at_the_worst()
    {
        FeedRow From(int weeks, decimal given, bool isStep = false) => Sound with { From = FeedingSample.FirstDue.PlusWeeks(weeks), KgPerEwePerDay = given, IsStep = isStep };
        Assert.Equal((0.5m, 0.9m), Joined(From(-9, 0.2m), From(-8, 0.5m), From(-7, 0.3m, isStep: true), From(-6, 0.6m), From(1, 0.1m)));
        Assert.Equal((0.45m, 0.9m), Joined(From(-2, 0.3m, isStep: true), From(0, 0.45m), From(1, 0.1m)));
    }

    private static (decimal Given, decimal Own) Joined(params ImmutableArray<FeedRow> rows)
    {
        ImmutableArray<EwePlan> whom = [.. FeedingSample.Ewes(3, 2), FeedingSample.Ewe(4, 3)];
        var flock = FeedingSample.Flock(whom).WithFeeds(f => f with { Method = FeedMethod.PerLamb, PerLamb = new Mass(0.3m) });
        var fed = FedEwe.Of(flock, whom, _ => null);
        var chart = new FeedChart(FeedKind.Twins, 1, 2, whom, [whom[3]], FeedingSample.FirstDue, FeedingSample.FirstDue, FeedingSample.FirstDue, 4, rows);
        var warning = FeedWarnings.Of(flock, fed, [new FeedClass(FeedKind.Twins, fed[..3], [fed[3]])], [chart]).Single(w => w.Kind == FeedWarningKind.Joined);
        Assert.Equal(whom[3].Ewe, Assert.Single(warning.Ewes));
        return (warning.Number, warning.Against);
    }

    /// <summary>She eats so little forage that six tenths concentrate is 12 grams of it.</summary>
    [Fact]
    public void A_ewe_who_may_have_less_than_can_be_measured_has_no_ration()
    {
        Feeds Little(Feeds feeds) => feeds with { Forage = feeds.Forage with { Intake = 0.0001m } };
        var warnings = Warnings(Little, Sound with { KgPerEwePerDay = 0, FedAt = [], KgPerFeedByHeads = [], EnergyBalanceKg = 0.1m });
        Assert.Equal(3, warnings.Length);
        Assert.All(warnings, w => Assert.Equal((FeedWarningKind.NoRation, 1, 0.1m), (w.Kind, w.Ewes.Length, w.Against)));
        Assert.Empty(Warnings(Little, Sound with { KgPerEwePerDay = 0, FedAt = [], KgPerFeedByHeads = [], EnergyBalanceKg = 0 }));
    }

    /// <summary>A level amount over six weeks beside the energy sum: half as much again is too much.</summary>
    [Theory]
    [InlineData(0.6, FeedMethod.PerLamb, true)]
    [InlineData(0.59, FeedMethod.PerLamb, false)]
    [InlineData(0.6, FeedMethod.Stepped, false)]
    public void A_level_amount_far_over_the_energy_sum_is_told(double perLamb, FeedMethod method, bool warned) => Is(
        Warnings(f => f with { Method = method }, Sound with { PerLambKg = (decimal)perLamb }), warned, FeedWarningKind.LevelTooMuch, Spans.PerLamb, 42 * (decimal)perLamb, 42 * 0.4m);

    /// <summary>Half as much again as the energy sum, by 0.15 kg or more, and over what is fed at the least.</summary>
    [Theory]
    [InlineData(0.45, 0.30, 2, true)]
    [InlineData(0.45, 0.31, 2, false)]
    [InlineData(0.35, 0.21, 2, false)]
    [InlineData(0.25, 0.05, 1, false)]
    [InlineData(0.30, 0.10, 1, true)]
    [InlineData(0.35, 0.10, 3, false)]
    [InlineData(0.40, 0.10, 3, true)]
    public void More_than_the_energy_sum_is_told(double given, double sum, int lambs, bool warned) => Is(
        Warnings(f => f, [Sound with { KgPerEwePerDay = (decimal)given, EnergyBalanceKg = (decimal)sum }], lambs: lambs),
        warned, FeedWarningKind.OverEnergySum, Spans.PerLamb, (decimal)given, (decimal)sum);

    /// <summary>Under three quarters of the energy sum, by 0.15 kg or more, where it is the keeper's figure that holds it.</summary>
    [Theory]
    [InlineData(0.40, 0.60, FeedMethod.Stepped, true)]
    [InlineData(0.45, 0.60, FeedMethod.Stepped, false)]
    [InlineData(0.30, 0.44, FeedMethod.Stepped, false)]
    [InlineData(0.30, 0.45, FeedMethod.Stepped, true)]
    [InlineData(0.40, 0.60, FeedMethod.EnergyBalance, false)]
    [InlineData(1.20, 2.00, FeedMethod.Stepped, false)]
    public void Less_than_the_energy_sum_is_told(double given, double sum, FeedMethod method, bool warned) => Is(
        Warnings(f => f with { Method = method }, Sound with { KgPerEwePerDay = (decimal)given, EnergyBalanceKg = (decimal)sum }),
        warned, FeedWarningKind.UnderEnergySum, Spans.PerLamb, (decimal)given, (decimal)sum);

    /// <summary>Without a figure of the keeper's: over a pound a lamb, or over 0.6 kg for one lamb.</summary>
    [Theory]
    [InlineData(FeedKind.Twins, 2, 1.0, true)]
    [InlineData(FeedKind.Twins, 2, 0.95, false)]
    [InlineData(FeedKind.Singles, 1, 0.7, true)]
    [InlineData(FeedKind.Singles, 1, 0.65, false)]
    [InlineData(FeedKind.NotScanned, 1, 0.7, false)]
    public void Over_a_pound_a_lamb_is_told(FeedKind kind, int lambs, double given, bool warned) => Is(
        Warnings(f => f with { PerLamb = null }, [Sound with { KgPerEwePerDay = (decimal)given, EnergyBalanceKg = (decimal)given }], kind, lambs),
        warned, FeedWarningKind.OverAPoundALamb, Spans.Forage, (decimal)given / lambs, Mass.KilogramsPerPound);

    [Theory]
    [InlineData(0.4999, false)]
    [InlineData(0.5, true)]
    public void Half_of_all_dry_matter_as_concentrate_is_told(double share, bool warned) => Is(
        Warnings(Sound with { ConcentrateShare = (decimal)share }), warned, FeedWarningKind.MuchConcentrate, Spans.Forage, (decimal)share, 0.5m);

    [Theory]
    [InlineData(3, false)]
    [InlineData(4, true)]
    public void More_than_three_feeds_a_day_are_told(int feeds, bool warned) => Is(
        Warnings(Sound with { FedAt = [.. Enum.GetValues<FeedTime>().Take(feeds)] }), warned, FeedWarningKind.ManyFeeds, Spans.LargestFeed, feeds, 3);

    [Theory]
    [InlineData(95, false)]
    [InlineData(94.9, true)]
    public void Too_little_protein_is_told(double supply, bool warned) => Is(
        Warnings(Sound with { Supply = new(10, (decimal)supply) }, Sound with { Supply = new(10, 97) }), warned, FeedWarningKind.ShortOfProtein, Spans.Feeds, (decimal)supply, 100);

    /// <summary>Scoops of 0.5 kg, to be filled to a half: 0.25 kg.</summary>
    [Theory]
    [InlineData(0.25, 0.25, null)]
    [InlineData(0.24, 0.2, FeedWarningKind.ScoopTooLarge)]
    [InlineData(0.28, 0.25, FeedWarningKind.ScoopInexact)]
    [InlineData(0.27, 0.25, null)]
    public void A_scoop_too_large_or_too_coarse_is_told(double meant, double given, FeedWarningKind? kind)
    {
        var warnings = Warnings(
            f => f with { Scales = false, Concentrate = f.Concentrate with { Scoop = new Mass(0.5m) } },
            Sound with { KgPerEwePerDay = (decimal)meant, EnergyBalanceKg = (decimal)meant, KgPerFeedByHeads = [(decimal)given, 2 * (decimal)meant] },
            Sound with { KgPerEwePerDay = 0, EnergyBalanceKg = 0, FedAt = [], KgPerFeedByHeads = [] });
        Assert.Equal(kind, warnings.SingleOrDefault()?.Kind);
        if (kind is not null)
        {
            Assert.Equal(
                kind == FeedWarningKind.ScoopTooLarge ? (Spans.Scoop, (decimal)meant, 0.25m) : (Spans.Scoop, (decimal)given, (decimal)meant), (warnings[0].Span, warnings[0].Number, warnings[0].Against));
        }
    }

    /// <summary>Half a scoop of 2 kg against three ewes at one feed; one or two are weighed in any case.</summary>
    [Theory]
    [InlineData(0.32, 3, true)]
    [InlineData(0.34, 3, false)]
    [InlineData(0.32, 2, false)]
    public void A_scoop_too_large_for_a_whole_trough_is_told_where_there_are_scales_too(double each, int heads, bool warned) => Is(
        Warnings(
            f => f with { Concentrate = f.Concentrate with { Scoop = new Mass(2) } },
            [Sound with { KgPerEwePerDay = (decimal)each, EnergyBalanceKg = (decimal)each }, Sound with { KgPerEwePerDay = 0.1m, EnergyBalanceKg = 0.1m }],
            heads: heads),
        warned, FeedWarningKind.ScoopOverTrough, Spans.Scoop, (decimal)each * 3, 1);

    private static void Is(ImmutableArray<FeedWarning> warnings, bool warned, FeedWarningKind kind, SourceSpan span, decimal number, decimal against)
    {
        Assert.Equal(warned ? [kind] : [], warnings.Select(w => w.Kind));
        Assert.All(warnings, w => Assert.Equal((span, number, against), (w.Span, w.Number, w.Against)));
    }

    private static ImmutableArray<FeedWarning> Warnings(params ImmutableArray<FeedRow> rows) => Warnings(f => f, rows);

    private static ImmutableArray<FeedWarning> Warnings(Func<Feeds, Feeds> change, params ImmutableArray<FeedRow> rows) => Warnings(change, rows, FeedKind.Twins);

    private static ImmutableArray<FeedWarning> Warnings(Func<Feeds, Feeds> change, ImmutableArray<FeedRow> rows, FeedKind kind = FeedKind.Twins, int lambs = 2, ImmutableArray<EwePlan>? ewes = null, int heads = 3)
    {
        var whom = ewes ?? FeedingSample.Ewes(3, 2);
        var flock = FeedingSample.Flock(whom).WithFeeds(f => change(f with { Method = FeedMethod.Stepped, Spans = Spans, Concentrate = f.Concentrate with { Scoop = null } }));
        var fed = FedEwe.Of(flock, whom, _ => null);
        var chart = new FeedChart(kind, 1, lambs, whom, [], FeedingSample.FirstDue, FeedingSample.FirstDue, FeedingSample.FirstDue, heads, rows);
        return FeedWarnings.Of(flock, fed, [new FeedClass(kind, fed, [])], [chart]);
    }

    private static SourceSpan At(int line) => new(line, 1, 1);
}
