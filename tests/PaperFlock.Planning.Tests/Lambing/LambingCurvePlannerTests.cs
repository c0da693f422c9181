using CsCheck;
using MathNet.Numerics.Distributions;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Lambing;

namespace PaperFlock.Planning.Tests.Lambing;

public sealed class LambingCurvePlannerTests
{
    private static readonly LocalDate Start = FeedingSample.FirstDue;

    [Fact]
    public void Expected_ewes_add_up_to_the_ewes_in_lamb() =>
        AnyEwes.Sample(ewes => Math.Abs(Curve(ewes).Days.Sum(d => d.ExpectedEwes) - ewes.Length) < 1e-9 && Curve(ewes).Ewes == ewes.Length);

    [Fact]
    public void Days_follow_on_and_points_stand_in_order() =>
        AnyEwes.Sample(ewes =>
        {
            var days = Curve(ewes, pens: 2).Days;
            return days.Zip(days.Skip(1)).All(d => d.First.Date.PlusDays(1) == d.Second.Date)
                && days.All(d => 0 <= d.P10 && d.P10 <= d.P90 && d.P90 <= d.PensNeededP90 && d.PensNeededP90 <= ewes.Length);
        });

    /// <summary>Every way each ewe could lamb, counted out.</summary>
    [Fact]
    public void Few_ewes_agree_with_counting_every_outcome() =>
        Gen.Select(Gen.Int[1, 4].SelectMany(n => AnyEwe.Array[n]), Gen.Int[0, 3]).Sample((drawn, pens) =>
        {
            var ewes = drawn.Select((e, i) => e(i + 1)).ToImmutableArray();
            var curve = Curve(ewes, pens);
            return curve.Days.All(day =>
            {
                var (lambing, inPens) = Count(ewes, day.Date);
                return Near(day.ExpectedEwes, lambing.Select((p, k) => p * k).Sum())
                    && IsQuantile(lambing, 0.1, day.P10) && IsQuantile(lambing, 0.9, day.P90)
                    && IsQuantile(inPens, 0.9, day.PensNeededP90)
                    && Near(day.ChanceOverPens!.Value, inPens.Skip(pens + 1).Sum());
            });
        });

    /// <summary>A ewe sure to lamb on the first day, with a litter that holds its pen for so many days.</summary>
    [Theory]
    [InlineData(1, new[] { 1, 0, 0, 0, 0 })]
    [InlineData(2, new[] { 1, 1, 0, 0, 0 })]
    [InlineData(3, new[] { 1, 1, 1, 0, 0 })]
    [InlineData(5, new[] { 1, 1, 1, 0, 0 })]
    public void A_ewe_holds_a_pen_for_the_days_her_litter_needs(int litter, int[] held)
    {
        ImmutableArray<EwePlan> ewes =
        [
            FeedingSample.Ewe(1, litter, chances: FeedingSample.Even(Start, 1)),
            FeedingSample.Ewe(2, 1, chances: FeedingSample.Even(Start.PlusDays(4), 1)), // keeps the curve going
        ];
        var pens = Curve(ewes).Days.Select(d => d.PensNeededP90).ToList();
        held[4] += 1;
        Assert.Equal(held, pens);
    }

    [Fact]
    public void Nights_within_a_tenth_of_a_ewe_of_the_busiest_are_not_ranked()
    {
        DayDistribution Chances(params double[] chances) => new(Start, [.. chances]);
        var ewes = Enumerable.Range(1, 2).Select(i => FeedingSample.Ewe(i, 1, chances: Chances(0.1, 0.26, 0.3, 0.24, 0.1))).ToImmutableArray();

        // 0.52, 0.6 and 0.48 of a ewe: the last is more than a tenth behind.
        Assert.Equal([Start.PlusDays(1), Start.PlusDays(2)], Curve(ewes).BusiestNights);
    }

    [Fact]
    public void Too_few_pens_is_the_chance_on_the_worst_night()
    {
        // Ten ewes with a chance of one half on each of two days; singles, so a night's pens are that day's ewes.
        var ewes = Enumerable.Range(1, 10)
            .Select(i => FeedingSample.Ewe(i, 1, chances: FeedingSample.Even(Start.PlusDays(4), 2)))
            .ToImmutableArray();
        var curve = Curve(ewes, pens: 7);

        // Binomial(10, 1/2): (45 + 10 + 1) / 1024.
        Assert.Equal(56 / 1024.0, curve.ChanceTooFewPens!.Value, 1e-12);
    }

    /// <summary>Singles with chances of 0.2, 0.5 and 0.3 on three days: the middle one is Binomial(10, 1/2), and more than six is
    /// (120 + 45 + 10 + 1) / 1024.</summary>
    [Fact]
    public void Among_unlike_nights_the_worst_counts()
    {
        var chances = new DayDistribution(Start.PlusDays(3), [0.2, 0.5, 0.3]);
        var curve = Curve([.. Enumerable.Range(1, 10).Select(i => FeedingSample.Ewe(i, 1, chances: chances))], pens: 6);

        Assert.Equal(176 / 1024.0, curve.ChanceTooFewPens!.Value, 1e-12);
    }

    /// <summary>Ten singles with a chance of one half on each of two days: eight or more on either is 2 x 56 / 1024, where one night alone has half of that.</summary>
    [Fact]
    public void Too_few_on_some_night_counts_every_night_of_the_season()
    {
        var ewes = Enumerable.Range(1, 10).Select(i => FeedingSample.Ewe(i, 1, chances: FeedingSample.Even(Start, 2))).ToImmutableArray();

        Assert.Equal(112 / 1024.0, Curve(ewes, pens: 7).ChanceTooFewPensOnSomeNight!.Value, 0.015);
    }

    /// <summary>Four thousand seasons are out by more than 0.03 about once in ten thousand draws.</summary>
    [Fact]
    public void Seasons_drawn_by_lot_agree_with_counting_every_season() =>
        Gen.Select(Gen.Int[1, 4].SelectMany(n => AnyEwe.Array[n]), Gen.Int[0, 3]).Sample((drawn, pens) =>
        {
            var ewes = drawn.Select((e, i) => e(i + 1)).ToImmutableArray();
            var curve = Curve(ewes, pens);
            return Math.Abs(curve.ChanceTooFewPensOnSomeNight!.Value - Fullest(ewes).Skip(pens + 1).Sum()) < 0.03
                && curve.ChanceTooFewPensOnSomeNight >= curve.ChanceTooFewPens - 0.03
                && curve.PensForTheSeason >= 1
                && curve.PensForTheSeason >= curve.Days.Max(d => d.PensNeededP90) - 1;
        });

    [Fact]
    public void A_flock_of_two_needs_a_pen() =>
        Assert.Equal(1, Curve([.. Enumerable.Range(1, 2).Select(i => FeedingSample.Ewe(i, 1, chances: FeedingSample.Even(Start, 60)))]).PensForTheSeason);

    [Fact]
    public void A_day_is_found_by_its_date_and_none_beyond_the_ends()
    {
        var curve = Curve([.. Certain(1, 2, day: 0), .. Certain(3, 1, day: 2)]);

        Assert.Equal([2.0, 0, 1], Enumerable.Range(0, 3).Select(i => curve.On(Start.PlusDays(i))!.ExpectedEwes));
        Assert.Null(curve.On(Start.PlusDays(-1)));
        Assert.Null(curve.On(Start.PlusDays(3)));
        Assert.Null(Curve([]).On(Start));
    }

    [Fact]
    public void Outdoors_nobody_holds_a_pen()
    {
        var ewes = FeedingSample.Ewes(10);
        var flock = FeedingSample.Flock(ewes);
        flock = flock with { Housing = flock.Housing with { Lambing = LambingPlace.Outdoors, LambingPens = 1 } };
        var curve = LambingCurvePlanner.Plan(flock, ewes);
        Assert.Null(curve.ChanceTooFewPens);
        Assert.All(curve.Days, d => Assert.Equal((0, null), (d.PensNeededP90, d.ChanceOverPens)));
    }

    [Fact]
    public void Ewes_not_to_lamb_are_not_on_the_curve()
    {
        ImmutableArray<EwePlan> ewes =
        [
            FeedingSample.Ewe(1), FeedingSample.Ewe(2) with { Standing = Standing.Lambed },
            FeedingSample.Ewe(3) with { Standing = Standing.Empty, Due = null },
        ];
        Assert.Equal(1, Curve(ewes).Days.Sum(d => d.ExpectedEwes), 1e-9);
    }

    [Fact]
    public void With_nobody_in_lamb_there_is_no_curve()
    {
        var curve = Curve([], pens: 4);
        Assert.True(curve.Days.IsEmpty);
        Assert.Equal((0, null), (curve.Ewes, curve.ChanceTooFewPens));
    }

    /// <summary>With the same chance on each of sixty days and a litter that holds its pen two days, the ewes lambing on a day and the
    /// pens in use that night are binomial: against the binomial distribution of MathNet.Numerics.</summary>
    [Fact]
    public void A_thousand_ewes_alike_make_a_binomial_every_day()
    {
        const int ewes = 1000, days = 60, pens = 40;
        var curve = Curve([.. Enumerable.Range(1, ewes).Select(i => FeedingSample.Ewe(i, 2, chances: FeedingSample.Even(Start, days)))], pens);
        var lambing = new Binomial(1.0 / days, ewes);
        var inPens = new Binomial(2.0 / days, ewes);

        Assert.Equal(days, curve.Days.Length);
        Assert.Equal(ewes, curve.Days.Sum(d => d.ExpectedEwes), 1e-9);
        Assert.All(curve.Days, d => Assert.Equal((QuantileOf(lambing, 0.1), QuantileOf(lambing, 0.9)), (d.P10, d.P90)));

        // Nobody lambed the night before the first.
        Assert.All(curve.Days.Skip(1), d =>
        {
            Assert.Equal(QuantileOf(inPens, 0.9), d.PensNeededP90);
            Assert.Equal(1 - inPens.CumulativeDistribution(pens), d.ChanceOverPens!.Value, 1e-9);
        });
    }

    private static int QuantileOf(Binomial binomial, double share) =>
        Enumerable.Range(0, binomial.N + 1).First(k => binomial.CumulativeDistribution(k) >= share);

    private static Gen<Func<int, EwePlan>> AnyEwe =>
        from litter in Gen.Int[1, 3]
        from first in Gen.Int[0, 3]
        from weights in Gen.Double[0.01, 1].Array[1, 4]
        select (Func<int, EwePlan>)(number => FeedingSample.Ewe(number, litter, chances: new DayDistribution(
            Start.PlusDays(first), [.. weights.Select(w => w / weights.Sum())])));

    private static Gen<ImmutableArray<EwePlan>> AnyEwes =>
        AnyEwe.Array[1, 30].Select(drawn => drawn.Select((e, i) => e(i + 1)).ToImmutableArray());

    private static IEnumerable<EwePlan> Certain(int from, int count, int day) => Enumerable.Range(from, count)
        .Select(i => FeedingSample.Ewe(i, 1, chances: FeedingSample.Even(Start.PlusDays(day), 1)));

    private static LambingCurve Curve(ImmutableArray<EwePlan> ewes, int? pens = null)
    {
        var flock = FeedingSample.Flock(ewes);
        return LambingCurvePlanner.Plan(flock with { Housing = flock.Housing with { LambingPens = pens } }, ewes);
    }

    private static (double[] Lambing, double[] InPens) Count(ImmutableArray<EwePlan> ewes, LocalDate day)
    {
        var lambing = new double[ewes.Length + 1];
        var inPens = new double[ewes.Length + 1];
        Walk(0, 1, 0, 0);
        return (lambing, inPens);

        void Walk(int ewe, double chance, int lambed, int penned)
        {
            if (ewe == ewes.Length)
            {
                lambing[lambed] += chance;
                inPens[penned] += chance;
                return;
            }

            var chances = ewes[ewe].Due!.Chances;
            for (var i = 0; i < chances.Chances.Length; i++)
            {
                var on = chances.First.PlusDays(i);
                var since = Period.DaysBetween(on, day);
                Walk(ewe + 1, chance * chances.Chances[i], lambed + (since == 0 ? 1 : 0), penned + (since >= 0 && since < ewes[ewe].Litter ? 1 : 0));
            }
        }
    }

    /// <summary>Chance of each number of pens on the fullest night, every season counted out.</summary>
    private static double[] Fullest(ImmutableArray<EwePlan> ewes)
    {
        var fullest = new double[ewes.Length + 1];
        Walk(0, 1, []);
        return fullest;

        void Walk(int ewe, double chance, ImmutableArray<LocalDate> nights)
        {
            if (ewe == ewes.Length)
            {
                fullest[nights.IsEmpty ? 0 : nights.CountBy(n => n).Max(n => n.Value)] += chance;
                return;
            }

            var chances = ewes[ewe].Due!.Chances;
            for (var i = 0; i < chances.Chances.Length; i++)
            {
                var on = chances.First.PlusDays(i);
                Walk(ewe + 1, chance * chances.Chances[i], nights.AddRange(Enumerable.Range(0, ewes[ewe].Litter).Select(on.PlusDays)));
            }
        }
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) < 1e-9;

    private static bool IsQuantile(double[] chances, double share, int k) =>
        chances.Take(k + 1).Sum() >= share - 1e-9 && (k == 0 || chances.Take(k).Sum() < share + 1e-9);
}
