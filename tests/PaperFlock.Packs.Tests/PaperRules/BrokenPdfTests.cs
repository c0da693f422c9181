using PaperFlock.Layout;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;
using PaperFlock.Sheets.Tests.PaperRules;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Fonts.Standard14Fonts;
using UglyToad.PdfPig.Writer;

namespace PaperFlock.Packs.Tests.PaperRules;

/// <summary>Each rule is broken on purpose on a page that is then printed, and must be caught in what is read back.</summary>
public sealed class BrokenPdfTests
{
    private static readonly PrintedPack Good = PrintedPack.HollinBank;

    public static TheoryData<int> SideCases => [.. Enumerable.Range(0, Spoils.Sides.Length)];

    [Theory]
    [MemberData(nameof(SideCases))]
    public void A_page_printed_amiss_is_caught(int index)
    {
        var (name, code, spoil) = Spoils.Sides[index];
        var rule = Rules.OfASide.Single(r => r.Name.StartsWith(name, StringComparison.Ordinal));
        var good = Good.InHand.Sides.First(s => s.Sheet.Code == code);
        var bad = good.Inked(PrintedPack.ReadAlone(spoil(good.Side.Page)).Ink);

        Assert.Empty(rule.Broken(good));
        Assert.NotEmpty(rule.Broken(bad));
    }

    public static TheoryData<int> PackCases => [.. Enumerable.Range(0, Spoils.Packs.Length)];

    [Theory]
    [MemberData(nameof(PackCases))]
    public void A_pack_printed_amiss_is_caught(int index)
    {
        var (name, spoil) = Spoils.Packs[index];
        var rule = Rules.OfAPack.Single(r => r.Name.StartsWith(name, StringComparison.Ordinal));
        var spoilt = spoil(Good.InHand.Pack);
        var read = new Dictionary<Page, PageInk>(ReferenceEqualityComparer.Instance);
        foreach (var side in Good.InHand.Sides)
        {
            read[side.Side.Page] = side.Printed;
        }

        // Only the pages that were spoilt are printed again.
        var bad = PackInHand.Of(Good.InHand.Plan, spoilt, (_, side) => read.TryGetValue(side.Page, out var ink) ? ink : PrintedPack.ReadAlone(side.Page).Ink);

        Assert.Empty(rule.Broken(Good.InHand));
        Assert.NotEmpty(rule.Broken(bad));
    }

    /// <summary>What is done to a side, and the beginning of the rule of the file that must notice.</summary>
    private static readonly (string Rule, string Code, Func<PdfSide, PdfSide> Spoil)[] Files =
    [
        ("A page is called by its page code", "JOBS", s => s with { Label = "JOBS 99" }),
        ("A page is called by its page code", "JOBS", s => s with { Label = "1" }),
        ("The paper is as large", "JOBS", s => s with { Page = PrintedPack.ReadAlone(s.Side.Side.Page with { Paper = new Size(612, 792) }) }),
        ("Everything is opaque black", "JOBS", s => s with { Page = Foreign(page => page.SetTextAndFillColor(200, 0, 0)) }),
        ("Everything is opaque black", "JOBS", s => s with { Page = Foreign(page => page.SetStrokeColor(0, 0, 0)) }),
        ("Every font is in the file", "JOBS", s => s with { Page = Foreign(_ => { }) }),
        ("Every text can be read back", "JOBS", s => s with { Page = PrintedPack.ReadAlone(Without(s.Side.Side.Page, 3)) }),
        ("Every text can be read back", "JOBS", s => s with { Page = PrintedPack.ReadAlone(Added(s.Side.Side.Page, "more", 12, 300, 700)) }),
        ("No capital or figure lower", "JOBS", s => s with { Page = PrintedPack.ReadAlone(Added(s.Side.Side.Page, "H", 8.7, 300, 700)) }),
        ("No outline of a letter touches one", "JOBS", s => s with { Page = PrintedPack.ReadAlone(Added(Added(s.Side.Side.Page, "gg", 12, 300, 700), "Hd", 12, 300, 709.5)) }),
        ("No outline of a letter touches a line", "JOBS", s => s with { Page = PrintedPack.ReadAlone(Ruled(Added(s.Side.Side.Page, "gg", 12, 300, 700), 702)) }),
    ];

    public static TheoryData<int> FileCases => [.. Enumerable.Range(0, Files.Length)];

    [Theory]
    [MemberData(nameof(FileCases))]
    public void A_file_made_amiss_is_caught(int index)
    {
        var (name, code, spoil) = Files[index];
        var rule = PdfRules.OfAPage.Single(r => r.Name.StartsWith(name, StringComparison.Ordinal));
        var good = Good.Sides.First(s => s.Side.Sheet.Code == code);

        Assert.Empty(rule.Broken(good));
        Assert.NotEmpty(rule.Broken(spoil(good)));
    }

    [Fact]
    public void An_outline_that_leads_astray_is_caught()
    {
        Assert.Empty(PdfRules.OutlineAstray(Good));
        foreach (var line in Good.Outline)
        {
            var astray = Good with { Outline = Good.Outline.Replace(line, line with { Page = (line.Page + 2) % Good.Sides.Length }) };
            Assert.NotEmpty(PdfRules.OutlineAstray(astray));
        }

        Assert.NotEmpty(PdfRules.OutlineAstray(Good with { Outline = Good.Outline.RemoveAt(0) }));
    }

    [Fact]
    public void Every_rule_of_the_file_is_broken_by_some_case() =>
        Assert.DoesNotContain(PdfRules.OfAPage, r => !Files.Any(f => r.Name.StartsWith(f.Rule, StringComparison.Ordinal)));

    [Fact]
    public void Every_rule_of_the_file_names_its_source() => Assert.All(PdfRules.OfAPage, r => Assert.NotEmpty(r.Source));

    private static Page Without(Page page, int text)
    {
        var items = page.Content.Flatten().Items;
        return page with { Content = new Piece(page.Paper, items.Remove(items.OfType<TextItem>().ElementAt(text))) };
    }

    private static Page Added(Page page, string word, double size, double x, double baseline) =>
        page with { Content = new Piece(page.Paper, [.. page.Content.Items, new TextItem(x, baseline, word, new TextStyle(Face.Text, size), 20)]) };

    private static Page Ruled(Page page, double y) => page with { Content = new Piece(page.Paper, [.. page.Content.Items, new LineItem(295, y, 330, y, 0.5)]) };

    /// <summary>A page of another maker: one word and one line, in a font the file only names.</summary>
    private static ReadPage Foreign(Action<PdfPageBuilder> colour)
    {
        using var builder = new PdfDocumentBuilder();
        var page = builder.AddPage(595, 842);
        colour(page);
        page.AddText("Ewe", 12, new PdfPoint(100, 700), builder.AddStandard14Font(Standard14Font.Helvetica));
        page.DrawLine(new PdfPoint(100, 600), new PdfPoint(200, 600));
        using var pdf = PdfDocument.Open(builder.Build());
        return PdfPageReader.Read(pdf, pdf.GetPage(1));
    }
}
