namespace PaperFlock.Sheets.WallPlanner;

/// <summary>The season at a glance, pinned up: on one sheet, or as tiles where the planner is larger than the printer's paper.</summary>
internal static class WallPlannerSheet
{
    public static readonly SheetDefinition Definition = new("planner", "WALL", SheetUse.Pinned)
    {
        Lives = "wall",
        Purpose = "the season: what is done on which day, rounds a day, feed, when lambs are due",
        IsFrontsOnly = true,
        IsOneLeaf = true,
        Make = Make,
    };

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var scheme = PlannerTiles.SchemeOf(context);
        return scheme is null
            ? [OnePiece(context, context.Page.Paper)]
            : [PlannerTiles.Make(context, scheme)];
    }

    /// <summary>The planner in one piece on its own paper; null where <see cref="Make"/> gives that already.</summary>
    public static Sheet? Whole(SheetContext context) =>
        TileScheme.For(context.Print.Paper, context.Print.Planner) is null
            ? null
            : OnePiece(context, Papers.Of(context.Print.Planner));

    private static Sheet OnePiece(SheetContext context, Size paper)
    {
        var edges = new Edges(Mm(8), Mm(8), Mm(8), PageSetup.UnprintableFoot);
        var foot = Foot(context, paper.Width - edges.Horizontal);
        var footHeight = Heights.Of(foot, paper.Width - edges.Horizontal, context);
        var live = new Size(paper.Width - edges.Horizontal, paper.Height - edges.Vertical - footHeight - FootGap);
        var large = Math.Max(paper.Width, paper.Height) > 1000;
        var poster = large
            ? PlannerPoster.Of(context, live, TypeScale.CapAtOneMetre, TypeScale.LeastCapAtOneMetre)
            : PlannerPoster.Of(context, live, TypeScale.LeastCapAtOneMetre, TypeScale.CapAtHalfMetre);
        var design = new PageDesign(paper, edges, edges, null, null, foot, FootGap);
        return Binder.Bind(context, Definition, Definition.Code, Title, poster, design);
    }

    public const string Title = "Wall planner";
    private const double FootGap = 4;
    private const double FootSpacing = 12;

    private static Row Foot(SheetContext context, double width) => new(
        [
            new RowCell(Track.Share(), PageDesigns.ControlLine(context, Definition.Code, width - CheckBar.Width - FootSpacing), VerticalAlign.Bottom),
            new RowCell(Track.Fixed(CheckBar.Width), CheckBar.Element(), VerticalAlign.Bottom),
        ],
        FootSpacing);
}
