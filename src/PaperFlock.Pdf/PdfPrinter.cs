using PaperFlock.Layout.Painting;
using PaperFlock.Pdf.Painting;
using PaperFlock.Pdf.Writing;

namespace PaperFlock.Pdf;

/// <summary>Pages to a tagged PDF that says it is PDF/UA-1 (ISO 14289-1), and is. The same document gives the same bytes, on any thread and in any process.</summary>
public static class PdfPrinter
{
    /// <summary>Writes the finished PDF to <paramref name="output"/>, which is left open.</summary>
    /// <param name="printed">Told how many pages are painted, after each.</param>
    /// <exception cref="ArgumentException">There are no pages, or paper is not whole points (the PDF could not say its true size), or an outline entry leads to no page.</exception>
    /// <exception cref="PdfFaultException">Something for which the PDF would lie about itself.</exception>
    /// <exception cref="InvalidOperationException">A page text was not resolved.</exception>
    public static void Print(PrintDocument document, Stream output, Action<int>? printed = null)
    {
        if (document.Pages.IsEmpty)
        {
            throw new ArgumentException("a document needs a page", nameof(document));
        }

        CheckOutline(document.Outline, document.Pages.Length);
        foreach (var page in document.Pages)
        {
            CheckPaper(page.Page.Paper);
        }

        var canvas = new ContentCanvas();
        var contents = ImmutableArray.CreateBuilder<byte[]>(document.Pages.Length);
        foreach (var page in document.Pages)
        {
            canvas.BeginPage(page.Page.Paper.Height);
            PiecePainter.Paint(page.Page, canvas);
            contents.Add(Flate.Compress(canvas.EndPage()));
            printed?.Invoke(contents.Count);
        }

        canvas.Tree.Simplify();
        var faults = Conformance.FaultsOf(document, canvas);
        if (!faults.IsEmpty)
        {
            throw new PdfFaultException(faults);
        }

        new DocumentWriter(document, output).Write(contents.MoveToImmutable(), canvas);
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
