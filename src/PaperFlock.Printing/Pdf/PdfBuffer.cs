using System.Buffers.Text;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using System.Text;

namespace PaperFlock.Printing.Pdf;

/// <summary>Bytes of a PDF in the making. What is added with <c>$"…"</c> is written as PDF writes it, whatever the culture.</summary>
internal sealed class PdfBuffer
{
    /// <summary>Of a point: finer than any printer sets a dot, and than the layout is asked for anywhere.</summary>
    private const int Thousandths = 1000;

    /// <summary>Longest number there can be, its sign and dot included.</summary>
    private const int LongestNumber = 32;


    // A page of the log has as much.
    private byte[] _bytes = new byte[1 << 14];

    public int Length { get; private set; }

    public ReadOnlySpan<byte> Written => _bytes.AsSpan(0, Length);

    public void Clear() => Length = 0;

    /// <summary>Text of a PDF as it is to stand there: ASCII, with numbers and references between.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "the handler has written into this buffer by then")]
    public void Add([InterpolatedStringHandlerArgument("")] ref Handler text) => _ = text;

    public void Add(ReadOnlySpan<byte> bytes)
    {
        bytes.CopyTo(Room(bytes.Length));
        Length += bytes.Length;
    }

    /// <summary>A number to the nearest thousandth, as short as that can be written (7.3.3).</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none, or far beyond any paper.</exception>
    public void Add(double value)
    {
        // Also true of what is not a number.
        if (!(Math.Abs(value) < int.MaxValue))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "not a number for a page");
        }

        var room = Room(LongestNumber);
        var rest = (long)Math.Round(Math.Abs(value) * Thousandths, MidpointRounding.AwayFromZero);
        var at = 0;
        if (value < 0 && rest > 0)
        {
            room[at++] = (byte)'-';
        }

        var (whole, part) = ((int)(rest / Thousandths), (int)(rest % Thousandths));
        _ = Utf8Formatter.TryFormat(whole, room[at..], out var digits);
        at += digits;
        if (part > 0)
        {
            room[at] = (byte)'.';
            room[at + 1] = (byte)('0' + (part / 100));
            room[at + 2] = (byte)('0' + (part / 10 % 10));
            room[at + 3] = (byte)('0' + (part % 10));
            at += part % 10 > 0 ? 4 : part % 100 > 0 ? 3 : 2;
        }

        Length += at;
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
    public void AddHex(ushort value)
    {
        var room = Room(4);
        for (var i = 3; i >= 0; i--)
        {
            room[i] = "0123456789ABCDEF"u8[value & 0xF];
            value >>= 4;
        }

        Length += 4;
    }

    /// <summary>
    /// Two bytes within a string (7.3.4.2). Half as long as their hexadecimal digits, which takes half the time to compress.
    /// </summary>
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
    private void AddEscaped(byte value)
    {
        var room = Room(2);
        var isSpecial = value is (byte)'(' or (byte)')' or (byte)'\\' or (byte)'\r';
        room[0] = (byte)'\\';
        room[isSpecial ? 1 : 0] = value == '\r' ? (byte)'r' : value;
        Length += isSpecial ? 2 : 1;
    }

    private void AddAscii(string text)
    {
        var room = Room(text.Length);
        _ = Ascii.FromUtf16(text, room, out var written);
        Length += written == text.Length ? written : throw new ArgumentException($"\"{text}\" is not ASCII", nameof(text));
    }

    private Span<byte> Room(int length)
    {
        if (_bytes.Length - Length < length)
        {
            Array.Resize(ref _bytes, Math.Max(_bytes.Length * 2, Length + length));
        }

        return _bytes.AsSpan(Length);
    }

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
