using System.Buffers;
using System.Globalization;
using System.Text;
using PaperFlock.Layout;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;

namespace PaperFlock.Printing.Finishing;

/// <summary>Writes the objects that can be reached from a catalog as a file (7.5), numbered in the order they are met.</summary>
/// <remarks>
/// PDFsharp has a writer of its own, which stamps the time, random identifiers and its own name on every file. Here the
/// same objects make the same bytes, the file's identifier being drawn from what it holds.
/// </remarks>
internal sealed class PdfFileWriter
{
    private static readonly SearchValues<char> PlainLetters = SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+-_.");

    private readonly Stream _output;
    private readonly ArrayBufferWriter<byte> _object = new();
    private readonly List<PdfObject> _objects = [];
    private readonly Dictionary<PdfObject, int> _numbers = new(ReferenceEqualityComparer.Instance);
    private Fingerprint _fingerprint = new();
    private int _written;

    private PdfFileWriter(Stream output) => _output = output;

    public static void Write(PdfDictionary catalog, PdfDictionary information, Stream output) =>
        new PdfFileWriter(output).WriteFile(catalog, information);

    private void WriteFile(PdfDictionary catalog, PdfDictionary information)
    {
        // The second line tells whoever moves the file that it is not text (7.5.2).
        Write("%PDF-1.7\n%"u8);
        Write([0xE2, 0xE3, 0xCF, 0xD3, (byte)'\n']);
        var root = NumberOf(catalog);
        var info = NumberOf(information);
        var places = new List<int>();
        for (var i = 0; i < _objects.Count; i++)
        {
            PassOn();
            places.Add(_written);
            Write(string.Create(CultureInfo.InvariantCulture, $"{i + 1} 0 obj\n"));
            WriteObject(_objects[i]);
            Write("\nendobj\n"u8);
        }

        PassOn();
        var start = _written;
        // ISO 32000-1, section 14.4: an id tells one file from another, and that is all it is for.
        var id = _fingerprint.ToString();
        Write(string.Create(CultureInfo.InvariantCulture, $"xref\n0 {places.Count + 1}\n0000000000 65535 f \n"));
        foreach (var place in places)
        {
            Write(string.Create(CultureInfo.InvariantCulture, $"{place:D10} 00000 n \n"));
        }

        Write(string.Create(CultureInfo.InvariantCulture, $"trailer\n<</Size {places.Count + 1}/Root {root} 0 R/Info {info} 0 R/ID[<{id}><{id}>]>>\nstartxref\n{start}\n%%EOF\n"));
        PassOn();
    }

    /// <summary>Hands on what has been written, so that no more than an object is held twice.</summary>
    private void PassOn()
    {
        _output.Write(_object.WrittenSpan);
        _fingerprint.Add(_object.WrittenSpan);
        _written += _object.WrittenCount;
        _object.ResetWrittenCount();
    }

    private int NumberOf(PdfObject value)
    {
        if (!_numbers.TryGetValue(value, out var number))
        {
            _objects.Add(value);
            number = _objects.Count;
            _numbers.Add(value, number);
        }

        return number;
    }

    private void WriteObject(PdfItem item)
    {
        if (item is not PdfDictionary { Stream: { } stream } dictionary)
        {
            WriteItem(item);
            return;
        }

        dictionary.Elements["/Length"] = new PdfInteger(stream.Value.Length);
        WriteItem(dictionary);
        Write("\nstream\n"u8);
        Write(stream.Value);
        Write("\nendstream"u8);
    }

    private void WriteItem(PdfItem item)
    {
        switch (item)
        {
            case PdfReference reference:
                Write(string.Create(CultureInfo.InvariantCulture, $" {NumberOf(reference.Value)} 0 R"));
                break;
            case PdfDictionary dictionary:
                Write("<<"u8);
                foreach (var (key, value) in dictionary.Elements)
                {
                    WriteName(key);
                    WriteItem(value!);
                }

                Write(">>"u8);
                break;
            case PdfArray array:
                Write("["u8);
                foreach (var value in array.Elements)
                {
                    WriteItem(value);
                }

                Write("]"u8);
                break;
            case PdfName name:
                WriteName(name.Value);
                break;
            case PdfString text:
                WriteString(text);
                break;
            default:
                Write(" "u8);
                Write(Scalar(item));
                break;
        }
    }

    private static string Scalar(PdfItem item) => item switch
    {
        PdfBoolean value => value.Value ? "true" : "false",
        PdfInteger value => value.Value.ToString(CultureInfo.InvariantCulture),
        PdfLongInteger value => value.Value.ToString(CultureInfo.InvariantCulture),
        PdfReal value => value.Value.ToString("0.####", CultureInfo.InvariantCulture),
        PdfNull => "null",
        // Numbers and the like that are objects of their own, which Skia writes for the lengths of streams.
        PdfIntegerObject value => value.Value.ToString(CultureInfo.InvariantCulture),
        _ => throw new InvalidOperationException($"{item.GetType().Name} is not expected in a painted PDF"),
    };

    // 7.3.5: what is not a plain letter is written as its number.
    private void WriteName(string name)
    {
        Write("/"u8);
        if (!name.AsSpan(1).ContainsAnyExcept(PlainLetters))
        {
            Encoding.ASCII.GetBytes(name.AsSpan(1), _object);
            return;
        }

        foreach (var value in Encoding.UTF8.GetBytes(name[1..]))
        {
            if (value is > 32 and < 127 && !"#()<>[]{}/%"u8.Contains(value))
            {
                Write([value]);
            }
            else
            {
                Write($"#{value:X2}");
            }
        }
    }

    // 7.9.2.2: plain text where ASCII will do, else UTF-16 with its mark.
    private void WriteString(PdfString text)
    {
        if (Ascii.IsValid(text.Value) && !text.Value.Any(char.IsControl))
        {
            Write("("u8);
            Write(text.Value.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("(", "\\(", StringComparison.Ordinal).Replace(")", "\\)", StringComparison.Ordinal));
            Write(")"u8);
            return;
        }

        Write("<FEFF"u8);
        Write(Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text.Value)));
        Write(">"u8);
    }

    private void Write(string ascii) => Encoding.ASCII.GetBytes(ascii, _object);

    private void Write(ReadOnlySpan<byte> bytes) => _object.Write(bytes);
}
