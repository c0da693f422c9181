using PaperFlock.Flocks;
using PaperFlock.Planning.Pens;

namespace PaperFlock.Planning.Tests.Pens;

/// <summary>Whole ewes in a pen, rounded down, by published room for each.</summary>
public sealed class SpaceWithLambsTests
{
    /// <summary>DEFRA PB5162, straw-bedded: a lowland ewe with lambs to six weeks has 2.0 to 2.2 m². So ten have 20 to 22 m², and a bay of 17.28 m² holds eight, or
    /// seven.</summary>
    [Theory]
    [InlineData(4, 5, 2.0, 10)]
    [InlineData(4, 5.5, 2.2, 10)]
    [InlineData(4, 5, 2.2, 9)]
    [InlineData(4.8, 3.6, 2.0, 8)]
    [InlineData(4.8, 3.6, 2.2, 7)]
    public void Floor_holds_so_many_with_lambs(double length, double width, double each, int ewes) =>
        Assert.Equal(ewes, PenRoom.Of(FeedingSample.Pen("bay", (decimal)length, (decimal)width)).Capacity(new RoomNeeded((decimal)each, 0.5m)));

    /// <summary>Trough where all eat at once: 45 cm the least (Farmers Weekly, 8 December 1995; SRUC over 45 cm), 50 cm for a ewe of 70 kg (Teagasc, sheep housing space
    /// requirements). Sources differ by a ewe in 6.6 m; what is planned is Teagasc's.</summary>
    [Theory]
    [InlineData(0.45, 14)]
    [InlineData(0.50, 13)]
    public void A_trough_of_6_6_metres_holds_so_many(double each, int ewes)
    {
        var bay = PenRoom.Of(FeedingSample.Pen("bay", 20, 20, 6.6m));
        Assert.Equal(ewes, bay.Capacity(new RoomNeeded(1.2m, (decimal)each)));
        Assert.Equal(13, bay.Capacity(RoomNeeded.For(70, Ground.Lowland, shorn: false)));
    }
}
