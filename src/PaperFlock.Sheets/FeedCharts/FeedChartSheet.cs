using System.Collections.Immutable;
using System.Globalization;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.Theme;

namespace PaperFlock.Sheets.FeedCharts;

/// <summary>Pinned over the feed bins: what goes into the trough, for the whole group, at each feed, week by week.</summary>
internal sealed class FeedChartSheet : ISheetMaker
{
    public const string KindWord = "feed";
    private const string CodePrefix = "FEED-";

    /// <summary>Points between the table and the words below it.</summary>
    private const double AboveFoot = 5;

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(SheetContext context) =>
        [.. context.Plan.TroughGroups.Where(g => g.Weeks.Any(w => context.Concerns(w.WeekBeginning, w.WeekBeginning.PlusDays(6)))).Select(g => Chart(context, g))];

    public static bool IsCode(string code) => code.StartsWith(CodePrefix, StringComparison.Ordinal);

    private static Sheet Chart(SheetContext context, TroughGroup group)
    {
        var code = CodePrefix + group.Number.ToString(CultureInfo.InvariantCulture);
        var where = group.Pen is null ? "" : $" · {group.Pen}";
        var title = $"{group.Name}{where} · {English.Count(group.Ewes.Length, "ewe", "ewes")}";
        var head = context.Head(title, code, FeedText.Lead(context, group), context.Mark.IssueWords, sideways: true);
        var table = FeedTable.Of(context, group, RoomForTable(context, head, FeedText.Foot(context, group)));
        var body = new Column([table, FeedText.Foot(context, group)], AboveFoot) { Name = title };
        var sides = Binder.FrontsOnly(context, code, body, context.SidewaysDesign(code, head));
        var named = $"Feed chart: {group.Name}{where}";
        return new Sheet(KindWord, code, named, SheetUse.Pinned, sides) { Parts = [SheetPart.AllOf(code, named, sides)] };
    }

    /// <summary>What head, foot words and control line leave for the table, in points.</summary>
    private static double RoomForTable(SheetContext context, Element head, Element foot)
    {
        var body = context.SidewaysBody;
        return body.Height - Heights.Of(head, body.Width, context) - Heights.Of(foot, body.Width, context)
            - Heights.Of(context.ControlLine("FEED", body.Width), body.Width, context) - (2 * SheetContext.SidewaysGap) - AboveFoot - 1;
    }
}
