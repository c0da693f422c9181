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
    public void Add(double value)
    {
        // Also true of what is not a number.
        if (!(Math.Abs(value) < int.MaxValue))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "not a number for a page");
        }

        // Figure by figure: a page has thousands of numbers, and a format string would be read for each.
        var thousandths = (long)Math.Round(value * 1000, MidpointRounding.AwayFromZero);
        MakeRoom(LongestNumber);
        if (thousandths < 0)
        {
            _bytes[_count++] = (byte)'-';
            thousandths = -thousandths;
        }

        var (whole, part) = Math.DivRem(thousandths, 1000);
        AddWhole(whole);
        if (part > 0)
        {
            _bytes[_count++] = (byte)'.';
            for (var unit = 100L; part > 0; unit /= 10)
            {
                (var figure, part) = Math.DivRem(part, unit);
                _bytes[_count++] = (byte)('0' + figure);
            }
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
    private void AddEscaped(byte value)
    {
        MakeRoom(2);
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

    private void AddWhole(long number)
    {
        if (number >= 10)
        {
            AddWhole(number / 10);
        }

        _bytes[_count++] = (byte)('0' + (number % 10));
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

        public void AppendFormatted(string ascii) => _buffer.AddAscii(ascii);

        public void AppendFormatted(Reference reference)
        {
            _buffer.Add(reference.Number);
            _buffer.Add(" 0 R"u8);
        }
    }
}
