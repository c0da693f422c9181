using System.Globalization;
using System.Text;
using PaperFlock.Layout;

namespace PaperFlock.Printing.Pdf;

/// <summary>Writes the objects of a PDF one after another, and at the end where each of them is (ISO 32000-1, 7.5).</summary>
/// <remarks>No dates, and an identifier that is drawn from what the file holds: the same objects make the same bytes.</remarks>
internal sealed class PdfFile
{
    private readonly Stream _output;
    private readonly PdfBuffer _body = new();

    // Where each object begins, by its number less one; 0 while it is not written, as nothing begins there but the file.
    private readonly List<long> _places = [];
    private Fingerprint _fingerprint = new();
    private long _written;

    public PdfFile(Stream output)
    {
        _output = output;
        // The second line tells whoever moves the file that it is not text (7.5.2).
        Write("%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n");
    }

    /// <summary>A number for an object that is written later, or at once.</summary>
    public Reference Next()
    {
        _places.Add(0);
        return new Reference(_places.Count);
    }

    /// <returns>Where to write the object; it ends with <see cref="End"/>.</returns>
    public PdfBuffer Begin(Reference number)
    {
        _places[number.Number - 1] = _written;
        _body.Clear();
        _body.Add($"{number.Number} 0 obj\n");
        return _body;
    }

    public void End()
    {
        _body.Add("\nendobj\n"u8);
        Write(_body.Written);
    }

    /// <summary>Writes a stream object.</summary>
    /// <param name="entries">Of its dictionary, besides its length.</param>
    public void WriteStream(Reference number, ReadOnlySpan<byte> bytes, string entries)
    {
        var head = Begin(number);
        head.Add($"<</Length {bytes.Length}{entries}>>\nstream\n");
        Write(head.Written);
        Write(bytes);
        Write("\nendstream\nendobj\n"u8);
    }

    /// <summary>The table of where everything is. Nothing may follow.</summary>
    public void Finish(Reference catalog, Reference information)
    {
        // 14.4: an id tells one file from another, and that is all it is for.
        var id = _fingerprint.ToString();
        var start = _written;
        Write(string.Create(CultureInfo.InvariantCulture, $"xref\n0 {_places.Count + 1}\n0000000000 65535 f \n"));
        foreach (var place in _places)
        {
            Write(place > 0
                ? string.Create(CultureInfo.InvariantCulture, $"{place:D10} 00000 n \n")
                : throw new InvalidOperationException("an object was given a number and never written"));
        }

        Write(string.Create(
            CultureInfo.InvariantCulture,
            $"trailer\n<</Size {_places.Count + 1}/Root {catalog.Number} 0 R/Info {information.Number} 0 R/ID[<{id}><{id}>]>>\nstartxref\n{start}\n%%EOF\n"));
    }

    private void Write(string latin) => Write(Encoding.Latin1.GetBytes(latin));

    private void Write(ReadOnlySpan<byte> bytes)
    {
        _output.Write(bytes);
        _fingerprint.Add(bytes);
        _written += bytes.Length;
    }
}
