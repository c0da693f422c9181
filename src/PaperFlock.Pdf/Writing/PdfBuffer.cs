using System.Buffers;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using System.Text;

namespace PaperFlock.Pdf.Writing;

/// <summary>Bytes of a PDF in the making. What is added with <c>$"…"</c> is written as PDF writes it, whatever the culture.</summary>
internal sealed class PdfBuffer
{
    private readonly ArrayBufferWriter<byte> _bytes = new();

    public ReadOnlySpan<byte> Written => _bytes.WrittenSpan;

    public void Clear() => _bytes.ResetWrittenCount();

    /// <summary>Text of a PDF as it is to stand there: ASCII, with numbers and references between.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "the handler has written into this buffer by then")]
    public void Add([InterpolatedStringHandlerArgument("")] ref Handler text) => _ = text;

    public void Add(ReadOnlySpan<byte> bytes) => _bytes.Write(bytes);

    /// <summary>A number to the nearest thousandth of a point, as short as that can be written (7.3.3): finer than any printer sets a dot.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none, or far beyond any paper.</exception>
    public void Add(double value)
    {
        // Also true of what is not a number.
        if (!(Math.Abs(value) < int.MaxValue))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "not a number for a page");
        }

        var thousandths = (long)Math.Round(value * 1000, MidpointRounding.AwayFromZero);
        Add(thousandths < 0 ? "-"u8 : []);
        AddWhole(Math.Abs(thousandths / 1000));
        var rest = Math.Abs((int)(thousandths % 1000));
        if (rest > 0)
        {
            ReadOnlySpan<byte> places = [(byte)'.', Digit(rest / 100), Digit(rest / 10), Digit(rest)];
            Add(places.TrimEnd((byte)'0'));
        }
    }

    public void AddArray(IEnumerable<Reference> references)
    {
        Add("["u8);
        foreach (var reference in references)
        {
            Add($"{reference} ");
        }

        Add("]"u8);
    }

    /// <summary>Four hexadecimal digits.</summary>
    public void AddHex(ushort value) => AddAscii(value.ToString("X4", CultureInfo.InvariantCulture));

    /// <summary>Two bytes within a string (7.3.4.2).</summary>
    public void AddCode(ushort value)
    {
        AddEscaped((byte)(value >> 8));
        AddEscaped((byte)(value & 0xFF));
    }

    /// <summary>A string for a reader's eyes (7.9.2.2): plain where ASCII will do, else UTF-16 with its mark.</summary>
    public void AddText(string text)
    {
        if (Ascii.IsValid(text) && !text.Any(char.IsControl))
        {
            Add("("u8);
            AddAscii(text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("(", "\\(", StringComparison.Ordinal).Replace(")", "\\)", StringComparison.Ordinal));
            Add(")"u8);
            return;
        }

        Add("<FEFF"u8);
        foreach (var unit in text)
        {
            AddHex(unit);
        }

        Add(">"u8);
    }

    // A return on its own would be read as a line feed.
    private void AddEscaped(byte value) => Add(value switch
    {
        (byte)'(' => @"\("u8,
        (byte)')' => @"\)"u8,
        (byte)'\\' => @"\\"u8,
        (byte)'\r' => @"\r"u8,
        _ => [value],
    });

    private static byte Digit(int number) => (byte)('0' + (number % 10));

    private void AddWhole(long value)
    {
        value.TryFormat(_bytes.GetSpan(20), out var length, default, CultureInfo.InvariantCulture);
        _bytes.Advance(length);
    }

    private void AddAscii(string text) =>
        _bytes.Write(Ascii.IsValid(text) ? Encoding.ASCII.GetBytes(text) : throw new ArgumentException($"\"{text}\" is not ASCII", nameof(text)));

    /// <summary>What the compiler turns <c>$"…"</c> into.</summary>
    [InterpolatedStringHandler]
    public readonly ref struct Handler
    {
        private readonly PdfBuffer _buffer;

        [SuppressMessage("Style", "IDE0060", Justification = "the compiler hands both lengths over")]
        public Handler(int literalLength, int formattedCount, PdfBuffer buffer) => _buffer = buffer;

        public void AppendLiteral(string text) => _buffer.AddAscii(text);

        public void AppendFormatted(double value) => _buffer.Add(value);

        public void AppendFormatted(string ascii) => _buffer.AddAscii(ascii);

        public void AppendFormatted(Reference reference)
        {
            _buffer.Add(reference.Number);
            _buffer.Add(" 0 R"u8);
        }
    }
}
