using PaperFlock.Planning.Stores;

namespace PaperFlock.Planning.Tests.Stores;

/// <summary>What is planned for a ewe in lamb beside what the same table has for one in milk.</summary>
public sealed class WaterInMilkTests
{
    /// <summary>NRC (2007), as reported by the Capital Journal (a United States extension article): 7.6, 8.9 and 10.6 litres in milk, gallons converted. In lamb she is
    /// given the upper end, which the same table has at four fifths of that; four ewes of 73 kg drink 35.7 litres once they have lambed, and this is less.</summary>
    [Theory]
    [InlineData(59, 7.6)]
    [InlineData(73, 8.9)]
    [InlineData(91, 10.6)]
    public void In_lamb_she_drinks_a_fifth_less(double weight, double inMilk) =>
        Assert.Equal(0.8, (double)Water.LitresADay((decimal)weight) / inMilk, 0.02);
}
