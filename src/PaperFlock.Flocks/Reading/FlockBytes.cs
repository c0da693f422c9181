using System.Buffers;
using System.Text.Unicode;

namespace PaperFlock.Flocks.Reading;

/// <summary>From bytes to text that YAML may see, or a refusal that says what is wrong with the file.</summary>
internal static class FlockBytes
{
    private static readonly SearchValues<char> KeyLetters = SearchValues.Create("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ-");

    /// <summary>The text, lossy where a byte is refused, so that the line can be shown; empty when showing it is no use.</summary>
    public static SourceText Decode(string shownPath, ReadOnlySpan<byte> bytes, DiagnosticBag bag)
    {
        var refused = bytes.Length > FlockReader.MostBytes ? FlockMessages.TooLarge(FlockReader.MostBytes)
            : OtherKind(bytes) is { } kind ? FlockMessages.OtherKindOfFile(kind)
            : IsUtf16(bytes) ? FlockMessages.Utf16()
            : null;
        if (refused is not null)
        {
            bag.Add(refused);
            return new SourceText(shownPath, "");
        }

        if (bytes.StartsWith(Encoding.UTF8.Preamble))
        {
            bytes = bytes[Encoding.UTF8.Preamble.Length..];
        }

        var source = new SourceText(shownPath, Encoding.UTF8.GetString(bytes));
        if (FirstInvalid(bytes) is { } at)
        {
            var place = source.SpanAt(Encoding.UTF8.GetCharCount(bytes[..at]), 1);
            bag.Add(FlockMessages.NotUtf8(place, bytes[at]));
        }

        return source;
    }

    /// <summary>
    /// What YAML does not allow in a text, and the line breaks that a parser counts and an editor does not. Only the
    /// first is reported: a file with one usually has hundreds.
    /// </summary>
    public static void RefuseOddCharacters(SourceText source, DiagnosticBag bag)
    {
        var text = source.Text;
        for (var i = 0; i < text.Length; i++)
        {
            var isPair = char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]);
            if (!isPair && IsOdd(text[i]))
            {
                bag.Add(FlockMessages.ForbiddenCharacter(source.SpanAt(i, 1), text[i]));
                return;
            }

            i += isPair ? 1 : 0;
        }
    }

    /// <summary>
    /// Spaces of other kinds, and what cannot be seen at all, where YAML needs a space: before a line's first word, or after the
    /// dash or the colon of its key. Only the first is reported: whoever pasted one pasted many.
    /// </summary>
    public static void RefuseOddSpaces(SourceText source, DiagnosticBag bag)
    {
        for (var line = 1; line <= source.LineCount; line++)
        {
            var text = source.LineSpan(line);
            var at = text.IndexOfAnyExcept(' ', '-');
            if (at < 0)
            {
                continue;
            }

            if (!IsOddSpace(text[at]))
            {
                var colon = text[at..].IndexOfAnyExcept(KeyLetters);
                at = colon > 0 && text[at + colon] == ':' ? at + colon + 1 : text.Length;
            }

            if (at < text.Length && IsOddSpace(text[at]))
            {
                bag.Add(FlockMessages.OddSpace(source.SpanAt(source.OffsetOf(line) + at, 1), text[at]));
                return;
            }
        }
    }

    private static bool IsOddSpace(char c) => PastedMarks.IsSpace(c) || PastedMarks.IsUnseen(c);

    private static bool IsOdd(char c) =>
        (char.IsControl(c) && c is not ('\t' or '\n' or '\r'))
        || char.IsSurrogate(c)
        || c is '\u2028' or '\u2029' or '\uFEFF' or '\uFFFE' or '\uFFFF';

    /// <summary>What people have in the same folder, by the bytes such files begin with; from memory.</summary>
    private static string? OtherKind(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith("%PDF-"u8) ? "a PDF"
        : bytes.StartsWith("PK\x03\x04"u8) || bytes.StartsWith<byte>([0xD0, 0xCF, 0x11, 0xE0]) ? "a document of a word processor or a spreadsheet"
        : bytes.StartsWith("{\\rtf"u8) ? "a document of a word processor"
        : bytes.StartsWith("<!"u8) || bytes.StartsWith("<html"u8) || bytes.StartsWith("<?xml"u8) ? "a web page or XML"
        : null;

    /// <summary>By its byte order mark, or by every other byte of its beginning being zero.</summary>
    private static bool IsUtf16(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith<byte>([0xFF, 0xFE])
        || bytes.StartsWith<byte>([0xFE, 0xFF])
        || (bytes.Length >= 4 && ((bytes[0] != 0 && bytes[1] == 0 && bytes[2] != 0 && bytes[3] == 0)
            || (bytes[0] == 0 && bytes[1] != 0 && bytes[2] == 0 && bytes[3] != 0)));

    private static int? FirstInvalid(ReadOnlySpan<byte> bytes)
    {
        if (Utf8.IsValid(bytes))
        {
            return null;
        }

        var at = 0;
        while (Rune.DecodeFromUtf8(bytes[at..], out _, out var used) == OperationStatus.Done)
        {
            at += used;
        }

        return at;
    }
}
