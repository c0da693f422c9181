using PaperFlock.Pdf.Tests;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace PaperFlock.Packs.Tests.EndToEnd;

/// <summary>The sample pack as somebody has it read out who cannot see it: by the tags alone, held against where things stand on the paper.</summary>
public sealed class ReadAloudTests
{
    private static readonly Lazy<byte[]> Pack = new(() => Made("hollin-bank.pdf", "pack", Samples.HollinBank, "--out", ".", "--as-of", "2026-11-25"));
    private static readonly Lazy<StructureNode> Tree = new(() => StructureNode.Of(Pack.Value));

    [Fact]
    public void A_feed_chart_says_what_so_many_heads_get_from_each_day()
    {
        var chart = Sheet("FEED-TWINS-1");
        Assert.Matches("^Twins, due", chart.Kids[0].Words);
        var table = Assert.Single(chart.Kids, kid => kid.Type == "Table");
        var spoken = Spoken(table).ToArray();
        // An amount is never told without the day it holds from and the heads it is for.
        Assert.Contains("Mon 23 Nov, 10: 3", spoken);
        Assert.Contains("Mon 28 Dec, 10: 4.5", spoken);
        Assert.Contains("Mon 28 Dec, fed at: first light and dusk", spoken);
        Assert.True(chart.Kids.IndexOf(table) > 1, "what is to be known first is read first");
    }

    [Fact]
    public void A_round_log_goes_round_by_round_through_the_day()
    {
        var log = Sheet("LOG-28NOV");
        Assert.StartsWith("Rounds, Sat 28", log.Kids[0].Words, StringComparison.Ordinal);
        var rows = log.Kids.First(kid => kid.Type == "Table").Kids;
        Assert.All(rows[0].Kids.Concat(rows[1].Kids), head => Assert.Equal(("TH", "column"), (head.Type, head.Scope)));
        var first = rows.Skip(2).Take(5).Select(row => row.Kids[0]).ToArray();
        Assert.All(first, head => Assert.Equal(("TH", "row"), (head.Type, head.Scope)));
        Assert.StartsWith("Sat 28 Nov", first[0].AllWords, StringComparison.Ordinal);
        Assert.Equal(["feed", "look", "look", "look"], first[1..].Select(head => head.AllWords.Split(' ')[^1]));
        var times = first[1..].Select(head => head.AllWords.Split(' ')[0]).ToArray();
        Assert.Equal(times.Order(StringComparer.Ordinal), times);
    }

    [Fact]
    public void A_card_is_read_front_and_back_in_one_go()
    {
        var card = Tree.Value.Kids.Single(section => section.Kids is [{ Type: "H1", Words: "Sorrel" }, ..]);
        InOrder(card.AllWords, "Sorrel", "ZZ 0123456 00103", "due", "9 in 10 between", "teeth", "sound", "weight", "70 kg", "Sorrel", "lambed, day", "sucked", "use her again?");
        Assert.Equal(2, card.AllLetters.Select(letter => letter.Page).Distinct().Count());
        Assert.DoesNotContain("issue 1", card.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_sheet_but_blank_backs_begins_with_its_heading() => Assert.All(
        Tree.Value.Kids.Where(section => section.Type == "Sect" && !section.AllWords.EndsWith("left blank on purpose.", StringComparison.Ordinal)),
        section => Assert.Equal("H1", section.Kids[0].Type));

    /// <summary>Rows are read from the top and cells from the left, as they stand between the rules; what is read as the head of a column stands over it.</summary>
    [Fact]
    public void Every_table_is_read_as_it_stands()
    {
        var tables = Tree.Value.All.Where(node => node.Type == "Table").ToArray();
        Assert.InRange(tables.Length, 100, 1000);
        foreach (var table in tables)
        {
            foreach (var page in table.AllLetters.Select(letter => letter.Page).Distinct())
            {
                double? below = null;
                foreach (var row in table.Kids)
                {
                    var cells = row.Kids.Select(cell => Box(cell, page)).Where(box => box is not null).Select(box => box!.Value).ToArray();
                    Assert.All(cells.Zip(cells.Skip(1)), pair => Assert.True(pair.First.Right <= pair.Second.Left + 0.5, row.ToString()));
                    if (cells.Length > 0)
                    {
                        Assert.True(below is null || cells.Max(box => box.Top) <= below + 0.5, table.ToString());
                        below = cells.Min(box => box.Bottom);
                    }
                }
            }
        }
    }

    /// <summary>Whatever is printed is read out, but for the foot of a page, and for what stands at its head because it stood on the page before.</summary>
    [Fact]
    public void All_that_is_printed_is_read()
    {
        var read = Tree.Value.AllLetters.ToLookup(letter => letter.Page, letter => letter.Letter.TextSequence);
        using var pdf = PdfDocument.Open(Pack.Value);
        // Of the two pages before: one of them may be a blank back.
        var before = new Queue<HashSet<string>>([[], []]);
        foreach (var page in pdf.GetPages())
        {
            var runs = page.Letters.GroupBy(letter => letter.TextSequence).ToDictionary(run => run.Key, run => string.Concat(run.Select(letter => letter.Value)).Trim());
            var known = read[page.Number].ToHashSet();
            // The control line of a page, and those of the four cards on a leaf.
            var unread = page.Letters.Where(letter => letter.PointSize is not (8.5 or 7.5) && !known.Contains(letter.TextSequence)).Select(letter => runs[letter.TextSequence]).Where(text => text.Length > 0);
            Assert.All(unread.Distinct(), text => Assert.True(before.Any(texts => texts.Contains(text)), string.Create(CultureInfo.InvariantCulture, $"page {page.Number}: {text}")));
            before.Enqueue([.. runs.Values]);
            before.Dequeue();
        }
    }

    private static StructureNode Sheet(string code) => Tree.Value.Kids.First(section => section.Kids.Length > 1 && section.Kids[1].Words == code);

    /// <summary>Each cell that says something, with the heads of its row and its column.</summary>
    private static IEnumerable<string> Spoken(StructureNode table)
    {
        var heads = table.Kids[0].Kids.Select(head => head.AllWords).ToArray();
        return table.Kids.Skip(1).SelectMany(row => row.Kids.Index()
            .Where(cell => cell.Item is { Type: "TD", AllWords.Length: > 0 })
            .Select(cell => $"{row.Kids.First(kid => kid.Type == "TH").AllWords}, {heads[cell.Index]}: {cell.Item.AllWords}"));
    }

    private static (double Left, double Right, double Top, double Bottom)? Box(StructureNode node, int page)
    {
        Letter[] letters = [.. node.AllLetters.Where(letter => letter.Page == page && !string.IsNullOrWhiteSpace(letter.Letter.Value)).Select(letter => letter.Letter)];
        return letters.Length == 0 ? null : (letters.Min(l => l.StartBaseLine.X), letters.Max(l => l.EndBaseLine.X), letters.Max(l => l.StartBaseLine.Y), letters.Min(l => l.StartBaseLine.Y));
    }

    private static void InOrder(string text, params ReadOnlySpan<string> phrases)
    {
        var from = 0;
        foreach (var phrase in phrases)
        {
            var at = text.IndexOf(phrase, from, StringComparison.Ordinal);
            Assert.True(at >= 0, $"“{phrase}” is not read after “{text[..from]}”");
            from = at + phrase.Length;
        }
    }

    private static byte[] Made(string name, params string[] arguments)
    {
        using var bench = new Workbench();
        var outcome = bench.Run(arguments);
        Assert.True(outcome.Status == PaperFlock.Cli.ExitStatus.Clean, outcome.Error);
        return File.ReadAllBytes(bench.PathOf(name));
    }
}
