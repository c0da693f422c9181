using System.Collections.Immutable;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.Theme;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.FeedCharts;

/// <summary>Pinned over the feed bins: count the heads at the trough and read off what goes into it, week by week.</summary>
internal sealed class FeedChartSheet : ISheetMaker
{
    public const string KindWord = "feed";
    private const string CodePrefix = "FEED-";

    /// <summary>Points between the table and the words above and below it.</summary>
    private const double Apart = 5;

    private static readonly double TallestRow = Mm(11);

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(SheetContext context)
    {
        var charts = context.Plan.Feeding.Charts
            .Where(c => !c.IsForageOnly && c.Rows.Any(r => context.Concerns(r.From, r.To)))
            .Select(c => Chart(context, c));
        return [.. charts, .. LambedChart.Make(context)];
    }

    public static bool IsCode(string code) => code.StartsWith(CodePrefix, StringComparison.Ordinal);

    private static Sheet Chart(SheetContext context, FeedChart chart)
    {
        var title = FeedText.Class(chart);
        var foot = FeedFoot.Of(context);
        var lead = FeedLead.Of(context, chart);
        var head = context.Head(title, chart.Code, sideways: true);
        var room = Room(context, head, lead, foot);
        var rows = ReckonerTable.Shown(context, chart).Length;
        var table = ReckonerTable.Of(context, chart, Math.Clamp((room - ReckonerTable.HeadHeight) / rows, context.TableTick + 3, TallestRow));
        var body = new Column([lead, table, foot], Apart) { Name = title };
        return Pinned(context, chart.Code, title, body, head);
    }

    internal static Sheet Pinned(SheetContext context, string code, string title, Element body, Element head)
    {
        var sides = Binder.FrontsOnly(context, code, body, context.SidewaysDesign(code, head));
        return new Sheet(KindWord, code, $"Feed chart: {title}", SheetUse.Pinned, sides) { Parts = [SheetPart.AllOf(code, $"Feed chart: {title}", sides)] };
    }

    /// <summary>What everything else on the page leaves for the table, in points.</summary>
    private static double Room(SheetContext context, params ReadOnlySpan<Element> others)
    {
        var body = context.SidewaysBody;
        var room = body.Height - Heights.Of(context.ControlLine("FEED", body.Width), body.Width, context) - (2 * SheetContext.SidewaysGap) - (2 * Apart) - 2;
        foreach (var other in others)
        {
            room -= Heights.Of(other, body.Width, context);
        }

        return room;
    }
}
