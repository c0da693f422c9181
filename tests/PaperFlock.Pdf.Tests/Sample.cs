using PaperFlock.Layout;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;
using PaperFlock.Layout.Structure;

namespace PaperFlock.Pdf.Tests;

/// <summary>Small pages made by hand, item by item.</summary>
internal static class Sample
{
    public static TextStyle Plain { get; } = new(Face.Text, 12);

    public static TextItem Text(double x, double baseline, string text, TextStyle? style = null)
        => new(x, baseline, text, style ?? Plain, FontLibrary.Measurer.WidthOf(text, style ?? Plain));

    /// <summary>A4 upright in whole points, to be read out as one paragraph.</summary>
    public static Page Page(params ReadOnlySpan<Item> items) => Page(595, 842, items);

    public static Page Page(double width, double height, params ReadOnlySpan<Item> items)
        => new(new Size(width, height), PageSide.Front, new PageNumber(1, 1, PageSide.Front), new Piece(new Size(width, height), [.. items]).As(StructureTag.Paragraph));

    public static PrintDocument Document(params ReadOnlySpan<Page> pages)
    {
        var printed = ImmutableArray.CreateBuilder<PrintPage>();
        foreach (var page in pages)
        {
            printed.Add(new PrintPage(page, $"CARD-{printed.Count + 1}"));
        }

        return new PrintDocument("Hollin Bank", null, "en-GB", printed.ToImmutable(), [], DuplexHint.Simplex);
    }

    /// <summary>Two pages with every kind of item on them.</summary>
    public static PrintDocument Everything()
    {
        var card = new Piece(
            new Size(120, 40),
            [new RectItem(0, 0, 120, 40, 0.5), Text(4, 16, "Turned ŵ"), new LinkItem(0, 0, 60, 20, "second", "to the second page"), new CircleItem(100, 30, 5, 0)]);
        var first = Page(
            842,
            595,
            Text(72, 100, "Round log, Mon 12 Jan"),
            Text(72, 140, "ZZ 00123", new TextStyle(Face.MonoBold, 27.3)),
            Text(300, 140, "Bold", new TextStyle(Face.TextBold, 20)),
            Text(400, 140, "O0Il1", new TextStyle(Face.Mono, 9.37)),
            new LineItem(72, 160, 200, 160, 0.5),
            new RectItem(72, 180, 40, 40, 1),
            new RectItem(150, 180, 40, 40, 0),
            new CircleItem(300, 200, 20, 0.75),
            new PathItem([(400, 180), (420, 220), (380, 220)], true, 1),
            new PathItem([(450, 180), (470, 220), (430, 220)], true, 0),
            new PathItem([(480, 180), (500, 220), (520, 180)], false, 0.5),
            new AnchorItem(72, 90, "first"),
            new PieceItem(72, 260, card),
            new PieceItem(232, 260, card, 1),
            new PieceItem(392, 260, card, 2),
            new PieceItem(552, 260, card, 3));
        var second = Page(Text(50, 50, "Second"), new AnchorItem(50, 40, "second"), new LinkItem(50, 40, 50, 20, "first", "to the first page"));
        return Document(first, second) with
        {
            Author = "Hollin Bank – kitchen",
            Outline = [new OutlineEntry("Register", 0, [new OutlineEntry("Ewe ŵ", 1, [])]), new OutlineEntry("Cards", 1, [])],
        };
    }

    public static byte[] Print(PrintDocument document)
    {
        using var output = new MemoryStream();
        PdfPrinter.Print(document, output);
        return output.ToArray();
    }

    public static byte[] Print(params ReadOnlySpan<Item> items) => Print(Document(Page(items)));
}
