using System.Collections.Immutable;
using PaperFlock.Printing.Painting;
using PdfSharp.Pdf;

namespace PaperFlock.Printing.Finishing;

/// <summary>Gives a painted PDF what Skia cannot write: names for its pages, a table of contents, links, how to print it, and pure black.</summary>
/// <remarks>Section and table numbers are those of ISO 32000-1:2008, from memory.</remarks>
internal static class PdfFinisher
{
    public static void Finish(ImmutableArray<PaintedPart> parts, PrintDocument document, Stream output)
    {
        try
        {
            ImmutableArray<PdfDictionary> pages = [.. parts.SelectMany(p => p.Pages)];
            for (var i = 0; i < pages.Length; i++)
            {
                FinishPage(pages[i], document.Pages[i]);
            }

            var (pdf, links) = (parts[0].Pdf, new LinkMap());
            foreach (var part in parts)
            {
                links.Add(part.Links);
            }

            var catalog = PartJoiner.Join(parts);
            LinkAnnotations.Add(pdf, links, pages, document.Pages);
            FinishCatalog(pdf, pages, document);
            PdfFileWriter.Write(catalog, Information(document), output);
        }
        finally
        {
            foreach (var part in parts)
            {
                part.Dispose();
            }
        }
    }

    private static void FinishPage(PdfDictionary page, PrintPage printed)
    {
        var paper = printed.Page.Paper;
        var trim = printed.Trim ?? new TrimBox(0, 0, paper.Width, paper.Height);
        // 14.11.2: boxes are measured from the lower left corner. Nothing bleeds, so both are the finished size.
        double[] box = [trim.X, paper.Height - trim.Y - trim.Height, trim.X + trim.Width, paper.Height - trim.Y];
        page.Elements["/TrimBox"] = PdfItems.Numbers(box);
        page.Elements["/BleedBox"] = PdfItems.Numbers(box);
        // Skia asks for tabbing in the order of a structure tree that it does not write.
        page.Elements.Remove("/Tabs");
    }

    private static void FinishCatalog(PdfDocument pdf, ImmutableArray<PdfDictionary> pages, PrintDocument document)
    {
        var catalog = pdf.Internals.Catalog.Elements;
        catalog["/Lang"] = PdfItems.Text(document.Language);
        catalog["/PageLabels"] = PageLabels.Of(document.Pages);
        catalog["/ViewerPreferences"] = ViewerPreferences(document.Duplex);
        if (!document.Outline.IsEmpty)
        {
            catalog["/Outlines"] = Outlines.Add(pdf, document.Outline, pages).Reference;
            catalog["/PageMode"] = new PdfName("/UseOutlines");
        }
    }

    // 12.2, Table 150. Enforce is from ISO 32000-2; older readers pass over it.
    private static PdfDictionary ViewerPreferences(DuplexHint duplex) => PdfItems.Dictionary(
        ("/PrintScaling", new PdfName("/None")),
        ("/Enforce", PdfItems.Array(new PdfName("/PrintScaling"))),
        ("/Duplex", new PdfName(duplex switch
        {
            DuplexHint.LongEdge => "/DuplexFlipLongEdge",
            DuplexHint.ShortEdge => "/DuplexFlipShortEdge",
            _ => "/Simplex",
        })),
        ("/PickTrayByPDFSize", new PdfBoolean(true)),
        ("/DisplayDocTitle", new PdfBoolean(true)));

    // 14.3.3, Table 317, without the dates: they would differ each time the same flock is printed.
    private static PdfDictionary Information(PrintDocument document)
    {
        var information = PdfItems.Dictionary(
            ("/Title", PdfItems.Text(document.Title)),
            ("/Creator", PdfItems.Text("PaperFlock")),
            ("/Producer", PdfItems.Text("PaperFlock")));
        if (document.Author is { } author)
        {
            information.Elements["/Author"] = PdfItems.Text(author);
        }

        return information;
    }
}
