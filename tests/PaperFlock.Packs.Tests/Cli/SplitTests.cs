using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>A PDF for each way of printing.</summary>
public sealed class SplitTests
{
    private const string Blank = "left blank on purpose";

    /// <summary>The values of <c>/Duplex</c> are those of ISO 32000-1, table 150.</summary>
    public static TheoryData<string, string> Files => new()
    {
        { "hollin-bank-binder.pdf", "DuplexFlipLongEdge" },
        { "hollin-bank-cards.pdf", "DuplexFlipLongEdge" },
        { "hollin-bank-logs.pdf", "Simplex" },
        { "hollin-bank-pinned.pdf", "Simplex" },
        { "hollin-bank-planner.pdf", "Simplex" },
        { "hollin-bank-wall.pdf", "Simplex" },
    };

    [Fact]
    public void Each_way_of_printing_has_a_file_and_a_word_on_how_to_print_it()
    {
        using var bench = new Workbench();
        var outcome = Split(bench);
        Assert.Equal(Files.Select(f => f.Data.Item1), bench.Everything());
        foreach (var (file, duplex) in Files.Select(f => f.Data))
        {
            var advice = outcome.Out[outcome.Out.IndexOf($"To print {file}:", StringComparison.Ordinal)..].Split("\n\n")[0];
            Assert.Contains(duplex == "Simplex" ? "on one side of the paper" : "on both sides, flip on long edge", advice, StringComparison.Ordinal);
            using var pdf = new PackPdf(bench.PathOf(file));
            Assert.Equal(duplex, pdf.Duplex);
            Assert.NotEmpty(pdf.Outline);
        }
    }

    [Fact]
    public void Files_for_one_side_have_no_blank_backs_and_the_binder_has_what_it_needs()
    {
        using var bench = new Workbench();
        Split(bench);
        foreach (var (file, duplex) in Files.Select(f => f.Data))
        {
            using var pdf = new PackPdf(bench.PathOf(file));
            if (duplex == "Simplex")
            {
                Assert.DoesNotContain(Blank, pdf.Text, StringComparison.Ordinal);
            }
            else
            {
                Assert.True(pdf.Pages % 2 == 0, $"{file} has {pdf.Pages} pages: a back is missing");
            }
        }
    }

    [Fact]
    public void Together_they_hold_every_sheet_the_one_pack_holds()
    {
        using var bench = new Workbench();
        Split(bench);
        bench.Run("pack", Samples.HollinBank, "--as-of", "2026-11-25", "--out", "one");
        using var one = new PackPdf(bench.PathOf("one/hollin-bank.pdf"));
        var apart = new List<string>();
        foreach (var file in Files.Select(f => f.Data.Item1).Where(f => f != "hollin-bank-wall.pdf"))
        {
            using var pdf = new PackPdf(bench.PathOf(file));
            apart.AddRange(Codes(pdf));
        }

        // Logs on one side have a leaf to a page, so there are more of them, and they begin on other days.
        Assert.Empty(Codes(one).Where(c => !c.StartsWith("LOG-", StringComparison.Ordinal)).Except(apart, StringComparer.Ordinal));
        Assert.True(apart.Count(c => c.StartsWith("LOG-", StringComparison.Ordinal)) > Codes(one).Count(c => c.StartsWith("LOG-", StringComparison.Ordinal)));
        Assert.Equal(apart.Count, apart.Distinct(StringComparer.Ordinal).Count());

        static IEnumerable<string> Codes(PackPdf pdf) => pdf.Outline.Select(l => l.Trim().Split(' ')[0]).Where(c => c.All(x => char.IsAsciiLetterUpper(x) || char.IsAsciiDigit(x) || x == '-'));
    }

    [Fact]
    public void A_printer_of_one_side_only_has_no_blank_backs_anywhere()
    {
        using var bench = new Workbench();
        var flock = bench.Write("flock.yaml", Samples.TwoEwes + "\nprint:\n  duplex: single-sided\n");
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", flock, "--split").Status);
        foreach (var file in bench.Everything().Where(f => f.EndsWith(".pdf", StringComparison.Ordinal)))
        {
            using var pdf = new PackPdf(bench.PathOf(file));
            Assert.Equal("Simplex", pdf.Duplex);
            Assert.DoesNotContain(Blank, pdf.Text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_printer_of_one_side_only_gets_all_fronts_of_the_cards_and_then_their_backs()
    {
        using var bench = new Workbench();
        var flock = bench.Write("flock.yaml", File.ReadAllText(Samples.HollinBank).Replace("duplex: long-edge", "duplex: single-sided", StringComparison.Ordinal));
        var outcome = bench.Run("pack", flock, "--as-of", "2026-11-25", "--split", "--sheets", "cards");
        Assert.Equal(["flock-CARD-cards-backs.pdf", "flock-CARD-cards-fronts.pdf"], bench.Everything().Where(f => f.EndsWith(".pdf", StringComparison.Ordinal)));
        using var fronts = new PackPdf(bench.PathOf("flock-CARD-cards-fronts.pdf"));
        using var backs = new PackPdf(bench.PathOf("flock-CARD-cards-backs.pdf"));
        Assert.Equal(fronts.AllPages.Select(p => Cards(p.Text, "front")), backs.AllPages.Select(p => Cards(p.Text, "back")));
        Assert.Contains("on the backs of the fronts", outcome.Out, StringComparison.Ordinal);

        static string Cards(string text, string face) => string.Join(
            ' ', System.Text.RegularExpressions.Regex.Matches(text, $"CARD-\\d+(?= {face})").Select(m => m.Value).Order(StringComparer.Ordinal).DefaultIfEmpty("none"));
    }

    [Fact]
    public void A_sitters_pack_can_be_split_too()
    {
        using var bench = new Workbench();
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", Samples.HollinBank, "--out", ".", "--as-of", "2026-11-25", "--from", "2026-12-27", "--to", "2027-01-02", "--split").Status);
        Assert.Equal(
            ["binder", "cards", "logs", "pinned"],
            bench.Everything().Select(f => f["hollin-bank-27DEC-02JAN-".Length..^".pdf".Length]));
    }

    /// <summary>ISO 32000-1, 14.11.2: a page without a trim box is trimmed to its crop box, here the whole paper.</summary>
    [Fact]
    public void A_sheet_of_cards_is_trimmed_to_the_whole_of_its_paper()
    {
        using var bench = new Workbench();
        Split(bench, "--sheets", "cards");
        using var pdf = new PackPdf(bench.PathOf("hollin-bank-CARD-cards.pdf"));
        Assert.All(pdf.AllPages, page =>
        {
            var trim = (UglyToad.PdfPig.Tokens.ArrayToken)page.Dictionary.Data["TrimBox"];
            var sides = trim.Data.OfType<UglyToad.PdfPig.Tokens.NumericToken>().Select(n => n.Double);
            Assert.Equal([0, 0, page.MediaBox.Bounds.Width, page.MediaBox.Bounds.Height], sides);
        });
    }

    [Fact]
    public void The_outline_gathers_charts_logs_and_cards_below_one_entry_each()
    {
        using var bench = new Workbench();
        bench.Run("pack", Samples.HollinBank, "--out", ".", "--as-of", "2026-11-25", "--sheets", "feed,log,cards");
        using var pdf = new PackPdf(bench.PathOf("hollin-bank-FEED-LOG-CARD.pdf"));
        var top = pdf.Outline.Where(l => !l.StartsWith(' ')).ToArray();
        Assert.Equal(["Feed charts", "Round log", "CARD Ewe cards"], top.Select(l => l[..l.IndexOfAny(['@', ','])].Trim()));
        var under = pdf.Outline.SkipWhile(l => !l.StartsWith("CARD", StringComparison.Ordinal)).Skip(1).ToArray();
        // One for each ewe of the file, four to a front, a back between.
        var ewes = File.ReadLines(Samples.HollinBank).Count(l => l.StartsWith("  - tag: ", StringComparison.Ordinal));
        Assert.Equal(ewes, under.Length);
        var first = int.Parse(top[^1].Split('@')[1], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(
            Enumerable.Range(0, ewes).Select(i => first + (i / 4 * 2)),
            under.Select(l => int.Parse(l.Split('@')[1], System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Contains(pdf.Outline, l => l.StartsWith("  LOG-", StringComparison.Ordinal));
        Assert.Contains(pdf.Outline, l => l.StartsWith("  FEED-TWINS-1", StringComparison.Ordinal));
    }

    private static Outcome Split(Workbench bench, params string[] more)
    {
        var outcome = bench.Run(["pack", Samples.HollinBank, "--out", ".", "--as-of", "2026-11-25", "--split", .. more]);
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        return outcome;
    }
}
