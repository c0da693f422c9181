using System.Collections.Immutable;
using PdfSharp.Pdf;

namespace PaperFlock.Printing.Finishing;

/// <summary>12.4.2: a label for each page that is its page code and no number besides, so it has a prefix and no style.</summary>
internal static class PageLabels
{
    public static PdfDictionary Of(ImmutableArray<PrintPage> pages)
    {
        var numbers = new PdfArray();
        for (var i = 0; i < pages.Length; i++)
        {
            numbers.Elements.Add(new PdfInteger(i));
            numbers.Elements.Add(PdfItems.Dictionary(("/P", PdfItems.Text(pages[i].Label))));
        }

        return PdfItems.Dictionary(("/Nums", numbers));
    }
}
