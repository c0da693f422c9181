using CsCheck;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

public sealed class FeedsADayTests
{
    /// <summary>No more than 0.5 kg in a feed, and twice daily in the last three weeks: Drummonds, "Feed the early lambing lowland
    /// ewe".</summary>
    [Theory]
    [InlineData(0.45, 6, 1)]
    [InlineData(0.50, 4, 1)]
    [InlineData(0.5005, 4, 1)] // half a gram over is no reason to feed twice
    [InlineData(0.502, 4, 2)]
    [InlineData(0.907, 6, 2)]
    [InlineData(1.36, 6, 3)]
    [InlineData(0.45, 3, 2)]
    [InlineData(0.45, 0, 2)]
    [InlineData(0.45, -2, 2)]
    [InlineData(0.0, 5, 1)]
    public void Feeds_are_the_fewest_that_are_small_enough(double kilograms, int weeksBefore, int feeds) =>
        Assert.Equal(feeds, FeedsADay.For((decimal)kilograms, 0.5m, weeksBefore, 3));

    [Fact]
    public void A_largest_feed_of_nothing_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FeedsADay.For(0.45m, 0, 6, 3));

    [Fact]
    public void No_fewer_feeds_would_do() =>
        Gen.Select(Gen.Double[0, 3], Gen.Double[0.1, 1], Gen.Int[-4, 12], Gen.Int[0, 6]).Sample((kg, most, before, two) =>
        {
            var (kilograms, largest) = ((decimal)kg, (decimal)most);
            var feeds = FeedsADay.For(kilograms, largest, before, two);
            var least = before <= two ? 2 : 1;
            return feeds >= least
                && kilograms / feeds <= largest + 0.001m
                && (feeds == least || kilograms / (feeds - 1) > largest);
        });

    [Theory]
    [InlineData(2.72, 1.4, 2.0)] // 1.94
    [InlineData(2.10, 1.4, 1.5)]
    [InlineData(1.80, 1.4, 1.25)] // 1.29: to the half it would be 17 % out
    [InlineData(0.35, 1.4, 0.25)]
    [InlineData(0.20, 1.4, null)] // 0.14: no fraction a hand can judge
    [InlineData(0.00, 1.4, 0.0)]
    [InlineData(2.72, null, null)] // no scoop: weighed
    public void Scoops_are_to_the_half_then_the_quarter_or_not_at_all(double kilograms, double? scoop, double? scoops) =>
        Assert.Equal((decimal?)scoops, Scoops.PerFeed((decimal)kilograms, (decimal?)scoop));

    [Fact]
    public void A_scoop_count_is_never_more_than_a_tenth_out() =>
        Gen.Select(Gen.Double[0.05, 40], Gen.Double[0.2, 3]).Sample((kg, holds) =>
        {
            var scoops = Scoops.PerFeed((decimal)kg, (decimal)holds);
            return scoops is not { } s || Math.Abs((double)s * holds - kg) <= (0.1 * kg) + 1e-9;
        });
}
