using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning;
using PaperFlock.Planning.Tests;

namespace PaperFlock.Sheets.Tests.Text;

public sealed class LambingTextTests
{
    private static readonly LambingDay Quiet = new(new(2027, 1, 7), 1.5, 0, 3, 3, 0.001);

    [Theory]
    [InlineData(10, 7, 0.001, "10 lambing pens should be enough on every night.")]
    [InlineData(7, 7, 0.055, "7 lambing pens would be too few on some night 1 season in 18.")]
    [InlineData(6, 7, 0.172, "6 lambing pens would be too few on some night 1 season in 6; 7 would be enough nine times in ten.")]
    [InlineData(4, 7, 0.62, "4 lambing pens would more often than not be too few on some night; 7 would be enough nine times in ten.")]
    [InlineData(1, 7, 0.99, "1 lambing pen would hardly ever be enough all season; 7 would be enough nine times in ten.")]
    [InlineData(null, 7, null, "7 lambing pens would be enough all season, nine times in ten.")]
    [InlineData(null, 1, null, "1 lambing pen would be enough all season, nine times in ten.")]
    public void Words_fit_the_chance(int? pens, int needed, double? chance, string words) => Assert.Equal(
        "10 ewes to lamb; the busiest night looks like Fri 8 Jan, with 7 ewes or fewer nine times in ten. " + words,
        LambingText.Of(Curve(needed, chance, 8), Sample.Housing() with { LambingPens = pens }));

    [Theory]
    [InlineData("nights look like Fri 8 Jan to Sat 9 Jan, with 7", 8, 9)]
    [InlineData("nights look like Thu 7 Jan and Sat 9 Jan, with 7", 7, 9)]
    [InlineData("nights look like Thu 7 Jan, Sat 9 Jan, Mon 11 Jan and other nights, with 7", 7, 9, 11, 13)]
    public void Nights_as_busy_are_named_as_spans(string words, params int[] nights) =>
        Assert.Contains(words, LambingText.Of(Curve(7, null, nights), Sample.Housing()), StringComparison.Ordinal);

    [Fact]
    public void Outdoors_no_pen_is_spoken_of() =>
        Assert.DoesNotContain("pen", LambingText.Of(Curve(0, null, 8), Sample.Housing(LambingPlace.Outdoors)), StringComparison.Ordinal);

    [Fact]
    public void With_nobody_in_lamb_it_says_so() => Assert.Equal("No ewe is in lamb.", LambingText.Of(new LambingCurve(0, [], [], null), Sample.Housing()));

    private static LambingCurve Curve(int pens, double? chance, params int[] busiest) =>
        new(10, [.. Enumerable.Range(7, 7).Select(day => Quiet with { Date = new(2027, 1, day), P90 = busiest.Contains(day) ? 7 : 3 })], [.. busiest.Select(day => new LocalDate(2027, 1, day))], chance)
        {
            ChanceTooFewPensOnSomeNight = chance,
            PensForTheSeason = pens,
        };
}
