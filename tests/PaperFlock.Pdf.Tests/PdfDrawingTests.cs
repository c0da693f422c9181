using PaperFlock.Layout;
using PaperFlock.Layout.Pieces;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Graphics;
using UglyToad.PdfPig.Graphics.Colors;

namespace PaperFlock.Pdf.Tests;

/// <summary>Shapes as PdfPig sees them, against the items that went in.</summary>
public sealed class PdfDrawingTests
{
    [Fact]
    public void Lines_are_strokes_of_their_thickness()
    {
        var path = Only(new LineItem(72.25, 100.5, 300.75, 100.5, 0.35));
        Assert.True(path.IsStroked);
        Assert.False(path.IsFilled);
        Assert.Equal(0.35, (double)path.LineWidth, 1e-4);
        AssertBox(path, 72.25, 100.5, 228.5, 0);
    }

    [Fact]
    public void Lines_end_where_they_end()
    {
        using var pdf = PdfDocument.Open(Sample.Print(new LineItem(72, 100, 300, 100, 4)));
        // LC 0 is a butt end, and all lines of a width are to look alike (ISO 32000-1, Table 58, from memory).
        var states = Assert.IsType<UglyToad.PdfPig.Tokens.DictionaryToken>(pdf.InPage(1, "Resources", "ExtGState"));
        var state = Assert.Single(states.Data.Values);
        Assert.Equal(0, Assert.IsType<UglyToad.PdfPig.Tokens.NumericToken>(pdf.Find(state, "LC")).Int);
        Assert.Equal(UglyToad.PdfPig.Tokens.BooleanToken.True, pdf.Find(state, "SA"));
        Assert.Single(pdf.GetPage(1).Operations, operation => operation.Operator == "gs");
    }

    [Theory]
    [InlineData(1.5, true)]
    [InlineData(0, false)]
    public void Rectangles_are_outlined_or_filled(double thickness, bool stroked)
    {
        var path = Only(new RectItem(50, 60, 70, 80, thickness));
        Assert.Equal(stroked, path.IsStroked);
        Assert.Equal(!stroked, path.IsFilled);
        AssertBox(path, 50, 60, 70, 80);
    }

    [Theory]
    [InlineData(0.75)]
    [InlineData(0)]
    public void Circles_touch_their_box_and_are_four_curves(double thickness)
    {
        var path = Only(new CircleItem(100, 200, 30, thickness));
        Assert.Equal(thickness > 0, path.IsStroked);
        AssertBox(path, 70, 170, 60, 60);
        Assert.Equal(4, path[0].Commands.OfType<UglyToad.PdfPig.Core.PdfSubpath.CubicBezierCurve>().Count());
    }

    [Theory]
    [InlineData(true, 1, true)]
    [InlineData(true, 0, false)]
    [InlineData(false, 0.5, true)]
    public void Polygons_and_open_paths_keep_their_corners(bool closed, double thickness, bool stroked)
    {
        var path = Only(new PathItem([(100, 100), (140, 160), (60, 170)], closed, thickness));
        Assert.Equal(stroked, path.IsStroked);
        Assert.Equal(!stroked, path.IsFilled);
        AssertBox(path, 60, 100, 80, 70);
        if (stroked)
        {
            Assert.Equal(closed, path[0].IsClosed());
        }
    }

    [Theory]
    [InlineData(0, 210, 305, 30, 10)]
    [InlineData(1, 225, 310, 10, 30)]
    [InlineData(2, 280, 325, 30, 10)]
    [InlineData(3, 205, 380, 10, 30)]
    [InlineData(-1, 205, 380, 10, 30)]
    [InlineData(5, 225, 310, 10, 30)]
    public void A_turned_piece_turns_what_is_in_it(int quarters, double x, double y, double width, double height)
    {
        // A rectangle 30 by 10 at (10, 5) in a piece 120 by 40 placed at (200, 300); worked by hand.
        var piece = new Piece(new Size(120, 40), [new RectItem(10, 5, 30, 10, 0)]);
        AssertBox(Only(new PieceItem(200, 300, piece, quarters)), x, y, width, height);
    }

    [Fact]
    public void Pieces_nest_and_their_turns_add_up()
    {
        var inner = new Piece(new Size(40, 20), [new RectItem(0, 0, 10, 5, 0)]);
        var middle = new Piece(new Size(100, 60), [new PieceItem(30, 10, inner, 3)]);
        // Inner: turned 3, it is 20 wide and 40 high, its rectangle at (0, 30), 5 by 10; in the middle at (30, 40);
        // turned 1 the middle is 60 by 100 and (x, y) goes to (60 - y - height, x): (10, 30), 10 by 5.
        AssertBox(Only(new PieceItem(100, 200, middle, 1)), 110, 230, 10, 5);
    }

    [Fact]
    public void A_line_without_thickness_is_our_bug()
        => Assert.Throws<ArgumentOutOfRangeException>(() => Sample.Print(new LineItem(0, 0, 10, 10, 0)));

    [Fact]
    public void A_page_text_still_unresolved_is_our_bug()
        => Assert.Throws<InvalidOperationException>(() => Sample.Print(new PageTextItem(0, 10, 50, Sample.Plain, _ => "1")));

    [Fact]
    public void Everything_is_black_in_DeviceGray()
    {
        using var pdf = PdfDocument.Open(Sample.Print(Sample.Everything()));
        foreach (var page in pdf.GetPages())
        {
            // Colour operators of ISO 32000-1, Table 74 (from memory), other than g and G.
            string[] coloured = ["rg", "RG", "k", "K", "sc", "SC", "scn", "SCN", "cs", "CS", "sh", "Do", "BI"];
            Assert.DoesNotContain(page.Operations, operation => coloured.Contains(operation.Operator));
            Assert.Contains(page.Operations, operation => operation.Operator == "g");
            Assert.Contains(page.Operations, operation => operation.Operator == "G");
            Assert.All(page.Letters, letter => Assert.Equal(GrayColor.Black, letter.FillColor));
            Assert.All(page.Paths.Where(path => path.IsFilled), path => Assert.Equal(GrayColor.Black, path.FillColor));
            Assert.All(page.Paths.Where(path => path.IsStroked), path => Assert.Equal(GrayColor.Black, path.StrokeColor));
            Assert.Null(pdf.InPage(page.Number, "Group"));
        }
    }

    private static PdfPath Only(Item item)
    {
        using var pdf = PdfDocument.Open(Sample.Print(item));
        return Assert.Single(pdf.GetPage(1).Paths);
    }

    /// <summary>In the items' terms: from the top left of A4, y downwards.</summary>
    private static void AssertBox(PdfPath path, double x, double y, double width, double height)
    {
        var box = path.GetBoundingRectangle()!.Value;
        Assert.Equal(x, box.Left, 0.01);
        Assert.Equal(y, 842 - box.Top, 0.01);
        Assert.Equal(width, box.Width, 0.01);
        Assert.Equal(height, box.Height, 0.01);
    }
}
