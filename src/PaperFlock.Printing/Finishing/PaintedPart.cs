using System.Collections.Immutable;
using PaperFlock.Printing.Painting;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;
using PdfSharp.Pdf.IO;

namespace PaperFlock.Printing.Finishing;

/// <summary>Pages that follow each other, as they were painted but in pure black.</summary>
/// <param name="Pdf">What holds the objects of the pages.</param>
/// <param name="Links">Met on the pages; page numbers are those of the whole document.</param>
internal sealed record PaintedPart(PdfDocument Pdf, ImmutableArray<PdfDictionary> Pages, LinkMap Links) : IDisposable
{
    public PdfDictionary PageTree => Pdf.Internals.Catalog.Elements.GetDictionary("/Pages")!;

    public static PaintedPart Read(Stream painted, LinkMap links)
    {
        var pdf = PdfReader.Open(painted, PdfDocumentOpenMode.Modify);
        var pages = ImmutableArray.CreateBuilder<PdfDictionary>();
        Collect(pdf.Internals.Catalog.Elements.GetDictionary("/Pages")!, pages);
        var contents = pages.Select(page => page.Elements.GetDictionary("/Contents")!).ToArray();
        Parallel.ForEach(contents, () => new GrayContent(), Rewrite, own => own.Dispose());
        return new PaintedPart(pdf, pages.ToImmutable(), links);
    }

    public void Dispose() => Pdf.Dispose();

    private static GrayContent Rewrite(PdfDictionary contents, ParallelLoopState loop, GrayContent own)
    {
        own.Rewrite(contents);
        return own;
    }

    // Read from the tree itself: the library's own list of pages rewrites them as it goes.
    private static void Collect(PdfDictionary node, ImmutableArray<PdfDictionary>.Builder pages)
    {
        if (node.Elements.GetArray("/Kids") is not { } kids)
        {
            pages.Add(node);
            return;
        }

        foreach (var kid in kids.Elements)
        {
            Collect((PdfDictionary)((PdfReference)kid).Value, pages);
        }
    }
}
