using System.Globalization;
using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;

namespace PaperFlock.Pdf.Tests;

/// <summary>What a reader that goes by the tags alone finds in a PDF: an element a line, indented by what it is in, with its words. Read with PdfPig.</summary>
internal sealed class StructureText
{
    private readonly PdfDocument _pdf;
    private readonly Dictionary<IndirectReference, int> _pages = [];
    private readonly Dictionary<(int Page, int Number), string> _words = [];
    private readonly StringBuilder _text = new();

    private StructureText(PdfDocument pdf)
    {
        _pdf = pdf;
        foreach (var kid in ((ArrayToken)_pdf.InCatalog("Pages", "Kids")!).Data.OfType<IndirectReferenceToken>())
        {
            _pages.Add(kid.Data, _pages.Count + 1);
        }

        for (var page = 1; page <= pdf.NumberOfPages; page++)
        {
            Collect(page, pdf.GetPage(page).GetMarkedContents());
        }
    }

    public static string Of(byte[] bytes)
    {
        using var pdf = PdfDocument.Open(bytes);
        var tree = new StructureText(pdf);
        tree.Walk(pdf.InCatalog("StructTreeRoot", "K")!, 0);
        return tree._text.ToString();
    }

    private void Collect(int page, IEnumerable<MarkedContentElement> contents)
    {
        foreach (var content in contents)
        {
            if (content.MarkedContentIdentifier >= 0)
            {
                _words.Add((page, content.MarkedContentIdentifier), string.Concat(content.Letters.Select(letter => letter.Value)));
            }

            Collect(page, content.Children);
        }
    }

    private void Walk(IToken token, int depth)
    {
        var element = (DictionaryToken)_pdf.Resolve(token);
        var words = new StringBuilder();
        var inner = new List<IToken>();
        var kids = _pdf.Find(element, "K") switch { ArrayToken array => array.Data, { } one => [one], null => [] };
        foreach (var kid in kids)
        {
            switch (kid)
            {
                case NumericToken number:
                    words.Append(Words(element, number));
                    break;
                case DictionaryToken reference when _pdf.Find(reference, "Type").Name() == "MCR":
                    words.Append(Words(reference, (NumericToken)_pdf.Find(reference, "MCID")!));
                    break;
                case DictionaryToken reference:
                    words.Append(CultureInfo.InvariantCulture, $"→{_pdf.Find(reference, "Obj", "Contents").Text()}");
                    break;
                default:
                    inner.Add(kid);
                    break;
            }
        }

        _text.Append(' ', 2 * depth).Append(_pdf.Find(element, "S").Name());
        Add("A", "Scope", scope => $" {scope.Name().ToLowerInvariant()}");
        Add("A", "ColSpan", span => $" over {((NumericToken)span).Int}");
        if (_pdf.Find(element, "Alt") is { } says)
        {
            _text.Append(CultureInfo.InvariantCulture, $" says “{says.Text()}”");
        }

        _text.Append(words.Length > 0 ? $" “{words}”\n" : "\n");
        foreach (var kid in inner)
        {
            Walk(kid, depth + 1);
        }

        void Add(string first, string second, Func<IToken, string> text)
        {
            if (_pdf.Find(element, first, second) is { } value)
            {
                _text.Append(text(value));
            }
        }
    }

    private string Words(DictionaryToken onPage, NumericToken number) =>
        onPage.TryGet(NameToken.Pg, out IToken page) ? _words.GetValueOrDefault((_pages[((IndirectReferenceToken)page).Data], number.Int), "") : throw new InvalidOperationException("content on no page");
}
