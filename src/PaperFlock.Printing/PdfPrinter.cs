using System.Collections.Immutable;
using PaperFlock.Layout;
using PaperFlock.Printing.Pdf;

namespace PaperFlock.Printing;

/// <summary>Pages to PDF. The same document gives the same bytes, on any thread and in any process.</summary>
public static class PdfPrinter
{
    /// <summary>So many pages are painted by one core before it takes the next. The file is the same whoever paints which.</summary>
    internal const int PagesToAPart = 16;

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
        foreach (var printed in document.Pages)
        {
            CheckPaper(printed.Page.Paper);
        }

        var pages = document.Pages.Length;
        var starts = Enumerable.Range(0, (pages + PagesToAPart - 1) / PagesToAPart).Select(part => part * PagesToAPart).ToList();
        var parts = InOrder.Select(starts, start => PaintedPages.Paint(document, start, Math.Min(pages, start + PagesToAPart)));
        DocumentWriter.Write(document, PaintedPages.Join(parts), output);
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

    private static void CheckPaper(Size paper)
    {
        if (!double.IsInteger(paper.Width) || !double.IsInteger(paper.Height) || paper is not { Width: > 0, Height: > 0 })
        {
            throw new ArgumentException($"paper must be whole points, not {paper.Width} by {paper.Height}", nameof(paper));
        }
    }
}
