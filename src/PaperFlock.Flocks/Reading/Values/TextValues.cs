namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Text, and what a place on the paper asks of it.</summary>
internal static class TextValues
{
    /// <summary>A name a card, a chart or a list has room for.</summary>
    public const int LongestName = 40;

    /// <summary>It stands at the foot of every page, beside much else.</summary>
    public const int LongestCode = 6;

    /// <summary>A tag is never broken across lines, so its length is what the narrowest box holds.</summary>
    public const int LongestTag = 20;

    public const int LongestPhone = 30;

    public const int LongestTitle = 60;

    public const int LongestNote = 240;

    /// <summary>One line of text as typed, in composed form (NFC), without the spaces round it.</summary>
    public static string? AsText(this Field field) => field.AsScalar() is { } scalar ? Checked(field, scalar, OneLine(scalar)) : null;

    /// <summary>Text that may run over several lines in the file; on paper it is one.</summary>
    public static string? AsNote(this Field field) => field.AsScalar() is { } scalar ? Checked(field, scalar, JoinedLines(scalar)) : null;

    /// <summary>The text of a value as it is printed, whatever is wrong with it.</summary>
    public static string Printed(Scalar scalar, TextForm form) => form.MayRunOn ? JoinedLines(scalar) : OneLine(scalar);

    private static string OneLine(Scalar scalar) => ComposedText.Of(scalar.Text.Trim(' ', '\t'));

    private static string JoinedLines(Scalar scalar) =>
        ComposedText.Of(string.Join(' ', scalar.Text.Split([' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries)));

    private static string? Checked(Field field, Scalar scalar, string text)
    {
        field.Bag.Add(scalar.DoubtfulRemark is { } remark ? FlockMessages.TakenForRemark(remark, field.Name) : null);
        var ((longest, mayRunOn), length) = (field.As<TextForm>(), text.EnumerateRunes().Count());
        var odd = text.EnumerateRunes().FirstOrDefault(r => Unseen.Is(r) || IsUnprintable(r), new Rune(' '));
        var wrong = Unseen.Is(odd) ? FlockMessages.UnseenCharacter(PlaceOf(odd, scalar), field.Name, odd.Value)
            : odd.Value != ' ' ? FlockMessages.UnprintableText(PlaceOf(odd, scalar), field.Name, odd.Value)
            : string.IsNullOrWhiteSpace(text) ? FlockMessages.UnprintableText(field.Span, field.Name, null)
            // What YAML programs write for nothing; inside quotes it was meant.
            : scalar.IsPlain && text is ("~" or "null" or "Null" or "NULL") ? FlockMessages.NothingWritten(field.Span, field.Name, text)
            // Inside straight quotes they were meant.
            : !mayRunOn && scalar.IsPlain && text is [var first, .., var last] && PastedMarks.Quotes.Contains(first) && PastedMarks.Quotes.Contains(last)
                ? FlockMessages.CurlyQuotes(field.Span, field.Name, text.Trim(PastedMarks.Quotes))
            : length > longest ? FlockMessages.TextTooLong(field.Span, field.Name, length, longest)
            : null;
        return field.Unless(wrong, text);
    }

    /// <summary>The character itself where the value stands in the file as it reads; the value where it is escaped or runs over lines.</summary>
    private static SourceSpan PlaceOf(Rune odd, Scalar scalar)
    {
        var quote = scalar.IsPlain ? 0 : 1;
        return scalar.Span.Length == scalar.Text.Length + (2 * quote)
            ? scalar.Span with { Column = scalar.Span.Column + quote + scalar.Text.IndexOf(odd.ToString(), StringComparison.Ordinal), Length = odd.Utf16SequenceLength }
            : scalar.Span;
    }

    /// <summary>Control characters, other line breaks, and codes that no character has.</summary>
    private static bool IsUnprintable(Rune rune) => Rune.GetUnicodeCategory(rune)
        is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned
        || rune.Value == 0xFFFD;
}
