using NodaTime;
using PaperFlock.Pdf;
using PaperFlock.Sheets.Issues;
using PaperFlock.Sheets.Swap;

namespace PaperFlock.Sheets.Tests.Issues;

/// <summary>Paper that stays in the pack: a ewe that goes is struck through on it.</summary>
public sealed class StrikesTests
{
    private static readonly LocalDate Day = new(2026, 12, 1);

    [Theory]
    [InlineData("Tue 5 Sorrel \u00b7 Wed 6 Campion \u00b7 Fri 8 Bracken", "Tue 5 Sorrel \u00b7 Fri 8 Bracken", "Wed 6 Campion")]
    [InlineData("Sat 9 Scan. \u00b7 Tue 5 Sorrel", "Sat 9 Scan.", "Tue 5 Sorrel")]
    [InlineData("Tue 5 Sorrel \u00b7 Wed 6 Campion", "Tue 5 Sorrel \u00b7 Thu 7 Campion", "")]
    [InlineData("Tue 5 Sorrel", "Tue 5 Sorrel \u00b7 Wed 6 Campion", "")]
    [InlineData("Tue 5 Sorrel \u00b7 Wed 6 Campion", "Wed 6 Campion \u00b7 Tue 5 Sorrel", "")]
    public void What_is_told_no_more_is_struck_and_what_is_told_anew_is_printed(string before, string now, string struck) =>
        Assert.Equal(struck.Split('|', StringSplitOptions.RemoveEmptyEntries), Strikes.Of(RowDiff.Between([Week(before)], [Week(now)], Day)));

    /// <summary>Yarrow dies: her card comes out, and on who lambs when and on the planner she is struck through.</summary>
    [Fact]
    public void A_ewe_lost_is_struck_by_hand_where_she_stood_among_others()
    {
        var outcome = After(text => Without(text, "00105"));
        Assert.Contains(outcome.TakenOut, l => l.Leaf.Id == "CARD-00105");
        Assert.Equal(["Yarrow"], outcome["DUE 1"].Struck);
        Assert.Equal(["Sun 10 Yarrow \u2022\u2022"], outcome["WALL-28DEC 1"].Struck);
        Assert.DoesNotContain(outcome.PutIn, l => l.Leaf.Id.Split('-', ' ')[0] is "DUE" or "WALL" or "JOBS");
    }

    [Fact]
    public void A_corrected_scan_is_said_in_a_sentence()
    {
        var before = Composed.SampleText("hollin-bank");
        var at = before.IndexOf("00106", StringComparison.Ordinal);
        var scan = before.IndexOf("scan: 2", at, StringComparison.Ordinal);
        var outcome = After(text => text[..scan] + "scan: 1" + text[(scan + 7)..]);
        var plan = Composed.PlanOf(before[..scan] + "scan: 1" + before[(scan + 7)..], Day);
        Assert.Equal("Bryony now carries one, due Fri\u00a029\u00a0Jan.", LeafSentence.Of(outcome["DUE 1"], plan));
        Assert.StartsWith("Bryony now carries one, due Fri\u00a029\u00a0Jan", LeafSentence.Of(outcome["CARD-00106"], plan), StringComparison.Ordinal);
    }

    private static IssueOutcome After(Func<string, string> happens)
    {
        var text = Composed.SampleText("hollin-bank");
        var record = PackComposer.Compose(Composed.PlanOf(text, Day), FontLibrary.Measurer, PackRequest.Everything, null).Record;
        return PackComposer.Compose(Composed.PlanOf(happens(text), Day), FontLibrary.Measurer, PackRequest.Everything with { Changed = true }, record).Outcome!;
    }

    private static string Without(string text, string tag)
    {
        var from = text.LastIndexOf("  - tag:", text.IndexOf(tag, StringComparison.Ordinal), StringComparison.Ordinal);
        var to = text.IndexOf("  - tag:", from + 5, StringComparison.Ordinal);
        return text[..from] + text[to..];
    }

    private static LeafRow Week(string words) => new(RowKey.OfWeek(new(2027, 1, 4)), [new LeafCell("4 Jan"), new LeafCell(words)]);
}
