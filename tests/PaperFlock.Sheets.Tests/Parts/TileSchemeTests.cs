using PaperFlock.Flocks;
using PaperFlock.Sheets.WallPlanner;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Tests.Parts;

/// <summary>
/// Paper by ISO 216 and ANSI/ASME Y14.1; 6 mm lost at three edges and 12 mm at the foot, 12 mm shared by neighbours, 11 mm for each
/// outer strip, 13 mm on upright tiles. Arithmetic, with 0.3 mm for paper in whole points.
/// </summary>
public sealed class TileSchemeTests
{
    // A4 on its side two down: 297 - 12 wide; twice 210 - 18 - 11 less the 12 shared high, and so on.
    [Theory]
    [InlineData(Paper.A4, PlannerPaper.A3, 1, 2, 285, 350)]
    [InlineData(Paper.A4, PlannerPaper.Tabloid, 1, 2, 285, 350)]
    [InlineData(Paper.A4, PlannerPaper.A2, 2, 2, 384, 520)]
    [InlineData(Paper.Letter, PlannerPaper.Tabloid, 1, 2, 267.4, 361.8)]
    [InlineData(Paper.Letter, PlannerPaper.A2, 2, 2, 395.8, 484.8)]
    public void A_planner_is_as_large_as_its_tiles_can_show(Paper paper, PlannerPaper planner, int across, int down, double widthMm, double heightMm)
    {
        var scheme = TileScheme.For(paper, planner)!;
        Assert.Equal((across, down), (scheme.Across, scheme.Down));
        Assert.Equal(widthMm, scheme.Live.Width / PointsPerMillimetre, 0.3);
        Assert.Equal(heightMm, scheme.Live.Height / PointsPerMillimetre, 0.3);
    }

    [Theory]
    [InlineData(Paper.A4, PlannerPaper.A4)]
    [InlineData(Paper.A4, PlannerPaper.Letter)]
    [InlineData(Paper.Letter, PlannerPaper.Letter)]
    [InlineData(Paper.Letter, PlannerPaper.A4)]
    public void A_planner_no_larger_than_the_paper_is_not_cut(Paper paper, PlannerPaper planner) => Assert.Null(TileScheme.For(paper, planner));

    [Fact]
    public void The_cut_is_in_the_middle_of_what_neighbours_share()
    {
        var scheme = TileScheme.For(Paper.A4, PlannerPaper.A2)!;
        Assert.Equal(scheme.Live.Width / 2, scheme.SeamX!.Value, 6);
        Assert.Equal(scheme.Live.Height / 2, scheme.SeamY, 6);
        Assert.Null(TileScheme.For(Paper.A4, PlannerPaper.A3)!.SeamX);
    }
}
