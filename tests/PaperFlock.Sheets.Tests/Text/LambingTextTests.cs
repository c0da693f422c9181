using PaperFlock.Flocks;
using PaperFlock.Planning;
using PaperFlock.Planning.Tests;

namespace PaperFlock.Sheets.Tests.Text;

public sealed class LambingTextTests
{
    private static readonly LambingDay Quiet = new(new(2027, 1, 7), 1.5, 0, 3, 3, 0.001);

    [Theory]
    [InlineData(10, 7, 0.001, "10 lambing pens should be enough on every night, taken one by one.")]
    [InlineData(7, 7, 0.055, "7 lambing pens would not be enough on the worst night, Fri 8 Jan, 1 time in 18.")]
    [InlineData(6, 7, 0.172, "6 lambing pens would not be enough on the worst night, Fri 8 Jan, 1 time in 6; 7 would be, nine times in ten.")]
    [InlineData(4, 7, 0.62, "4 lambing pens would more often than not be too few on the worst night, Fri 8 Jan; 7 would be enough nine times in ten.")]
    [InlineData(1, 7, 0.99, "1 lambing pen would hardly ever be enough on the worst night, Fri 8 Jan; 7 would be, nine times in ten.")]
    [InlineData(null, 7, null, "7 lambing pens would be enough on any one night nine times in ten.")]
    [InlineData(null, 1, null, "1 lambing pen would be enough on any one night nine times in ten.")]
    public void Words_fit_the_chance(int? pens, int needed, double? chance, string words) => Assert.Equal(
        "10 ewes to lamb; the busiest day looks like Fri 8 Jan, with 7 ewes or fewer nine times in ten. " + words,
        LambingText.Of(Curve(needed, chance), Sample.Housing() with { LambingPens = pens }));

    [Fact]
    public void Outdoors_no_pen_is_spoken_of() =>
        Assert.DoesNotContain("pen", LambingText.Of(Curve(0, null), Sample.Housing(LambingPlace.Outdoors)), StringComparison.Ordinal);

    [Fact]
    public void With_nobody_in_lamb_it_says_so() => Assert.Equal("No ewe is in lamb.", LambingText.Of(new LambingCurve(0, [], [], null), Sample.Housing()));

    private static LambingCurve Curve(int pens, double? chance) =>
        new(10, [Quiet with { PensNeededP90 = 0, ChanceOverPens = chance is null ? null : 0 }, new(new(2027, 1, 8), 5, 3, 7, pens, chance)], [], chance);
}
