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
        Together = "Feed charts",
        Make = Make,
    };

    /// <summary>Points between the table and the words above and below it.</summary>
    private const double Apart = 5;

    private static readonly double TallestRow = Mm(11);

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var charts = context.Plan.Feeding.Charts
            .Where(c => !c.IsForageOnly && c.Rows.Any(r => context.Concerns(r.From, r.To)))
            .Select(c => Chart(context, c));
        return [.. charts, .. LambedChart.Make(context)];
    }

    private static Sheet Chart(SheetContext context, FeedChart chart)
    {
        var title = FeedText.Class(chart);
        var foot = FeedFoot.Of(context);
        var lead = FeedLead.Of(context, chart);
        var head = PageHead.Of(context, title, chart.Code, sideways: true);
        var room = Room(context, head, lead, foot);
        var rows = ReckonerTable.Shown(context, chart).Length;
        var table = ReckonerTable.Of(context, chart, Math.Clamp((room - ReckonerTable.HeadHeight) / rows, context.WriteIn.TableTick + 3, TallestRow));
        var body = new Column([lead, table, foot], Apart) { Name = title };
        return Pinned(context, chart.Code, title, body, head);
    }

    internal static Sheet Pinned(SheetContext context, string code, string title, Element body, Element head) =>
        Binder.Bind(context, Definition, code, $"Feed chart: {title}", body, PageDesigns.Sideways(context, code, head));

    /// <summary>What everything else on the page leaves for the table, in points.</summary>
    private static double Room(SheetContext context, params ReadOnlySpan<Element> others)
    {
        var body = context.Page.SidewaysBody;
        var room = body.Height - Heights.Of(PageDesigns.ControlLine(context, Definition.Code, body.Width), body.Width, context) - (2 * PageSetup.SidewaysGap) - (2 * Apart) - 2;
        foreach (var other in others)
        {
            room -= Heights.Of(other, body.Width, context);
        }

        return room;
    }
}
