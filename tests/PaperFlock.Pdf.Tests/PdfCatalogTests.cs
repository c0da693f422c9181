using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Tokens;

namespace PaperFlock.Pdf.Tests;

/// <summary>What a PDF says about itself. Sections and tables are those of ISO 32000-1:2008, from memory.</summary>
public sealed class PdfCatalogTests
{
    [Fact]
    public void A_printer_is_told_to_print_at_full_size_on_the_paper_of_the_page()
    {
        // 12.2, Table 150; Enforce is in ISO 32000-2, Table 147.
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Everything()));
        Assert.Equal("None", pdf.InCatalog("ViewerPreferences", "PrintScaling").Name());
        Assert.Equal("PrintScaling", Assert.IsType<ArrayToken>(pdf.InCatalog("ViewerPreferences", "Enforce")).Data[0].Name());
        Assert.Equal(BooleanToken.True, pdf.InCatalog("ViewerPreferences", "PickTrayByPDFSize"));
        Assert.Equal(BooleanToken.True, pdf.InCatalog("ViewerPreferences", "DisplayDocTitle"));
    }

    [Theory]
    [InlineData(DuplexHint.Simplex, "Simplex")]
    [InlineData(DuplexHint.LongEdge, "DuplexFlipLongEdge")]
    [InlineData(DuplexHint.ShortEdge, "DuplexFlipShortEdge")]
    public void A_printer_is_told_which_edge_to_turn_over(DuplexHint hint, string name)
    {
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Document(Sample.Page()) with { Duplex = hint }));
        Assert.Equal(name, pdf.InCatalog("ViewerPreferences", "Duplex").Name());
    }

    [Fact]
    public void The_document_says_what_it_is_but_not_when_it_was_made()
    {
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Everything() with { Title = "Hollin Bank (2027) \\ ŵyn", Language = "cy" }));
        Assert.Equal(1.7, pdf.Version, 0.01);
        Assert.Equal("Hollin Bank (2027) \\ ŵyn", pdf.Information.Title);
        Assert.Equal("Hollin Bank – kitchen", pdf.Information.Author);
        Assert.Equal("PaperFlock", pdf.Information.Producer);
        Assert.Equal("PaperFlock", pdf.Information.Creator);
        Assert.Null(pdf.Information.CreationDate);
        Assert.Null(pdf.Information.ModifiedDate);
        Assert.Equal("cy", pdf.InCatalog("Lang").Text());
    }

    [Fact]
    public void Each_page_is_called_by_its_code()
    {
        // 12.4.2, Table 159: a prefix without a numbering style is the whole label.
        var document = Sample.Document(Sample.Page(), Sample.Page(), Sample.Page());
        string[] codes = ["REG", "CARD-ZZ 0412", "FEED-ŵ"];
        using var pdf = PdfDocument.Open(Sample.Print(document with { Pages = [.. document.Pages.Zip(codes, (page, code) => page with { Label = code })] }));
        var numbers = Assert.IsType<ArrayToken>(pdf.InCatalog("PageLabels", "Nums")).Data;
        Assert.Equal([0, 1, 2], numbers.OfType<NumericToken>().Select(number => number.Int));
        Assert.Equal(codes, numbers.OfType<DictionaryToken>().Select(label => pdf.Find(label, "P").Text()));
        Assert.All(numbers.OfType<DictionaryToken>(), label => Assert.Null(pdf.Find(label, "S")));
    }

    [Fact]
    public void The_outline_opens_beside_the_page_and_leads_to_pages()
    {
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Everything()));
        Assert.Equal("UseOutlines", pdf.InCatalog("PageMode").Name());
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        var found = bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Select(node => (node.Level, node.Title, node.PageNumber));
        Assert.Equal([(0, "Register", 1), (1, "Ewe ŵ", 2), (0, "Cards", 2)], found);
    }

    [Fact]
    public void The_outline_is_folded_with_true_counts()
    {
        // 12.3.3, Tables 152 and 153.
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Everything()));
        Assert.Equal(2, Assert.IsType<NumericToken>(pdf.InCatalog("Outlines", "Count")).Int);
        Assert.Equal(-1, Assert.IsType<NumericToken>(pdf.InCatalog("Outlines", "First", "Count")).Int);
        Assert.Null(pdf.InCatalog("Outlines", "Last", "Count"));
        Assert.Equal(pdf.InCatalog("Outlines", "First", "Next"), pdf.InCatalog("Outlines", "Last"));
        Assert.Equal(pdf.InCatalog("Outlines", "Last", "Prev"), pdf.InCatalog("Outlines", "First"));
    }

    [Fact]
    public void A_document_without_an_outline_shows_none()
    {
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Text(10, 10, "one")));
        Assert.Null(pdf.InCatalog("Outlines"));
        Assert.Null(pdf.InCatalog("PageMode"));
    }

    [Theory]
    [InlineData(595, 842)]
    [InlineData(842, 595)]
    [InlineData(842, 1191)]
    [InlineData(612, 792)]
    public void Paper_is_the_size_it_was_laid_out_for(int width, int height)
    {
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Document(Sample.Page(width, height))));
        Assert.Equal([0, 0, width, height], pdf.InPage(1, "MediaBox").Numbers());
        Assert.Equal([0, 0, width, height], pdf.InPage(1, "TrimBox").Numbers());
        Assert.Equal([0, 0, width, height], pdf.InPage(1, "BleedBox").Numbers());
    }

    [Fact]
    public void Many_pages_stay_in_order()
    {
        var pages = Enumerable.Range(1, 70).Select(i => Sample.Page(Sample.Text(50, 50, $"page {i}"))).ToArray();
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Document(pages)));
        Assert.Equal(70, pdf.NumberOfPages);
        Assert.All(pdf.GetPages(), page => Assert.Equal($"page {page.Number}", page.Text));
    }

    [Theory]
    [InlineData(595.28, 842)]
    [InlineData(595, 841.89)]
    [InlineData(0, 842)]
    [InlineData(595, -1)]
    [InlineData(double.NaN, 842)]
    public void Paper_that_is_not_whole_points_is_refused(double width, double height)
        => Assert.Throws<ArgumentException>(() => Sample.Print(Sample.Document(Sample.Page(width, height))));

    [Fact]
    public void A_document_without_pages_is_refused()
        => Assert.Throws<ArgumentException>(() => Sample.Print(Sample.Document()));

    [Theory]
    [InlineData(-1)]
    [InlineData(2)]
    public void An_outline_entry_must_lead_to_a_page(int page)
    {
        var nested = new OutlineEntry("Cards", 1, [new OutlineEntry("Bramble", page, [])]);
        Assert.Throws<ArgumentException>(() => Sample.Print(Sample.Everything() with { Outline = [nested] }));
    }

    [Fact]
    public void Output_is_left_open_and_untouched_when_printing_fails()
    {
        using var output = new MemoryStream();
        Assert.Throws<ArgumentException>(() => PdfPrinter.Print(Sample.Document(Sample.Page(595.28, 842)), output));
        Assert.Equal(0, output.Length);
        PdfPrinter.Print(Sample.Document(Sample.Page()), output);
        Assert.True(output.CanWrite);
    }
}
