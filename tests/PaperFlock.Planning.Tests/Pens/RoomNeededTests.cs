using PaperFlock.Flocks;
using PaperFlock.Planning.Pens;

namespace PaperFlock.Planning.Tests.Pens;

public sealed class RoomNeededTests
{
    /// <summary>DEFRA PB5162, straw-bedded: lowland ewe of 60 to 90 kg, pregnant, 1.2 to 1.4 m²; hill ewe of 45 to 65 kg 1.0 to
    /// 1.2 m²; winter-shorn a tenth less.</summary>
    [Theory]
    [InlineData(Ground.Lowland, false, 50, 1.2)]
    [InlineData(Ground.Lowland, false, 60, 1.2)]
    [InlineData(Ground.Lowland, false, 75, 1.3)]
    [InlineData(Ground.Lowland, false, 90, 1.4)]
    [InlineData(Ground.Lowland, false, 105, 1.5)]
    [InlineData(Ground.Lowland, true, 75, 1.17)]
    [InlineData(Ground.Hill, false, 40, 1.0)]
    [InlineData(Ground.Hill, false, 45, 1.0)]
    [InlineData(Ground.Hill, false, 55, 1.1)]
    [InlineData(Ground.Hill, false, 65, 1.2)]
    [InlineData(Ground.Hill, true, 65, 1.08)]
    public void Floor_follows_the_published_range(Ground ground, bool shorn, int weight, double floor) =>
        Assert.Equal((decimal)floor, RoomNeeded.For(weight, ground, shorn).Floor);

    /// <summary>DEFRA PB5162: ewes with lambs to six weeks, 2.0 to 2.2 m² lowland, 1.8 to 2.0 hill; the roomier figure, whole ewes, down. A bay of 17.28 m² holds 7, and
    /// 10 lowland ewes want 22 m².</summary>
    [Theory]
    [InlineData(17.28, Ground.Lowland, 7)]
    [InlineData(22, Ground.Lowland, 10)]
    [InlineData(21.9, Ground.Lowland, 9)]
    [InlineData(17.28, Ground.Hill, 8)]
    public void Ewes_with_lambs_want_more_floor(double floor, Ground ground, int ewes) =>
        Assert.Equal(ewes, RoomNeeded.EwesWithLambs((decimal)floor, ground));

    /// <summary>Teagasc, sheep housing space requirements: meal trough of 400, 500 and 600 mm for 50, 70 and 90 kg. DEFRA PB5162 does not
    /// let shorn ewes have less.</summary>
    [Theory]
    [InlineData(45, 0.40)]
    [InlineData(50, 0.40)]
    [InlineData(70, 0.50)]
    [InlineData(80, 0.55)]
    [InlineData(90, 0.60)]
    [InlineData(100, 0.65)]
    public void Trough_follows_the_table_shorn_or_not(int weight, double trough)
    {
        Assert.Equal((decimal)trough, RoomNeeded.For(weight, Ground.Lowland, shorn: false).Trough);
        Assert.Equal((decimal)trough, RoomNeeded.For(weight, Ground.Hill, shorn: true).Trough);
    }

    [Fact]
    public void An_ewe_taken_out_of_a_pen_leaves_her_floor_and_her_trough()
    {
        var ewe = new RoomNeeded(1.2m, 0.5m);
        Assert.Equal(new PenRoom(6.2m, 2.5m), new PenRoom(5, 2).Plus(ewe));
        Assert.Equal(new PenRoom(3.8m, 1.5m), new PenRoom(5, 2).Less(ewe));
        Assert.Equal(new PenRoom(6.2m, null), new PenRoom(5, null).Plus(ewe));
    }

    /// <summary>The pen worked in the Irish Farmers Journal ("Seven key steps for success this lambing season"): a bay of 4.8 m at
    /// 0.5 m a ewe takes 9, and 2.25 m deep gives them 1.2 m² each.</summary>
    [Fact]
    public void A_bay_of_4_8_by_2_25_metres_takes_nine()
    {
        var room = PenRoom.Of(FeedingSample.Pen("bay", 4.8m, 2.25m, 4.8m));
        Assert.Equal(9, room.Capacity(new RoomNeeded(1.2m, 0.5m)));
        Assert.Equal(9, PenRoom.Of(FeedingSample.Pen("bay", 4.8m, 2.25m)).Capacity(new RoomNeeded(1.2m, 0.5m)));
        Assert.Equal(8, PenRoom.Of(FeedingSample.Pen("bay", 4.8m, 2.25m, 4.4m)).Capacity(new RoomNeeded(1.2m, 0.5m)));
    }
}
