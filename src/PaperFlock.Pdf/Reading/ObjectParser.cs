using System.Text;
using PaperFlock.Pdf.Writing;

namespace PaperFlock.Pdf.Reading;

/// <summary>
/// Reads the objects that our own files hold, by ISO 32000-1, 7.3: a dictionary is a <see cref="Dictionary{TKey,TValue}"/> of name and value, an array a list,
/// a name a <see cref="PdfName"/>, a string a <see cref="string"/>, a whole number a <see cref="long"/>, a reference a <see cref="Reference"/>; anything else a null.
/// </summary>
/// <exception cref="InvalidDataException">What stands there is nothing of the kind.</exception>
internal sealed class ObjectParser(ReadOnlyMemory<byte> file, int start)
{
    /// <summary>Nothing of ours is nested deeper; a file that is would be there to break its reader.</summary>
    private const int Deepest = 16;

    private int _at = start;
    private int _depth;

    public int At => _at;

    public object? Value()
    {
        SkipSpace();
        if (Takes("<<"u8))
        {
            return Nested(Dictionary);
        }

        if (Takes("["u8))
        {
            return Nested(List);
        }

        return Takes("/"u8) ? new PdfName(Word()) : Takes("("u8) ? Literal() : Takes("<"u8) ? Hexadecimal() : Number();
    }

    /// <summary>A word that must stand here, after any space.</summary>
    public void Expect(ReadOnlySpan<byte> word)
    {
        SkipSpace();
        if (!Takes(word))
        {
            throw Damaged();
        }
    }

    public long Whole() => Value() is long number ? number : throw Damaged();

    public static InvalidDataException Damaged() => new("the PDF is damaged");

    private object Nested(Func<object> read)
    {
        if (++_depth > Deepest)
        {
            throw Damaged();
        }

        var value = read();
        _depth--;
        return value;
    }

    private Dictionary<string, object?> Dictionary()
    {
        var entries = new Dictionary<string, object?>(StringComparer.Ordinal);
        for (SkipSpace(); !Takes(">>"u8); SkipSpace())
        {
            var name = Value() is PdfName key ? key.Name : throw Damaged();
            entries[name] = Value();
        }

        return entries;
    }

    private List<object?> List()
    {
        var values = new List<object?>();
        for (SkipSpace(); !Takes("]"u8); SkipSpace())
        {
            values.Add(Value());
        }

        return values;
    }

    /// <summary>A reference begins as a number does: 12 0 R.</summary>
    private object? Number()
    {
        var word = Word();
        if (!long.TryParse(word, out var number))
        {
            return word.Length > 0 ? null : throw Damaged();
        }

        var after = _at;
        if (number is > 0 and <= int.MaxValue && Takes(" 0 R"u8))
        {
            return new Reference((int)number);
        }

        _at = after;
        return number;
    }

    private string Word()
    {
        var begin = _at;
        while (_at < file.Length && !IsSpace(file.Span[_at]) && !"()<>[]{}/%"u8.Contains(file.Span[_at]))
        {
            _at++;
        }

        return Encoding.Latin1.GetString(file.Span[begin.._at]);
    }

    private string Literal()
    {
        var text = new StringBuilder();
        while (_at < file.Length && file.Span[_at] != ')')
        {
            if (file.Span[_at] == '\\')
            {
                _at++;
            }

            text.Append(_at < file.Length ? (char)file.Span[_at++] : throw Damaged());
        }

        Expect(")"u8);
        return text.ToString();
    }

    private string Hexadecimal()
    {
        var digits = Word();
        Expect(">"u8);
        try
        {
            var bytes = Convert.FromHexString(digits);
            return bytes is [0xFE, 0xFF, ..] ? Encoding.BigEndianUnicode.GetString(bytes.AsSpan(2)) : Encoding.Latin1.GetString(bytes);
        }
        catch (FormatException)
        {
            throw Damaged();
        }
    }

    private void SkipSpace()
    {
        while (_at < file.Length && IsSpace(file.Span[_at]))
        {
            _at++;
        }
    }

    private bool Takes(ReadOnlySpan<byte> word)
    {
        var takes = file.Span[Math.Min(_at, file.Length)..].StartsWith(word);
        _at += takes ? word.Length : 0;
        return takes;
    }

    private static bool IsSpace(byte value) => value is (byte)' ' or (byte)'\n' or (byte)'\r' or (byte)'\t';
}
