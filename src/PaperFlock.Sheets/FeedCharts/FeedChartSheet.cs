using System.Collections.Immutable;
using System.Globalization;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;

namespace PaperFlock.Sheets.FeedCharts;

/// <summary>Pinned over the feed bins: what goes into the trough, for the whole group, at each feed, week by week.</summary>
internal sealed class FeedChartSheet : ISheetMaker
{
    public const string KindWord = "feed";
    private const string CodePrefix = "FEED-";

    /// <summary>Points between the table and the words below it.</summary>
    private const double AboveFoot = 5;

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(Stationery stationery) =>
        [.. stationery.Plan.TroughGroups.Where(g => g.Weeks.Any(w => stationery.Concerns(w.WeekBeginning, w.WeekBeginning.PlusDays(6)))).Select(g => Chart(stationery, g))];

    public static bool IsCode(string code) => code.StartsWith(CodePrefix, StringComparison.Ordinal);

    private static Sheet Chart(Stationery stationery, TroughGroup group)
    {
        var code = CodePrefix + group.Number.ToString(CultureInfo.InvariantCulture);
        var where = group.Pen is null ? "" : $" · {group.Pen}";
        var title = $"{group.Name}{where} · {stationery.Language.Count(group.Ewes.Length, "ewe", "ewes")}";
        var head = stationery.Head(title, code, FeedWords.Lead(stationery, group), stationery.Mark.IssueWords, sideways: true);
        var table = FeedTable.Of(stationery, group, RoomForTable(stationery, head, FeedWords.Foot(stationery, group)));
        var body = new Column([table, FeedWords.Foot(stationery, group)], AboveFoot) { Name = title };
        var sides = Binder.FrontsOnly(stationery, code, body, stationery.SidewaysDesign(code, head));
        var named = stationery.Language.Say($"Feed chart: {group.Name}{where}");
        return new Sheet(KindWord, code, named, SheetUse.Pinned, sides) { Parts = [SheetPart.AllOf(code, named, sides)] };
    }

    /// <summary>What head, foot words and control line leave for the table, in points.</summary>
    private static double RoomForTable(Stationery stationery, Element head, Element foot)
    {
        var body = stationery.SidewaysBody;
        return body.Height - Heights.Of(head, body.Width, stationery) - Heights.Of(foot, body.Width, stationery)
            - Heights.Of(stationery.ControlLine("FEED", body.Width), body.Width, stationery) - (2 * Stationery.SidewaysGap) - AboveFoot - 1;
    }
}
