using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;

namespace PaperFlock.Pdf.Tests;

/// <summary>An element of a PDF's structure tree, as a reader finds it that goes by the tags alone. Read with PdfPig.</summary>
/// <param name="Type">As ISO 32000-1, 14.8.4 calls it.</param>
/// <param name="Scope">Of a header cell, "row" or "column"; empty for any other.</param>
/// <param name="Says">Of a figure.</param>
/// <param name="Letters">Painted in the element itself, with the page they are on, from 1.</param>
/// <param name="LeadsTo">What its links say.</param>
internal sealed record StructureNode(
    string Type, string Scope, int Columns, string? Says, ImmutableArray<(int Page, Letter Letter)> Letters, ImmutableArray<string> LeadsTo, ImmutableArray<StructureNode> Kids)
{
    /// <summary>Its own words, with plain spaces.</summary>
    public string Words => string.Concat(Letters.Select(l => l.Letter.Value)).Replace('\u00a0', ' ');

    /// <summary>Its words and those of all in it, with a space between one element and the next.</summary>
    public string AllWords => string.Join(' ', Kids.Select(kid => kid.AllWords).Prepend(Words).Where(words => words.Length > 0));

    public IEnumerable<(int Page, Letter Letter)> AllLetters => Letters.Concat(Kids.SelectMany(kid => kid.AllLetters));

    public IEnumerable<StructureNode> All => Kids.SelectMany(kid => kid.All).Prepend(this);

    public static StructureNode Of(byte[] bytes)
    {
        using var pdf = PdfDocument.Open(bytes);
        return new Reader(pdf).Read(pdf.InCatalog("StructTreeRoot", "K")!);
    }

    /// <summary>An element a line, indented by what it is in.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        Write(text, 0);
        return text.ToString();
    }

    private void Write(StringBuilder text, int depth)
    {
        text.Append(' ', 2 * depth).Append(Type);
        text.Append(Scope.Length > 0 ? $" {Scope}" : "");
        text.Append(Columns > 1 ? string.Create(CultureInfo.InvariantCulture, $" over {Columns}") : "");
        text.Append(Says is null ? "" : $" says “{Says}”");
        text.Append(Words.Length > 0 ? $" “{Words}”" : "");
        text.Append(string.Concat(LeadsTo.Select(link => $" →“{link}”"))).Append('\n');
        foreach (var kid in Kids)
        {
            kid.Write(text, depth + 1);
        }
    }

    private sealed class Reader
    {
        private readonly PdfDocument _pdf;
        private readonly Dictionary<IndirectReference, int> _pages = [];
        private readonly Dictionary<(int Page, int Number), IReadOnlyList<Letter>> _contents = [];

        public Reader(PdfDocument pdf)
        {
            _pdf = pdf;
            foreach (var kid in ((ArrayToken)_pdf.InCatalog("Pages", "Kids")!).Data.OfType<IndirectReferenceToken>())
            {
                _pages.Add(kid.Data, _pages.Count + 1);
                Collect(_pages.Count, pdf.GetPage(_pages.Count).GetMarkedContents());
            }
        }

        public StructureNode Read(IToken token)
        {
            var element = (DictionaryToken)_pdf.Resolve(token);
            var letters = ImmutableArray.CreateBuilder<(int, Letter)>();
            var leads = ImmutableArray.CreateBuilder<string>();
            var inner = ImmutableArray.CreateBuilder<StructureNode>();
            foreach (var kid in _pdf.Find(element, "K") switch { ArrayToken array => array.Data, { } one => [one], null => [] })
            {
                switch (kid)
                {
                    case NumericToken number:
                        letters.AddRange(Contents(element, number));
                        break;
                    case DictionaryToken reference when _pdf.Find(reference, "Type").Name() == "MCR":
                        letters.AddRange(Contents(reference, (NumericToken)_pdf.Find(reference, "MCID")!));
                        break;
                    case DictionaryToken reference:
                        leads.Add(_pdf.Find(reference, "Obj", "Contents").Text());
                        break;
                    default:
                        inner.Add(Read(kid));
                        break;
                }
            }

            return new StructureNode(
                _pdf.Find(element, "S").Name(),
                _pdf.Find(element, "A", "Scope") is { } scope ? scope.Name().ToLowerInvariant() : "",
                _pdf.Find(element, "A", "ColSpan") is NumericToken columns ? columns.Int : 1,
                _pdf.Find(element, "Alt")?.Text(),
                letters.ToImmutable(),
                leads.ToImmutable(),
                inner.ToImmutable());
        }

        private void Collect(int page, IEnumerable<MarkedContentElement> contents)
        {
            foreach (var content in contents)
            {
                if (content.MarkedContentIdentifier >= 0)
                {
                    _contents.Add((page, content.MarkedContentIdentifier), content.Letters);
                }

                Collect(page, content.Children);
            }
        }

        private IEnumerable<(int Page, Letter Letter)> Contents(DictionaryToken onPage, NumericToken number)
        {
            var page = onPage.TryGet(NameToken.Pg, out IToken pg) ? _pages[((IndirectReferenceToken)pg).Data] : throw new InvalidOperationException("content on no page");
            return _contents.TryGetValue((page, number.Int), out var letters) ? letters.Select(letter => (page, letter)) : [];
        }
    }
}
