using NodaTime;
using PaperFlock.Pdf;

namespace PaperFlock.Sheets.Tests;

/// <summary>How many sheets a pack may take, cards included, and how many backs may stay empty: our own measure of what one person will print and put in.</summary>
public sealed class PaperBudgetTests
{
    private const int MostBlankBacks = 4;

    private static readonly string[] NotYet = ["marks", "scan", "scan-stage"];

    private static string HollinBank => Composed.SampleText("hollin-bank");

    [Fact]
    public void A_flock_of_two_dozen() => Holds(Composed.HollinBank.Pack, 34);

    [Fact]
    public void A_week_with_a_sitter() => Holds(
        PackComposer.Compose(Composed.HollinBank.Plan, FontLibrary.Measurer, PackRequest.Everything with { Days = new DateInterval(new(2026, 12, 27), new(2027, 1, 2)) }), 9);

    [Fact]
    public void Two_ewes() => Holds(
        Composed.Of(
            """
            paperflock: 1
            holding: {name: Hollin Bank, location: {latitude: 54.46, longitude: -2.74}, time-zone: Europe/London}
            season: {tup-in: 2026-08-10}
            ewes:
              - {tag: ZZ 0123456 00101, name: Bracken, marks: [2026-08-14], scan: 2}
              - {tag: ZZ 0123456 00102, name: Sorrel}
            """,
            Composed.HollinBankDay).Pack,
        21);

    /// <summary>Nothing is printed before it is worth printing.</summary>
    [Fact]
    public void The_spring_before_the_tup() => Holds(
        Composed.Of(string.Join('\n', HollinBank.Split('\n').Where(line => !NotYet.Any(key => line.StartsWith($"    {key}:", StringComparison.Ordinal)))), new(2026, 5, 20)).Pack, 28);

    /// <summary>Logs, feed charts and lists grow with a flock, so that here blank backs are not counted.</summary>
    [Fact]
    public void Three_hundred_ewes() => Assert.InRange(Sheets(Composed.Of(OfEwes(300), Composed.HollinBankDay).Pack), 90, 130);

    private static void Holds(ComposedPack pack, int most)
    {
        Assert.InRange(Sheets(pack), most / 2, most);
        Assert.InRange(pack.Sheets.SelectMany(s => s.Sides).Count(IsLeftBlank), 0, MostBlankBacks);
    }

    private static int Sheets(ComposedPack pack) => pack.Sheets.Sum(s => s.Leaves);

    /// <summary>With less on it than the lines of a table: the sentence, and which back it is.</summary>
    private static bool IsLeftBlank(SheetSide side) => side.IsBlank && PaperRules.PageInk.AsPrinted(side.Page).Words.Any(w => w.Text.EndsWith("purpose.", StringComparison.Ordinal));

    /// <summary>The ewes of the sample over and over, each with a tag and a name of her own.</summary>
    private static string OfEwes(int many)
    {
        var parts = HollinBank.Split("  - tag: ZZ 0123456 ");
        var ewes = Enumerable.Range(0, many).Select(i =>
        {
            var lines = parts[1 + (i % (parts.Length - 1))].Split('\n');
            return string.Join('\n', [$"  - tag: ZZ 0123456 {101 + i:00000}", $"{lines[1]} {1 + (i / (parts.Length - 1))}", .. lines.Skip(2)]);
        });
        return parts[0] + string.Concat(ewes);
    }
}
