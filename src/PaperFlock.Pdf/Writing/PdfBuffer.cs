using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;

namespace PaperFlock.Pdf.Writing;

/// <summary>Bytes of a PDF in the making. What is added with <c>$"…"</c> is written as PDF writes it, whatever the culture.</summary>
internal sealed class PdfBuffer
{
    /// <summary>A sign, ten figures, a point and three more.</summary>
    private const int LongestNumber = 15;

    private byte[] _bytes = new byte[1024];
    private int _count;

    public ReadOnlySpan<byte> Written => _bytes.AsSpan(0, _count);

    public void Clear() => _count = 0;

    /// <summary>Text of a PDF as it is to stand there: ASCII, with numbers and references between.</summary>
    [SuppressMessage("Performance", "CA1822", Justification = "the handler has written into this buffer by then")]
    public void Add([InterpolatedStringHandlerArgument("")] ref Handler text) => _ = text;

    public void Add(ReadOnlySpan<byte> bytes)
    {
        MakeRoom(bytes.Length);
        bytes.CopyTo(_bytes.AsSpan(_count));
        _count += bytes.Length;
    }

    /// <summary>A number to the nearest thousandth of a point, as short as that can be written (7.3.3): finer than any printer sets a dot.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none, or far beyond any paper.</exception>
    public void Add(double value) => AddRounded(value, 1000, 3);

    /// <summary>The same to the nearest tenth, for drawings: a printer's dot is hardly smaller, and they have most of the numbers there are.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none, or far beyond any paper.</exception>
    public void AddTenths(double value) => AddRounded(value, 10, 1);

    public void Add(int value) => AddFigures(value, 0);

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
        MakeRoom(4);
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
        if (value is (byte)'(' or (byte)')' or (byte)'\\' or (byte)'\r')
        {
            _bytes[_count++] = (byte)'\\';
        }

        _bytes[_count++] = value == (byte)'\r' ? (byte)'r' : value;
    }

    private void AddAscii(string text)
    {
        MakeRoom(text.Length);
        foreach (var c in text)
        {
            _bytes[_count++] = char.IsAscii(c) ? (byte)c : throw new ArgumentException($"\"{text}\" is not ASCII", nameof(text));
        }
    }

    private void AddRounded(double value, int parts, int decimals)
    {
        // Also true of what is not a number.
        if (!(Math.Abs(value) < int.MaxValue))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "not a number for a page");
        }

        AddFigures((long)Math.Round(value * parts, MidpointRounding.AwayFromZero), decimals);
    }

    /// <summary>From the last figure to the first: a page has thousands of numbers, and a format string would be read for each.</summary>
    /// <param name="decimals">So many of the figures stand behind a point, without the noughts they end with.</param>
    private void AddFigures(long figures, int decimals)
    {
        Span<byte> written = stackalloc byte[LongestNumber];
        var first = LongestNumber;
        var left = Math.Abs(figures);
        for (var place = -decimals; place <= 0 || left > 0; place++, left /= 10)
        {
            if (place == 0 && first < LongestNumber)
            {
                written[--first] = (byte)'.';
            }

            if (place >= 0 || left % 10 > 0 || first < LongestNumber)
            {
                written[--first] = (byte)('0' + (left % 10));
            }
        }

        if (figures < 0)
        {
            written[--first] = (byte)'-';
        }

        Add(written[first..]);
    }

    private void MakeRoom(int more)
    {
        if (_count + more > _bytes.Length)
        {
            Array.Resize(ref _bytes, Math.Max(2 * _bytes.Length, _count + more));
        }
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

        public void AppendFormatted(int value) => _buffer.Add(value);

        public void AppendFormatted(string ascii) => _buffer.AddAscii(ascii);

        public void AppendFormatted(Reference reference)
        {
            _buffer.Add(reference.Number);
            _buffer.Add(" 0 R"u8);
        }
    }
}
