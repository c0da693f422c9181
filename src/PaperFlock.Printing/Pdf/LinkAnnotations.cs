using System.Collections.Immutable;
using PaperFlock.Printing.Painting;

namespace PaperFlock.Printing.Pdf;

/// <summary>12.5.6.5: areas that lead to another place in the document.</summary>
internal static class LinkAnnotations
{
    /// <summary>Printed along with the page (Table 165, bit 3), though a link without a border shows nothing.</summary>
    private const int Print = 4;

    /// <returns>For each page those on it.</returns>
    public static ILookup<int, Reference> Write(
        PdfFile file,
        ImmutableArray<(LinkMap.Link Link, LinkMap.Anchor Anchor)> links,
        ImmutableArray<Reference> pages,
        ImmutableArray<PrintPage> printed)
        => links.Select(lead => (lead.Link.Page, Number: Write(file, lead.Link, lead.Anchor, pages, printed))).ToLookup(written => written.Page, written => written.Number);

    private static Reference Write(PdfFile file, LinkMap.Link link, LinkMap.Anchor anchor, ImmutableArray<Reference> pages, ImmutableArray<PrintPage> printed)
    {
        // Points down from the top become points up from the foot.
        var height = printed[link.Page].Page.Paper.Height;
        var area = link.Area;
        var number = file.Next();
        var body = file.Begin(number);
        body.Add($"<</Type/Annot/Subtype/Link/Rect[{area.X} {height - area.Y - area.Height} {area.X + area.Width} {height - area.Y}]/Border[0 0 0]/F {Print}");
        body.Add($"/Dest[{pages[anchor.Page]}/XYZ {anchor.X} {printed[anchor.Page].Page.Paper.Height - anchor.Y} null]>>");
        file.End();
        return number;
    }
}
