using PaperFlock.Layout;
using PaperFlock.Layout.Pieces;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Actions;
using UglyToad.PdfPig.Annotations;
using UglyToad.PdfPig.Tokens;

namespace PaperFlock.Pdf.Tests;

public sealed class PdfLinkTests
{
    [Fact]
    public void A_link_leads_to_the_page_and_place_of_its_anchor()
    {
        var document = Sample.Document(
            Sample.Page(new LinkItem(100, 200, 60, 20, "ewe ŵ (2) #/", "a link"), new LinkItem(100, 300, 60, 20, "back", "a link")),
            Sample.Page(842, 595, new AnchorItem(40, 50, "ewe ŵ (2) #/"), new LinkItem(0, 0, 10, 10, "back", "a link")),
            Sample.Page(new AnchorItem(0, 0, "back")));
        using var pdf = PdfDocument.Open(Sample.Print(document));
        Assert.Equal([2, 3], Leads(pdf, 1));
        Assert.Equal([3], Leads(pdf, 2));
        Assert.Empty(Leads(pdf, 3));

        var link = pdf.GetPage(1).GetAnnotations().First();
        Assert.Equal(AnnotationType.Link, link.Type);
        Assert.Equal(100, link.Rectangle.Left, 0.01);
        Assert.Equal(842 - 200, link.Rectangle.Top, 0.01);
        Assert.Equal(60, link.Rectangle.Width, 0.01);
        Assert.Equal(20, link.Rectangle.Height, 0.01);
        // ISO 32000-1, Table 151 (from memory): page /XYZ left top zoom; null keeps the reader's zoom.
        var destination = Assert.IsType<ArrayToken>(pdf.Find(link.AnnotationDictionary, "Dest")).Data;
        Assert.Equal("XYZ", destination[1].Name());
        Assert.Equal(40, Assert.IsType<NumericToken>(destination[2]).Double);
        Assert.Equal(595 - 50, Assert.IsType<NumericToken>(destination[3]).Double);
        Assert.IsType<NullToken>(destination[4]);
    }

    [Fact]
    public void Links_and_anchors_in_turned_pieces_turn_with_them()
    {
        var piece = new Piece(new Size(120, 40), [new LinkItem(10, 5, 30, 10, "here", "a link"), new AnchorItem(10, 5, "here")]);
        using var pdf = PdfDocument.Open(Sample.Print(new PieceItem(200, 300, piece, 1)));
        var link = Assert.Single(pdf.GetPage(1).GetAnnotations());
        Assert.Equal((225, 842 - 340, 235, 842 - 310), (link.Rectangle.Left, link.Rectangle.Bottom, link.Rectangle.Right, link.Rectangle.Top));
        var destination = Assert.IsType<ArrayToken>(pdf.Find(link.AnnotationDictionary, "Dest")).Data;
        Assert.Equal([235, 842 - 310], destination.OfType<NumericToken>().Select(number => number.Double));
    }

    [Fact]
    public void The_first_anchor_of_a_name_is_the_one()
    {
        var document = Sample.Document(
            Sample.Page(new LinkItem(0, 0, 10, 10, "table", "a link")),
            Sample.Page(new AnchorItem(0, 0, "table")),
            Sample.Page(new AnchorItem(0, 0, "table")));
        using var pdf = PdfDocument.Open(Sample.Print(document));
        Assert.Equal([2], Leads(pdf, 1));
    }

    [Theory]
    [InlineData("Bramble")]
    [InlineData("")]
    public void A_link_to_nowhere_is_our_bug(string target)
    {
        var error = Assert.Throws<PdfFaultException>(() => Sample.Print(new LinkItem(0, 0, 10, 10, target, "a link"), new AnchorItem(0, 0, "bramble")));
        Assert.Contains($"“{target}”", error.Message, StringComparison.Ordinal);
    }

    private static int[] Leads(PdfDocument pdf, int page)
        => [.. pdf.GetPage(page).GetAnnotations().Select(link => Assert.IsType<GoToAction>(link.Action).Destination.PageNumber)];
}
