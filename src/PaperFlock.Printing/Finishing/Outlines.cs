using System.Collections.Immutable;
using PdfSharp.Pdf;

namespace PaperFlock.Printing.Finishing;

/// <summary>12.3.3: the table of contents beside the page. Every section is seen at first, with what it holds folded away.</summary>
internal static class Outlines
{
    public static PdfDictionary Add(PdfDocument pdf, ImmutableArray<OutlineEntry> entries, ImmutableArray<PdfDictionary> pages)
    {
        var root = PdfItems.Dictionary(("/Type", new PdfName("/Outlines")));
        pdf.Internals.AddObject(root);
        AddChildren(pdf, root, entries, pages);
        root.Elements["/Count"] = new PdfInteger(entries.Length);
        return root;
    }

    private static void AddChildren(PdfDocument pdf, PdfDictionary parent, ImmutableArray<OutlineEntry> entries, ImmutableArray<PdfDictionary> pages)
    {
        PdfDictionary? previous = null;
        foreach (var entry in entries)
        {
            var item = PdfItems.Dictionary(
                ("/Title", PdfItems.Text(entry.Title)),
                ("/Parent", parent.Reference!),
                ("/Dest", PdfItems.Array(pages[entry.Page].Reference!, new PdfName("/Fit"))));
            pdf.Internals.AddObject(item);
            if (previous is null)
            {
                parent.Elements["/First"] = item.Reference;
            }
            else
            {
                previous.Elements["/Next"] = item.Reference;
                item.Elements["/Prev"] = previous.Reference;
            }

            if (!entry.Children.IsEmpty)
            {
                AddChildren(pdf, item, entry.Children, pages);
                // Negative: so many would show if it were unfolded (Table 153).
                item.Elements["/Count"] = new PdfInteger(-entry.Children.Length);
            }

            previous = item;
        }

        parent.Elements["/Last"] = previous!.Reference;
    }
}
