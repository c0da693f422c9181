namespace PaperFlock.Sheets.FeedCharts;

/// <summary>Pinned over the feed bins: count the heads at the trough and read off what goes into it, week by week.</summary>
internal static class FeedChartSheet
{
    public static readonly SheetDefinition Definition = new("feed", "FEED", SheetUse.Pinned)
    {
        Lives = "over the bins",
        Purpose = "what goes into a trough at each feed, by the heads that stand at it",
        IsFrontsOnly = true,
        IsOneLeaf = true,
        IsStruckByHand = true,
        Together = "Feed charts",
        OnBack = new("fed otherwise", [("from which feed", 2), ("heads, where", 2), ("how much for all of them", 2), ("why, who said so", 3)]),
        Make = Make,
    };

    /// <summary>Points between the table and the words above and below it.</summary>
    private const double Apart = 5;

    /// <summary>Between two charts that share a side.</summary>
    private const double Between = 10;

    /// <summary>A class with more heads at a trough has a side to itself.</summary>
    private const int MostHeadsOfSmall = 3;

    private static readonly double TallestRow = Mm(11);

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var charts = context.Plan.Feeding.Charts.Where(c => !c.IsForageOnly && c.Ewes.Any(e => !e.IsLost) && c.Rows.Any(r => context.Concerns(r.From, r.To))).ToList();
        var sheets = ImmutableArray.CreateBuilder<Sheet>();
        sheets.AddRange(charts.Where(c => c.MostHeads > MostHeadsOfSmall).Select(c => Alone(context, c)));
        var small = new Queue<SmallChart>(charts.Where(c => c.MostHeads <= MostHeadsOfSmall).Select(c => Small(context, c)).Concat(LambedChart.Of(context)));
        while (small.TryDequeue(out var left))
        {
            sheets.Add(small.TryPeek(out var right) && left.Fits && right.Fits ? Shared(context, left, small.Dequeue()) : left.Alone());
        }

        return sheets.ToImmutable();
    }

    private static Sheet Alone(SheetContext context, FeedChart chart)
    {
        var title = FeedText.Class(chart);
        var width = context.Page.SidewaysBody.Width;
        var (foot, lead, head) = (FeedFoot.Of(context), FeedLead.Of(context, chart, width), PageHead.Of(context, title, chart.Code, sideways: true));
        var shown = ReckonerTable.Shown(context, chart);
        var row = (Room(context, width, lead, foot, head) - ReckonerTable.HeadHeight) / shown.Length;
        var table = ReckonerTable.Of(context, chart, shown, Math.Clamp(row, LeastRow(context), TallestRow), width);
        return Pinned(context, chart.Code, title, new Column([lead, table, foot], Apart) { Name = title }, head);
    }

    /// <summary>Whether it fits beside another hangs on all its rows, and not on those that are left.</summary>
    private static SmallChart Small(SheetContext context, FeedChart chart)
    {
        var (title, width) = (FeedText.Class(chart), HalfWidth(context));
        var (head, lead) = (SmallHead(context, title, chart.Code), FeedLead.Of(context, chart, width));
        Column Half(ImmutableArray<FeedRow> rows, double row) => new([head, lead, ReckonerTable.Of(context, chart, rows, row, width)], Apart) { Name = title };
        var room = Room(context, context.Page.SidewaysBody.Width, FeedFoot.Of(context));
        var shown = ReckonerTable.Shown(context, chart);
        var spare = (room - Heights.Of(Half(shown, LeastRow(context)), width, context)) / shown.Length;
        return new SmallChart(
            chart.Code,
            title,
            Half(shown, Math.Clamp(LeastRow(context) + spare, LeastRow(context), TallestRow)),
            Heights.Of(Half(ReckonerTable.All(chart), LeastRow(context)), width, context) <= room,
            () => Alone(context, chart));
    }

    private static Sheet Shared(SheetContext context, SmallChart left, SmallChart right)
    {
        var body = new Column(
            [
                new Row([new RowCell(Track.Share(), left.Half), new RowCell(Track.Share(), new Box(right.Half, new Edges(Between, 0, 0, 0), Lines.Grid, Sides.Left))], Between),
                FeedFoot.Of(context),
            ],
            Apart);
        return Pinned(context, left.Code, $"{left.Title}, and {right.Code}", body, Block.Gap(0.1));
    }

    /// <summary>Points that one of two on a side is wide.</summary>
    internal static double HalfWidth(SheetContext context) => ((context.Page.SidewaysBody.Width - Between) / 2) - Between - Lines.Grid;

    internal static Column SmallHead(SheetContext context, string title, string code) => Block.Column(
        3,
        Block.Ends(
            Block.Text(title, TypeScale.Heading, leading: 1.1) with { Tag = StructureTag.Heading(1) },
            Block.Text(code, TypeScale.LongCode, TextAlign.Right, 1.1),
            context.Measurer.WidthOf(code, TypeScale.LongCode) + 2,
            6),
        new Rule(Lines.Section));

    internal static Sheet Pinned(SheetContext context, string code, string title, Element body, Element head) =>
        Binder.Bind(context, Definition, code, $"Feed chart: {title}", body, PageDesigns.Sideways(context, code, head));

    private static double LeastRow(SheetContext context) => context.WriteIn.TableTick + 3;

    /// <summary>What everything else on the page leaves, in points.</summary>
    internal static double Room(SheetContext context, double width, params ReadOnlySpan<Element> others)
    {
        var body = context.Page.SidewaysBody;
        var room = body.Height - Heights.Of(PageDesigns.ControlLine(context, Definition.Code, body.Width), body.Width, context) - (2 * PageSetup.SidewaysGap) - (2 * Apart) - 2;
        foreach (var other in others)
        {
            room -= Heights.Of(other, width, context);
        }

        return room;
    }
}
