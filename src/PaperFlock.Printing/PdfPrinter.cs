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
    /// A document of more pages is painted in parts of equal length, none of more than so many pages, on all cores. Whatever the cores, the parts are the same,
    /// and so is the file: about 2 kB longer for each part, since each says which letters of the fonts it uses.
    /// </summary>
    /// <remarks>A part costs the compressing of the fonts, as much as painting ten pages does. The pack of a small flock is two parts.</remarks>
    internal const int PagesToAPart = 96;

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
        var pages = document.Pages.Length;
        var count = (pages + PagesToAPart - 1) / PagesToAPart;
        var parts = InOrder.Select([.. Enumerable.Range(0, count)], part => Part(document, pages * part / count, pages * (part + 1) / count));
        PdfFinisher.Finish(parts, document, output);
    }

    /// <summary>The pages from one index up to another, not included.</summary>
    private static PaintedPart Part(PrintDocument document, int start, int end)
    {
        var links = new LinkMap();
        using var painted = Paint(document, start, end, links);
        using var bytes = painted.AsStream();
        return PaintedPart.Read(bytes, links);
    }

    /// <summary>As Skia writes them.</summary>
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
