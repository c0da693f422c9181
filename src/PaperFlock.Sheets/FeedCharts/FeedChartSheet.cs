using System.Collections.Immutable;
using System.Globalization;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.Theme;

namespace PaperFlock.Sheets.FeedCharts;

/// <summary>Pinned over the feed bins: what goes into the trough, for the whole group, at each feed, week by week.</summary>
internal static class FeedChartSheet
{
    public static readonly SheetDefinition Definition = new("feed", "FEED", SheetUse.Pinned)
    {
        Lives = "over the bins",
        Purpose = "what goes into each trough at each feed, for all of the group together",
        IsForSitter = true,
        IsFrontsOnly = true,
        IsOneLeaf = true,
        HasWordsInLastCell = true,
        Together = "Feed charts",
        Make = Make,
    };

    /// <summary>Points between the table and the words below it.</summary>
    private const double AboveFoot = 5;

    private static ImmutableArray<Sheet> Make(SheetContext context) =>
        [.. context.Plan.TroughGroups.Where(g => g.Weeks.Any(w => context.Concerns(w.WeekBeginning, w.WeekBeginning.PlusDays(6)))).Select(g => Chart(context, g))];

    private static Sheet Chart(SheetContext context, TroughGroup group)
    {
        var code = $"{Definition.Code}-" + group.Number.ToString(CultureInfo.InvariantCulture);
        var where = group.Pen is null ? "" : $" · {group.Pen}";
        var title = $"{group.Name}{where} · {English.Count(group.Ewes.Length, "ewe", "ewes")}";
        var head = context.Head(title, code, FeedText.Lead(context, group), context.Mark.IssueWords, sideways: true);
        var table = FeedTable.Of(context, group, RoomForTable(context, head, FeedText.Foot(context, group)));
        var body = new Column([table, FeedText.Foot(context, group)], AboveFoot) { Name = title };
        return Binder.Bind(context, Definition, code, $"Feed chart: {group.Name}{where}", body, context.SidewaysDesign(code, head));
    }

    /// <summary>What head, foot words and control line leave for the table, in points.</summary>
    private static double RoomForTable(SheetContext context, Element head, Element foot)
    {
        var body = context.SidewaysBody;
        return body.Height - Heights.Of(head, body.Width, context) - Heights.Of(foot, body.Width, context)
            - Heights.Of(context.ControlLine(Definition.Code, body.Width), body.Width, context) - (2 * SheetContext.SidewaysGap) - AboveFoot - 1;
    }
}
