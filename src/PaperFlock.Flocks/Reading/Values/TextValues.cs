using System.Globalization;
using System.Text;
using PaperFlock.Flocks.Reading.Yaml;

namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Text, and what a place on the paper asks of it.</summary>
internal static class TextValues
{
    /// <summary>A name a card, a chart or a list has room for.</summary>
    public const int LongestName = 40;

    /// <summary>A tag is never broken across lines, so its length is what the narrowest box holds.</summary>
    public const int LongestTag = 20;

    public const int LongestPhone = 30;

    public const int LongestTitle = 60;

    public const int LongestNote = 240;

    /// <summary>One line of text as typed, without the spaces round it.</summary>
    public static string? AsText(this Field field) =>
        field.AsScalar() is { } scalar ? Checked(field, scalar, scalar.Text.Trim(' ', '\t')) : null;

    /// <summary>Text that may run over several lines in the file; on paper it is one.</summary>
    public static string? AsNote(this Field field) =>
        field.AsScalar() is { } scalar
            ? Checked(field, scalar, string.Join(' ', scalar.Text.Split([' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries)))
            : null;

    private static string? Checked(Field field, Scalar scalar, string text)
    {
        if (scalar.DoubtfulRemark is { } remark)
        {
            field.Bag.Add(FlockMessages.TakenForRemark(remark, field.Name));
        }

        if (text.EnumerateRunes().FirstOrDefault(IsUnprintable, new Rune(' ')) is { Value: not ' ' } odd)
        {
            field.Bag.Add(FlockMessages.UnprintableText(field.Span, field.Name, odd.Value));
            return null;
        }

        if (string.IsNullOrWhiteSpace(text))
        {
            field.Bag.Add(FlockMessages.UnprintableText(field.Span, field.Name, null));
            return null;
        }

        var (longest, mayRunOn) = field.As<TextForm>();
        // Inside straight quotes they were meant.
        if (!mayRunOn && scalar.IsPlain && text is [var first, .., var last] && PastedMarks.Quotes.Contains(first) && PastedMarks.Quotes.Contains(last))
        {
            field.Bag.Add(FlockMessages.CurlyQuotes(field.Span, field.Name, text.Trim(PastedMarks.Quotes)));
            return null;
        }

        var length = text.EnumerateRunes().Count();
        if (length > longest)
        {
            field.Bag.Add(FlockMessages.TextTooLong(field.Span, field.Name, length, longest));
            return null;
        }

        return text;
    }

    /// <summary>Control characters, other line breaks, and marks that turn the direction of writing or cannot be seen.</summary>
    private static bool IsUnprintable(Rune rune) => Rune.GetUnicodeCategory(rune)
        is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned
        || rune.Value is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069) or 0xFEFF or 0xFFFD;
}
