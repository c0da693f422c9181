using System.Collections.Immutable;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;

namespace PaperFlock.Printing.Finishing;

/// <summary>Makes the parts of a document one: a tree of pages over those of the parts, and each font file in it once.</summary>
/// <remarks>A part says itself which letters of a font it uses and how wide they are; the outlines, which are nearly all of a font, it shares.</remarks>
internal static class PartJoiner
{
    /// <returns>The catalog of the whole, which is that of the first part.</returns>
    public static PdfDictionary Join(ImmutableArray<PaintedPart> parts)
    {
        var catalog = parts[0].Pdf.Internals.Catalog;
        if (parts.Length == 1)
        {
            return catalog;
        }

        var kids = new PdfArray();
        var pages = PdfItems.Dictionary(
            ("/Type", new PdfName("/Pages")), ("/Count", new PdfInteger(parts.Sum(p => p.Pages.Length))), ("/Kids", kids));
        parts[0].Pdf.Internals.AddObject(pages);
        foreach (var part in parts)
        {
            var tree = part.PageTree;
            tree.Elements["/Parent"] = pages.Reference;
            kids.Elements.Add(tree.Reference!);
        }

        ShareFontFiles(parts);
        catalog.Elements["/Pages"] = pages.Reference;
        return catalog;
    }

    private static void ShareFontFiles(ImmutableArray<PaintedPart> parts)
    {
        var files = new List<PdfDictionary>();
        foreach (var descriptor in parts.SelectMany(part => part.Pages.SelectMany(Descriptors).Distinct()))
        {
            var file = descriptor.Elements.GetDictionary("/FontFile2")!;
            var same = files.Find(f => f.Stream!.Value.AsSpan().SequenceEqual(file.Stream!.Value));
            if (same is null)
            {
                files.Add(file);
            }
            else
            {
                descriptor.Elements["/FontFile2"] = same.Reference;
            }
        }
    }

    /// <summary>Of the fonts a page may use.</summary>
    private static IEnumerable<PdfDictionary> Descriptors(PdfDictionary page)
    {
        var fonts = page.Elements.GetDictionary("/Resources")?.Elements.GetDictionary("/Font");
        return (fonts?.Elements.Values ?? []).Select(font =>
        {
            var composite = (PdfDictionary)((PdfReference)font!).Value;
            return composite.Elements.GetArray("/DescendantFonts")!.Elements.GetDictionary(0)!.Elements.GetDictionary("/FontDescriptor")!;
        });
    }
}
