using System.Collections.Immutable;
using PaperFlock.Languages;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pages;
using PaperFlock.Sheets.House;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.WallPlanner;

/// <summary>The season at a glance, pinned up: on one sheet, or as tiles where the planner is larger than the printer's paper.</summary>
internal sealed class WallPlannerSheet : ISheetMaker
{
    public const string KindWord = "planner";
    public const string Code = "WALL";

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(Stationery stationery)
    {
        var scheme = PlannerTiles.SchemeOf(stationery);
        return scheme is null
            ? [OnePiece(stationery, stationery.Paper)]
            : [PlannerTiles.Make(stationery, scheme, KindWord, Code, TitleIn(stationery.Language))];
    }

    /// <summary>The planner in one piece on its own paper; null where <see cref="Make"/> gives that already.</summary>
    public static Sheet? Whole(Stationery stationery) =>
        TileScheme.For(stationery.Print.Paper, stationery.Print.Planner) is null
            ? null
            : OnePiece(stationery, Papers.Of(stationery.Print.Planner));

    private static Sheet OnePiece(Stationery stationery, Size paper)
    {
        var edges = new Edges(Mm(8), Mm(8), Mm(8), Stationery.UnprintableFoot);
        var foot = Foot(stationery, paper.Width - edges.Horizontal);
        var footHeight = Heights.Of(foot, paper.Width - edges.Horizontal, stationery);
        var live = new Size(paper.Width - edges.Horizontal, paper.Height - edges.Vertical - footHeight - FootGap);
        var large = Math.Max(paper.Width, paper.Height) > 1000;
        var poster = large
            ? PlannerPoster.Of(stationery, live, Fount.CapAtOneMetre, Fount.LeastCapAtOneMetre)
            : PlannerPoster.Of(stationery, live, Fount.LeastCapAtOneMetre, Fount.CapAtHalfMetre);
        var design = new PageDesign(paper, edges, edges, null, null, foot, FootGap);
        var sides = Binder.FrontsOnly(stationery, Code, poster, design);
        var title = TitleIn(stationery.Language);
        return new Sheet(KindWord, Code, title, SheetUse.Pinned, sides) { Parts = [SheetPart.AllOf(Code, title, sides)] };
    }

    private static string TitleIn(Language language) => language.Say("Wall planner");

    private const double FootGap = 4;
    private const double FootSpacing = 12;

    private static Row Foot(Stationery stationery, double width) => new(
        [
            new RowCell(Track.Share(), stationery.ControlLine(Code, width - CheckBar.Width - FootSpacing), VerticalAlign.Bottom),
            new RowCell(Track.Fixed(CheckBar.Width), CheckBar.Element(stationery.Language), VerticalAlign.Bottom),
        ],
        FootSpacing);
}
