using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

public sealed class TroughAmountsTests
{
    /// <summary>Worked by hand: down to a tenth of a kilogram, to a twentieth for one and two heads and where a tenth would be too much off.</summary>
    [Theory]
    [InlineData(0.10, new[] { 0.1, 0.2, 0.3, 0.4, 0.5, 0.6 })]
    [InlineData(0.25, new[] { 0.25, 0.5, 0.7, 1, 1.2, 1.5 })]
    [InlineData(0.35, new[] { 0.35, 0.7, 1, 1.4, 1.7, 2.1 })]
    [InlineData(0.45, new[] { 0.45, 0.9, 1.3, 1.8, 2.2, 2.7 })]
    [InlineData(0.05, new[] { 0.05, 0.1, 0.15, 0.2, 0.25, 0.3 })]
    [InlineData(0.127, new[] { 0.1, 0.25, 0.35, 0.5, 0.6, 0.7 })]
    public void Amounts_are_rounded_down_to_what_scales_measure(double each, double[] byHeads) =>
        Assert.Equal(byHeads.Select(k => (decimal)k), Metric(FeedingSample.Feeds).ByHeads((decimal)each, byHeads.Length));

    [Fact]
    public void A_third_of_a_kilogram_three_times_is_a_kilogram() => Assert.Equal(1m, Metric(FeedingSample.Feeds).For(1m / 3, 3));

    [Fact]
    public void Pounds_are_measured_in_tenths()
    {
        var amounts = new TroughAmounts(FeedingSample.Feeds, UnitSystem.Imperial);
        Assert.Equal(1, amounts.For(Mass.KilogramsPerPound, 1) / Mass.KilogramsPerPound, 9);
        Assert.Equal(2.9m, Math.Round(amounts.For(1.49m * Mass.KilogramsPerPound, 2) / Mass.KilogramsPerPound, 6));
    }

    [Fact]
    public void Without_scales_everything_is_in_half_scoops_and_nothing_is_none()
    {
        var amounts = Metric(FeedingSample.Feeds with { Scales = false });
        Assert.Equal(0.7m, amounts.HalfScoop);
        Assert.Equal([0.45m, 0.7m, 0.7m, 1.4m, 2.1m], amounts.ByHeads(0.45m, 5));
    }

    private static TroughAmounts Metric(Feeds feeds) => new(feeds, UnitSystem.Metric);
}
