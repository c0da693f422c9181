using System.Collections.Immutable;
using PaperFlock.Layout;
using PaperFlock.Printing.Finishing;
using PaperFlock.Printing.Painting;
using SkiaSharp;

namespace PaperFlock.Printing;

/// <summary>Pages to PDF. The same document gives the same bytes, on any thread and in any process.</summary>
public static class PdfPrinter
{
    /// <summary>
    /// A long document is painted in parts of so many pages, on all cores. Whatever the cores, the parts are the same, and so is the file: about 2 kB longer
    /// for each part, since each says which letters of the fonts it uses.
    /// </summary>
    internal const int PagesToAPart = 256;

    /// <summary>Writes the finished PDF to <paramref name="output"/>, which is left open.</summary>
    /// <exception cref="ArgumentException">There are no pages, or paper is not whole points (the PDF could not say its true size), or an outline entry leads to no page.</exception>
    /// <exception cref="InvalidOperationException">A link leads to an anchor that is nowhere in the document, or a page text was not resolved.</exception>
    public static void Print(PrintDocument document, Stream output)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(output);
        if (document.Pages.IsEmpty)
        {
            throw new ArgumentException("a document needs a page", nameof(document));
        }

        CheckOutline(document.Outline, document.Pages.Length);
        var starts = Enumerable.Range(0, (document.Pages.Length + PagesToAPart - 1) / PagesToAPart).Select(part => part * PagesToAPart);
        var parts = InOrder.Select([.. starts], start => Part(document, start));
        PdfFinisher.Finish(parts, document, output);
    }

    private static PaintedPart Part(PrintDocument document, int start)
    {
        var links = new LinkMap();
        using var painted = Paint(document, start, Math.Min(start + PagesToAPart, document.Pages.Length), links);
        using var bytes = painted.AsStream();
        return PaintedPart.Read(bytes, links);
    }

    /// <summary>The pages from one index up to another, not included, as Skia writes them.</summary>
    private static SKData Paint(PrintDocument document, int start, int end, LinkMap links)
    {
        using var painted = new SKDynamicMemoryWStream();
        // No dates, and nothing else that finishing writes itself.
        using (var pdf = SKDocument.CreatePdf(painted, new SKDocumentPdfMetadata { PdfA = false }))
        using (var painter = new PiecePainter())
        {
            for (var i = start; i < end; i++)
            {
                var page = document.Pages[i].Page;
                var canvas = pdf.BeginPage(WholePoints(page.Paper).Width, WholePoints(page.Paper).Height);
                painter.Paint(page, canvas, links, i);
                pdf.EndPage();
            }

            pdf.Close();
        }

        return painted.DetachAsData();
    }

    private static void CheckOutline(ImmutableArray<OutlineEntry> entries, int pages)
    {
        foreach (var entry in entries)
        {
            if (entry.Page < 0 || entry.Page >= pages)
            {
                throw new ArgumentException($"the outline entry \"{entry.Title}\" leads to page {entry.Page} of {pages}", nameof(entries));
            }

            CheckOutline(entry.Children, pages);
        }
    }

    private static (float Width, float Height) WholePoints(Size paper)
        => double.IsInteger(paper.Width) && double.IsInteger(paper.Height) && paper is { Width: > 0, Height: > 0 }
            ? ((float)paper.Width, (float)paper.Height)
            : throw new ArgumentException($"paper must be whole points, not {paper.Width} by {paper.Height}", nameof(paper));
}
