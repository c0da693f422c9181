using CsCheck;
using MathNet.Numerics.Distributions;
using PaperFlock.Planning.Lambing;

namespace PaperFlock.Planning.Tests.Lambing;

public sealed class PoissonBinomialTests
{
    [Fact]
    public void Up_to_twelve_unequal_chances_agree_with_counting_every_outcome() =>
        Gen.Double[0, 1].Array[0, 12].Sample(chances =>
        {
            var counted = Enumerate(chances);
            var exact = PoissonBinomial.Of(chances);
            return counted.Select((p, k) => Math.Abs(exact.Exactly(k) - p) < 1e-12).All(same => same)
                && Enumerable.Range(-1, counted.Length + 1).All(k => Math.Abs(exact.MoreThan(k) - counted.Skip(k + 1).Sum()) < 1e-12)
                && Math.Abs(exact.Mean - counted.Select((p, k) => p * k).Sum()) < 1e-12;
        });

    /// <summary>Against the binomial distribution of MathNet.Numerics.</summary>
    [Theory]
    [InlineData(1, 0.3)]
    [InlineData(24, 0.05)]
    [InlineData(300, 0.04)]
    [InlineData(1000, 0.5)]
    public void Equal_chances_make_a_binomial(int ewes, double chance)
    {
        var exact = PoissonBinomial.Of(Enumerable.Repeat(chance, ewes));
        var binomial = new Binomial(chance, ewes);
        for (var k = 0; k <= ewes; k++)
        {
            Assert.Equal(binomial.Probability(k), exact.Exactly(k), 1e-11);
        }

        foreach (var share in new[] { 0.1, 0.5, 0.9 })
        {
            var quantile = exact.Quantile(share);
            Assert.True(binomial.CumulativeDistribution(quantile) >= share - 1e-9);
            Assert.True(quantile == 0 || binomial.CumulativeDistribution(quantile - 1) < share + 1e-9);
        }
    }

    /// <summary>Many small chances come close to a Poisson distribution: by Le Cam's inequality the chances differ by at most
    /// twice the sum of their squares.</summary>
    [Fact]
    public void Many_small_chances_make_nearly_a_poisson()
    {
        var chances = Enumerable.Range(1, 1000).Select(i => 0.004 * i / 1000).ToArray();
        var exact = PoissonBinomial.Of(chances);
        var poisson = new Poisson(exact.Mean);
        var apart = Enumerable.Range(0, 1001).Sum(k => Math.Abs(exact.Exactly(k) - poisson.Probability(k)));
        Assert.InRange(apart, 1e-9, 2 * chances.Sum(p => p * p));
    }

    [Fact]
    public void Nothing_and_certainty_are_distributions_too()
    {
        var none = PoissonBinomial.Of([]);
        Assert.Equal((1.0, 0, 0.0), (none.Exactly(0), none.Quantile(0.9), none.MoreThan(0)));

        var all = PoissonBinomial.Of([1, 1, 0, 1.0000000001]);
        Assert.Equal((1.0, 3, 3), (all.Exactly(3), all.Quantile(0.1), all.Quantile(0.9)));
    }

    [Fact]
    public void A_chance_that_falls_just_on_a_quantile_is_taken_at_it() =>
        Assert.Equal(0, PoissonBinomial.Of([0.1]).Quantile(0.9));

    private static double[] Enumerate(double[] chances)
    {
        var counts = new double[chances.Length + 1];
        for (var outcome = 0; outcome < 1 << chances.Length; outcome++)
        {
            var chance = 1.0;
            for (var i = 0; i < chances.Length; i++)
            {
                chance *= (outcome >> i & 1) == 1 ? chances[i] : 1 - chances[i];
            }

            counts[int.PopCount(outcome)] += chance;
        }

        return counts;
    }
}
