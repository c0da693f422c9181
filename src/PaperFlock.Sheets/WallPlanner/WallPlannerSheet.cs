using System.Collections.Immutable;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pages;
using PaperFlock.Sheets.Theme;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.WallPlanner;

/// <summary>The season at a glance, pinned up: on one sheet, or as tiles where the planner is larger than the printer's paper.</summary>
internal sealed class WallPlannerSheet : ISheetMaker
{
    public const string KindWord = "planner";
    public const string Code = "WALL";

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(SheetContext context)
    {
        var scheme = PlannerTiles.SchemeOf(context);
        return scheme is null
            ? [OnePiece(context, context.Paper)]
            : [PlannerTiles.Make(context, scheme, KindWord, Code, TitleIn())];
    }

    /// <summary>The planner in one piece on its own paper; null where <see cref="Make"/> gives that already.</summary>
    public static Sheet? Whole(SheetContext context) =>
        TileScheme.For(context.Print.Paper, context.Print.Planner) is null
            ? null
            : OnePiece(context, Papers.Of(context.Print.Planner));

    private static Sheet OnePiece(SheetContext context, Size paper)
    {
        var edges = new Edges(Mm(8), Mm(8), Mm(8), SheetContext.UnprintableFoot);
        var foot = Foot(context, paper.Width - edges.Horizontal);
        var footHeight = Heights.Of(foot, paper.Width - edges.Horizontal, context);
        var live = new Size(paper.Width - edges.Horizontal, paper.Height - edges.Vertical - footHeight - FootGap);
        var large = Math.Max(paper.Width, paper.Height) > 1000;
        var poster = large
            ? PlannerPoster.Of(context, live, TypeScale.CapAtOneMetre, TypeScale.LeastCapAtOneMetre)
            : PlannerPoster.Of(context, live, TypeScale.LeastCapAtOneMetre, TypeScale.CapAtHalfMetre);
        var design = new PageDesign(paper, edges, edges, null, null, foot, FootGap);
        var sides = Binder.FrontsOnly(context, Code, poster, design);
        var title = TitleIn();
        return new Sheet(KindWord, Code, title, SheetUse.Pinned, sides) { Parts = [SheetPart.AllOf(Code, title, sides)] };
    }

    private static string TitleIn() => "Wall planner";

    private const double FootGap = 4;
    private const double FootSpacing = 12;

    private static Row Foot(SheetContext context, double width) => new(
        [
            new RowCell(Track.Share(), context.ControlLine(Code, width - CheckBar.Width - FootSpacing), VerticalAlign.Bottom),
            new RowCell(Track.Fixed(CheckBar.Width), CheckBar.Element(), VerticalAlign.Bottom),
        ],
        FootSpacing);
}
