using System.Collections.Immutable;
using PaperFlock.Printing.Painting;
using PdfSharp.Pdf;

namespace PaperFlock.Printing.Finishing;

/// <summary>12.5.6.5: areas that lead to another place in the document.</summary>
/// <remarks>Written here and not by Skia, which garbles a name with a letter beyond ASCII and says nothing of a name that leads nowhere.</remarks>
internal static class LinkAnnotations
{
    /// <summary>Printed along with the page (Table 165, bit 3), though a link without a border shows nothing.</summary>
    private const int Print = 4;

    public static void Add(PdfDocument pdf, LinkMap links, ImmutableArray<PdfDictionary> pages, ImmutableArray<PrintPage> printed)
    {
        foreach (var group in links.Links.GroupBy(link => link.Page))
        {
            var annotations = new PdfArray();
            foreach (var link in group)
            {
                var annotation = Annotation(link, links.Find(link.Target), pages, printed);
                pdf.Internals.AddObject(annotation);
                annotations.Elements.Add(annotation.Reference!);
            }

            pages[group.Key].Elements["/Annots"] = annotations;
        }
    }

    private static PdfDictionary Annotation(LinkMap.Link link, LinkMap.Anchor anchor, ImmutableArray<PdfDictionary> pages, ImmutableArray<PrintPage> printed)
    {
        // Points down from the top become points up from the foot.
        var height = printed[link.Page].Page.Paper.Height;
        var area = link.Area;
        return PdfItems.Dictionary(
            ("/Type", new PdfName("/Annot")),
            ("/Subtype", new PdfName("/Link")),
            ("/Rect", PdfItems.Numbers(area.X, height - area.Y - area.Height, area.X + area.Width, height - area.Y)),
            ("/Border", PdfItems.Numbers(0, 0, 0)),
            ("/F", new PdfInteger(Print)),
            ("/Dest", PdfItems.Array(
                pages[anchor.Page].Reference!,
                new PdfName("/XYZ"),
                new PdfReal(anchor.X),
                new PdfReal(printed[anchor.Page].Page.Paper.Height - anchor.Y),
                PdfNull.Value)));
    }
}
