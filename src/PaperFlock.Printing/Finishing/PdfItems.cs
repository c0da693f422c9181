using PdfSharp.Pdf;

namespace PaperFlock.Printing.Finishing;

/// <summary>Short ways to make the objects of a PDF.</summary>
internal static class PdfItems
{
    public static PdfDictionary Dictionary(params ReadOnlySpan<(string Key, PdfItem Value)> entries)
    {
        var dictionary = new PdfDictionary();
        foreach (var (key, value) in entries)
        {
            dictionary.Elements[key] = value;
        }

        return dictionary;
    }

    public static PdfArray Array(params ReadOnlySpan<PdfItem> items)
    {
        var array = new PdfArray();
        foreach (var item in items)
        {
            array.Elements.Add(item);
        }

        return array;
    }

    public static PdfArray Numbers(params ReadOnlySpan<double> values)
    {
        var array = new PdfArray();
        foreach (var value in values)
        {
            array.Elements.Add(new PdfReal(value));
        }

        return array;
    }

    public static PdfString Text(string text) => new(text, PdfStringEncoding.Unicode);
}
