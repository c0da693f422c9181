namespace PaperFlock.Flocks.Tests;

/// <summary>Every published length of gestation can be written in a flock file.</summary>
public sealed class GestationTests
{
    /// <summary>Breeds' means, in whole days: Finnsheep 144 and Canadian Arcott 147 (7,083 ewes, "Variation in reproductive performance", abstract), Barbados Blackbelly with one
    /// lamb 149.8 (1,291 records, abstract 121), Yankasa 151.4 (834 lambings, abstract). The ends are single ewes': 138 and 159 (Montana Farm Flock Sheep
    /// Production Handbook, reported).</summary>
    [Theory]
    [InlineData(138)]
    [InlineData(144)]
    [InlineData(147)]
    [InlineData(150)]
    [InlineData(151)]
    [InlineData(159)]
    public void A_breed_may_carry_so_long(int days) =>
        Assert.Equal(days, Assert.Single(Samples.Flock(Samples.Text($"breeds:\n  - {{name: Own, gestation-days: {days}}}\n")).Breeds).GestationDays);

    /// <summary>Hair sheep carry one lamb 2.4 days longer than two, and two 0.7 days longer than three (abstract 121, as above); Merinos no longer (1,278 ewes,
    /// Australian Journal of Agricultural Research 1:76, 1950).</summary>
    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(2, 0, -1)]
    [InlineData(3, 0, 0)]
    public void A_litter_may_change_it_or_not(int single, int twin, int more) => Assert.Equal(
        (single, twin, more),
        Samples.Flock(Samples.Text($"practice:\n  gestation-days-by-litter: {{single: {single}, twin: {twin}, triplet: {more}}}\n")).Practice.GestationLitterDays);
}
