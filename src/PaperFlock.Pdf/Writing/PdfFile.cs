using System.IO.Hashing;

namespace PaperFlock.Pdf.Writing;

/// <summary>Writes the objects of a PDF one after another, and at the end where each of them is (ISO 32000-1, 7.5).</summary>
/// <remarks>No dates, and an identifier that is drawn from what the file holds: the same objects make the same bytes.</remarks>
internal sealed class PdfFile
{
    /// <summary>A reader that wants one of them has to inflate all.</summary>
    private const int MostPacked = 500;

    private readonly Stream _output;
    private readonly PdfBuffer _body = new();
    private readonly List<CrossReference> _places = [];
    private readonly XxHash128 _hash = new();
    private Reference _current;
    private long _written;

    // Objects that will be compressed together, and before them the number and the start of each.
    private readonly PdfBuffer _packed = new();
    private readonly PdfBuffer _packedIndex = new();
    private Reference? _pack;
    private int _packedCount;

    public PdfFile(Stream output)
    {
        _output = output;
        // The second line tells whoever moves the file that it is not text (7.5.2).
        Write("%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n");
    }

    /// <summary>A number for an object that is written later, or at once.</summary>
    public Reference Next()
    {
        _places.Add(default);
        return new Reference(_places.Count);
    }

    /// <returns>Where to write the object; it ends with <see cref="End"/> or <see cref="EndPacked"/>.</returns>
    public PdfBuffer Begin(Reference number)
    {
        _current = number;
        _body.Clear();
        return _body;
    }

    public void End()
    {
        BeginObject(_current);
        Write(_body.Written);
        Write("\nendobj\n"u8);
    }

    /// <summary>The object is compressed together with others (7.5.7): for those there are thousands of.</summary>
    public void EndPacked()
    {
        _pack ??= Next();
        _places[_current.Number - 1] = CrossReference.Packed(_pack.Value, _packedCount++);
        _packedIndex.Add($"{_current.Number} {_packed.Written.Length} ");
        _packed.Add(_body.Written);
        _packed.Add("\n"u8);
        if (_packedCount == MostPacked)
        {
            WritePack();
        }
    }

    /// <summary>Writes a stream object.</summary>
    /// <param name="entries">Of its dictionary, besides its length.</param>
    public void WriteStream(Reference number, ReadOnlySpan<byte> bytes, string entries)
    {
        BeginObject(number);
        Write(string.Create(CultureInfo.InvariantCulture, $"<</Length {bytes.Length}{entries}>>\nstream\n"));
        Write(bytes);
        Write("\nendstream\nendobj\n"u8);
    }

    /// <summary>The table of where everything is (7.5.8). Nothing may follow.</summary>
    /// <exception cref="InvalidOperationException">An object was given a number and never written.</exception>
    public void Finish(Reference catalog, Reference information)
    {
        WritePack();
        // 14.4: an id tells one file from another, and that is all it is for.
        var id = Convert.ToHexString(_hash.GetCurrentHash());
        var (start, number) = (_written, Next());
        _places[^1] = CrossReference.At(start);
        if (_places.Exists(place => place.Type == 0))
        {
            throw new InvalidOperationException("an object was given a number and never written");
        }

        WriteStream(number, Flate.Compress(CrossReference.Table([CrossReference.None, .. _places])), string.Create(
            CultureInfo.InvariantCulture,
            $"/Type/XRef/W{CrossReference.Widths}/Size {_places.Count + 1}/Root {catalog.Number} 0 R/Info {information.Number} 0 R/ID[<{id}><{id}>]{Flate.Entry}"));
        Write(string.Create(CultureInfo.InvariantCulture, $"startxref\n{start}\n%%EOF\n"));
    }

    private void WritePack()
    {
        if (_pack is not { } pack)
        {
            return;
        }

        var first = _packedIndex.Written.Length;
        _packedIndex.Add(_packed.Written);
        WriteStream(pack, Flate.Compress(_packedIndex.Written), string.Create(CultureInfo.InvariantCulture, $"/Type/ObjStm/N {_packedCount}/First {first}{Flate.Entry}"));
        _packed.Clear();
        _packedIndex.Clear();
        (_pack, _packedCount) = (null, 0);
    }

    private void BeginObject(Reference number)
    {
        _places[number.Number - 1] = CrossReference.At(_written);
        Write(string.Create(CultureInfo.InvariantCulture, $"{number.Number} 0 obj\n"));
    }

    private void Write(string latin) => Write(Encoding.Latin1.GetBytes(latin));

    private void Write(ReadOnlySpan<byte> bytes)
    {
        _output.Write(bytes);
        _hash.Append(bytes);
        _written += bytes.Length;
    }
}

/// <summary>An object of a file, by its number (ISO 32000-1, 7.3.10).</summary>
internal readonly record struct Reference(int Number);
