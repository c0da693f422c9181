using PaperFlock.Pdf.Painting;

namespace PaperFlock.Pdf.Writing;

/// <summary>12.5.6.5: areas that lead to another place in the document.</summary>
internal static class LinkAnnotations
{
    /// <summary>Printed along with the page (Table 165, bit 3), though a link without a border shows nothing.</summary>
    private const int Print = 4;

    /// <returns>Each link of the document with the 0-based page it is on.</returns>
    /// <exception cref="InvalidOperationException">A link leads nowhere.</exception>
    public static ImmutableArray<(Reference Annotation, int Page)> Write(PdfFile file, Links links, ImmutableArray<Reference> pages, ImmutableArray<PrintPage> printed) =>
        [.. links.Areas.Select((link, index) => (Write(file, link, index, links.Find(link.Target) ?? throw new InvalidOperationException(link.Target), pages, printed), link.Page))];

    private static Reference Write(PdfFile file, LinkArea link, int index, AnchorPlace place, ImmutableArray<Reference> pages, ImmutableArray<PrintPage> printed)
    {
        // Points down from the top become points up from the foot.
        var height = printed[link.Page].Page.Paper.Height;
        var area = link.Area;
        var number = file.Next();
        var body = file.Begin(number);
        body.Add($"<</Type/Annot/Subtype/Link/Rect[{area.X} {height - area.Bottom} {area.Right} {height - area.Y}]/Border[0 0 0]/F {Print}");
        body.Add($"/StructParent {StructureWriter.KeyOfLink(index, pages.Length)}/Contents ");
        body.AddText(link.Says);
        body.Add($"/Dest[{pages[place.Page]}/XYZ {place.X} {printed[place.Page].Page.Paper.Height - place.Y} null]>>");
        file.End();
        return number;
    }
}
