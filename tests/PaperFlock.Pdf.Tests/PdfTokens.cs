using UglyToad.PdfPig;
using UglyToad.PdfPig.Graphics;
using UglyToad.PdfPig.Tokens;

namespace PaperFlock.Pdf.Tests;

/// <summary>Looks into a PDF with PdfPig, a reader that shares no code with what wrote it.</summary>
internal static class PdfTokens
{
    /// <summary>Follows keys from a dictionary, through references; null where a key is absent.</summary>
    public static IToken? Find(this PdfDocument pdf, IToken from, params ReadOnlySpan<string> path)
    {
        var at = pdf.Resolve(from);
        foreach (var key in path)
        {
            if (at is not DictionaryToken dictionary || !dictionary.TryGet(NameToken.Create(key), out IToken next))
            {
                return null;
            }

            at = pdf.Resolve(next);
        }

        return at;
    }

    public static IToken? InCatalog(this PdfDocument pdf, params ReadOnlySpan<string> path) => pdf.Find(pdf.Structure.Catalog.CatalogDictionary, path);

    public static IToken? InPage(this PdfDocument pdf, int page, params ReadOnlySpan<string> path) => pdf.Find(pdf.GetPage(page).Dictionary, path);

    public static IToken Resolve(this PdfDocument pdf, IToken token) => token switch
    {
        IndirectReferenceToken reference => pdf.Resolve(pdf.Structure.GetObject(reference.Data).Data),
        StreamToken stream => stream.StreamDictionary,
        _ => token,
    };

    public static string Name(this IToken? token) => Assert.IsType<NameToken>(token).Data;

    public static double[] Numbers(this IToken? token) => [.. Assert.IsType<ArrayToken>(token).Data.OfType<NumericToken>().Select(number => number.Double)];

    public static string Text(this IToken? token) => token switch
    {
        StringToken text => text.Data,
        HexToken hex => hex.Data,
        _ => throw new InvalidOperationException($"{token} is no string"),
    };

    public static IReadOnlyList<PdfPath> Paths(this PdfDocument pdf, int page) => pdf.GetPage(page).Paths;
}
