using NodaTime.Text;

namespace PaperFlock.Planning.Tests;

/// <summary>Tup in on Mon 10 Aug, counted on a calendar.</summary>
public sealed class RaddlePeriodTests
{
    private static readonly LocalDatePattern Pattern = LocalDatePattern.Create("d MMM", CultureInfo.InvariantCulture);

    [Theory]
    [InlineData(0, "yellow 10 Aug to 10 Aug")]
    [InlineData(16, "yellow 10 Aug to 26 Aug")]
    // A colour begun on the day he leaves would mark nobody.
    [InlineData(17, "yellow 10 Aug to 27 Aug")]
    [InlineData(18, "yellow 10 Aug to 26 Aug, orange 27 Aug to 28 Aug")]
    [InlineData(42, "yellow 10 Aug to 26 Aug, orange 27 Aug to 12 Sep, yellow 13 Sep to 21 Sep")]
    public void A_colour_is_worn_a_cycle_and_the_last_until_he_leaves(int stay, string periods)
    {
        var group = Sample.Group(tupIn: Sample.TupIn, tupOut: Sample.TupIn.PlusDays(stay)) with { Raddle = ["yellow", "orange"] };

        Assert.Equal(periods, string.Join(", ", RaddlePeriod.Of(group, 17).Select(p => $"{p.Colour} {Pattern.Format(p.From)} to {Pattern.Format(p.To)}")));
    }
}
