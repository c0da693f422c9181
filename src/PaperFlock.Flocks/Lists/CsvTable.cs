using System.Text.RegularExpressions;
using System.Text.Unicode;
using CsvHelper;

namespace PaperFlock.Flocks.Lists;

/// <summary>What a spreadsheet saved, as cells with their places: commas, semicolons or tabs between them, whichever the file has.</summary>
/// <param name="Source">What the places are in.</param>
/// <param name="Rows">Those with anything in them, headings too, without those whose quotes make no sense.</param>
public sealed partial record CsvTable(SourceText Source, ImmutableArray<ImmutableArray<CsvCell>> Rows)
{
    /// <summary>
    /// What Windows-1252, as spreadsheets save it west of the Oder, has from 0x80 to 0x9F, where Latin-1 has nothing to print (WHATWG Encoding, index windows-1252).
    /// The framework's own tables of code pages would make the page in the browser an eighth larger.
    /// </summary>
    private const string Windows1252From80 =
        "\u20AC\u0081\u201A\u0192\u201E\u2026\u2020\u2021\u02C6\u2030\u0160\u2039\u0152\u008D\u017D\u008F\u0090\u2018\u2019\u201C\u201D\u2022\u2013\u2014\u02DC\u2122\u0161\u203A\u0153\u009D\u017E\u0178";

    /// <param name="shownPath">As messages show it.</param>
    /// <param name="bytes">UTF-8, UTF-16, or one byte a character, as older spreadsheets save it. Of a longer file, one byte over <see cref="FlockReader.MostBytes"/> is enough.</param>
    /// <returns>Without rows where it is no list at all; why is in the bag.</returns>
    public static CsvTable Read(string shownPath, byte[] bytes, DiagnosticBag bag)
    {
        if (bytes.Length > FlockReader.MostBytes || ListKind.Other(bytes) is not null)
        {
            bag.Add(ListKind.Other(bytes) is { } kind ? ListMessages.OtherKindOfFile(kind) : ListMessages.TooLarge());
            return new CsvTable(new SourceText(shownPath, ""), []);
        }

        var source = new SourceText(shownPath, Decode(bytes));
        // A first line such as sep=; tells one spreadsheet what separates the cells; the reader finds out for itself.
        var offset = source.Text.StartsWith("sep=", StringComparison.OrdinalIgnoreCase) ? source.Text.IndexOf('\n', StringComparison.Ordinal) + 1 : 0;
        var text = source.Text[offset..];
        var utf8 = Encoding.UTF8.GetBytes(text);
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<CsvCell>>();
        var at = new PlaceInText(utf8, offset);
        var options = new CsvReaderOptions
        {
            HasHeader = false,
            // A spreadsheet may be told to put others round its texts.
            Quote = SingleQuoted().IsMatch(text) ? '\'' : '"',
            FieldCountMismatch = CsvFieldCountHandling.Allow,
            MissingField = CsvMissingFieldHandling.ReturnEmpty,
            MalformedData = CsvMalformedDataHandling.Skip,
            OnMalformedRecord = m => bag.Add(ListMessages.Malformed(source.SpanAt(at.CharacterAt((int)m.ByteOffset), 1), m.Reason)),
        };
        using var reader = CsvReader.Create(utf8, options);
        while (reader.Read())
        {
            var cells = ImmutableArray.CreateBuilder<CsvCell>();
            var start = (int)reader.ByteOffset;
            for (var i = 0; i < reader.FieldCount; i++)
            {
                var length = reader.GetRawSpan(i).Length;
                var first = at.CharacterAt(start);
                cells.Add(new CsvCell(reader.GetString(i), source.SpanAt(first, at.CharacterAt(start + length) - first)));
                start += length + 1;
            }

            if (cells.Any(c => !c.IsBlank))
            {
                rows.Add(cells.ToImmutable());
            }
        }

        return new CsvTable(source, rows.ToImmutable());
    }

    private static string Decode(byte[] bytes) => bytes switch
    {
        [0xFF, 0xFE, .. var rest] => Encoding.Unicode.GetString(rest),
        [0xFE, 0xFF, .. var rest] => Encoding.BigEndianUnicode.GetString(rest),
        [0xEF, 0xBB, 0xBF, .. var rest] => Encoding.UTF8.GetString(rest),
        [not 0, 0, ..] => Encoding.Unicode.GetString(bytes),
        [0, not 0, ..] => Encoding.BigEndianUnicode.GetString(bytes),
        _ => Utf8.IsValid(bytes) ? Encoding.UTF8.GetString(bytes) : string.Concat(bytes.Select(b => b is >= 0x80 and <= 0x9F ? Windows1252From80[b - 0x80] : (char)b)),
    };

    [GeneratedRegex(@"^'[^'\r\n]*'[,;\t\r\n]")]
    private static partial Regex SingleQuoted();

    /// <summary>From bytes of UTF-8 to characters of the text; asked in rising order, so that a long file is walked once.</summary>
    private sealed class PlaceInText(byte[] utf8, int offset)
    {
        private int _byte;
        private int _characters;

        public int CharacterAt(int index)
        {
            if (index < _byte)
            {
                (_byte, _characters) = (0, 0);
            }

            _characters += Encoding.UTF8.GetCharCount(utf8, _byte, Math.Min(index, utf8.Length) - _byte);
            _byte = Math.Min(index, utf8.Length);
            return offset + _characters;
        }
    }
}

/// <param name="Text">Quotes resolved; blanks as they are.</param>
/// <param name="Span">Where it stands, quotes included; what runs over lines has its first line.</param>
public sealed record CsvCell(string Text, SourceSpan Span)
{
    public bool IsBlank => string.IsNullOrWhiteSpace(Text);
}
