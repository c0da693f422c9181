using System.Text;
using PaperFlock.Pdf.Writing;

namespace PaperFlock.Pdf.Reading;

/// <summary>Finds its way through a PDF that <see cref="PdfFile"/> wrote, and through its updates.</summary>
/// <exception cref="InvalidDataException">It is not as that writes it.</exception>
internal sealed class FileReader
{
    private const int TailLength = 64;

    /// <summary>Each printing of an issue adds one.</summary>
    private const int MostUpdates = 1000;

    private const int MostObjects = 2_000_000;

    private readonly ReadOnlyMemory<byte> _file;

    // Where objects are that stand by themselves; of one that was written again the last.
    private readonly Dictionary<int, int> _places = [];

    private int _rows;

    public FileReader(ReadOnlyMemory<byte> file)
    {
        _file = file;
        var start = LastStart();
        var newest = ReadCrossReferences(start);
        Trailer = new Trailer(start, (int)WholeOf(newest, "Size") - 1, ReferenceOf(newest, "Root"), ReferenceOf(newest, "Info"), ListOf(newest, "ID") is [string id, ..] ? id : throw ObjectParser.Damaged());
        for (var (part, at, count) = (newest, start, 0); part.ContainsKey("Prev"); count++)
        {
            // Older parts stand before newer ones: so there is no going round.
            var before = (int)Math.Min(WholeOf(part, "Prev"), int.MaxValue);
            (part, at) = before < at && count < MostUpdates ? (ReadCrossReferences(before), before) : throw ObjectParser.Damaged();
        }
    }

    public Trailer Trailer { get; }

    /// <returns>Null when no attachment has that name.</returns>
    public FoundAttachment? FindAttachment(string name)
    {
        var catalog = DictionaryAt(Trailer.Catalog);
        if (!catalog.TryGetValue("Names", out var names))
        {
            return null;
        }

        var list = ListOf(DictionaryOf(AsDictionary(names), "EmbeddedFiles"), "Names");
        for (var i = 0; i + 1 < list.Count; i += 2)
        {
            if (list[i] is string found && found == name)
            {
                var specification = DictionaryAt(list[i + 1] is Reference number ? number : throw ObjectParser.Damaged());
                return Attachment(ReferenceOf(DictionaryOf(specification, "EF"), "F"));
            }
        }

        return null;
    }

    private FoundAttachment Attachment(Reference number)
    {
        var (entries, bytes) = StreamAt(PlaceOf(number), number);
        var subtype = entries.GetValueOrDefault("Subtype") is PdfName name ? name.Name : throw ObjectParser.Damaged();
        return new FoundAttachment(number, subtype, bytes, WholeOf(DictionaryOf(entries, "Params"), "Size"));
    }

    private int LastStart()
    {
        var tail = Encoding.Latin1.GetString(_file.Span[Math.Max(0, _file.Length - TailLength)..]);
        var at = tail.LastIndexOf("startxref\n", StringComparison.Ordinal);
        var lines = at < 0 ? [] : tail[at..].Split('\n');
        return lines is [_, var start, "%%EOF", ""] && int.TryParse(start, NumberStyles.None, CultureInfo.InvariantCulture, out var place) ? place : throw ObjectParser.Damaged();
    }

    private Dictionary<string, object?> ReadCrossReferences(int at)
    {
        var (entries, compressed) = StreamAt(at, null);
        var size = WholeOf(entries, "Size");
        if (entries.GetValueOrDefault("Type") is not PdfName { Name: "XRef" } || ListOf(entries, "W") is not [1L, 4L, 2L] || size is < 1 or > MostObjects)
        {
            throw ObjectParser.Damaged();
        }

        int[] numbers = entries.ContainsKey("Index") ? [.. Listed(ListOf(entries, "Index"), size)] : [.. Enumerable.Range(0, (int)size)];
        _rows += numbers.Length;
        if (_rows > MostObjects || Flate.Inflate(compressed, CrossReference.Length * numbers.Length) is not { } table || table.Length != CrossReference.Length * numbers.Length)
        {
            throw ObjectParser.Damaged();
        }

        foreach (var (row, number) in numbers.Index())
        {
            if (CrossReference.Read(table, row) is { Type: 1 } reference && reference.Where < _file.Length)
            {
                _places.TryAdd(number, (int)reference.Where);
            }
        }

        return entries;
    }

    /// <summary>The numbers an update has rows for: pairs of a first one and how many.</summary>
    private static IEnumerable<int> Listed(List<object?> index, long size)
    {
        foreach (var pair in index.Chunk(2))
        {
            var (first, count) = pair is [long f and >= 0, long c and >= 0] && f + c <= size ? ((int)f, (int)c) : throw ObjectParser.Damaged();
            for (var number = first; number < first + count; number++)
            {
                yield return number;
            }
        }
    }

    private Dictionary<string, object?> DictionaryAt(Reference number)
    {
        var parser = At(PlaceOf(number), number);
        return AsDictionary(parser.Value());
    }

    /// <param name="number">Null where it may have any.</param>
    private (Dictionary<string, object?> Entries, ReadOnlyMemory<byte> Bytes) StreamAt(int place, Reference? number)
    {
        var parser = At(place, number);
        var entries = AsDictionary(parser.Value());
        parser.Expect("stream\n"u8);
        var length = WholeOf(entries, "Length");
        var isOurs = entries.GetValueOrDefault("Filter") is PdfName { Name: "FlateDecode" } && !entries.ContainsKey("DecodeParms") && length >= 0 && length <= _file.Length - parser.At;
        return isOurs ? (entries, _file.Slice(parser.At, (int)length)) : throw ObjectParser.Damaged();
    }

    private ObjectParser At(int place, Reference? number)
    {
        var parser = place >= 0 && place < _file.Length ? new ObjectParser(_file, place) : throw ObjectParser.Damaged();
        var found = parser.Whole();
        parser.Expect("0 obj"u8);
        return number is null || found == number.Value.Number ? parser : throw ObjectParser.Damaged();
    }

    private int PlaceOf(Reference number) => _places.TryGetValue(number.Number, out var place) ? place : throw ObjectParser.Damaged();

    private static Dictionary<string, object?> AsDictionary(object? value) => value as Dictionary<string, object?> ?? throw ObjectParser.Damaged();

    private static Dictionary<string, object?> DictionaryOf(Dictionary<string, object?> entries, string key) => AsDictionary(entries.GetValueOrDefault(key));

    private static List<object?> ListOf(Dictionary<string, object?> entries, string key) => entries.GetValueOrDefault(key) as List<object?> ?? throw ObjectParser.Damaged();

    private static long WholeOf(Dictionary<string, object?> entries, string key) => entries.GetValueOrDefault(key) is long number ? number : throw ObjectParser.Damaged();

    private static Reference ReferenceOf(Dictionary<string, object?> entries, string key) => entries.GetValueOrDefault(key) is Reference number ? number : throw ObjectParser.Damaged();
}
