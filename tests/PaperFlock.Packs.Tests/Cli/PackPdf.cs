using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Tokens;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>A finished PDF as PdfPig, which shares no code with the writer, reads it.</summary>
internal sealed class PackPdf : IDisposable
{
    private readonly PdfDocument _pdf;

    public PackPdf(string path) => _pdf = PdfDocument.Open(path);

    public int Pages => _pdf.NumberOfPages;

    /// <summary>The value of <c>/Duplex</c> in the viewer preferences (ISO 32000-1, table 150).</summary>
    public string Duplex =>
        ((NameToken)Preferences.Data["Duplex"]).Data;

    public IReadOnlyList<string> Texts => [.. _pdf.GetPages().Select(p => ContentOrderTextExtractor.GetText(p))];

    public string Text => string.Join('\n', Texts);

    /// <summary>Each line of the outline with its page, those below another with two spaces before them.</summary>
    public IReadOnlyList<string> Outline =>
        _pdf.TryGetBookmarks(out var bookmarks) ? [.. Lines(bookmarks.Roots)] : [];

    public IEnumerable<UglyToad.PdfPig.Content.Page> AllPages => _pdf.GetPages();

    public void Dispose() => _pdf.Dispose();

    private DictionaryToken Preferences => (DictionaryToken)_pdf.Structure.Catalog.CatalogDictionary.Data["ViewerPreferences"];

    private static IEnumerable<string> Lines(IReadOnlyList<BookmarkNode> nodes)
    {
        foreach (var node in nodes)
        {
            var page = node is DocumentBookmarkNode { PageNumber: var n } ? n.ToString(CultureInfo.InvariantCulture) : "?";
            yield return $"{new string(' ', node.Level * 2)}{node.Title.Replace('\u00a0', ' ')} @{page}";
            foreach (var line in Lines(node.Children))
            {
                yield return line;
            }
        }
    }
}
