namespace PaperFlock.Flocks.Reading;

/// <summary>Every text of a file that may reach the paper: what the table of keys calls text, wherever it stands.</summary>
public static class PrintedTexts
{
    /// <summary>An error for each text with a character that no typeface has, whatever its key, unless its place has a fault already.</summary>
    /// <param name="firstMissing">The first character of a text that cannot be shown, null when all can; its second argument says whether the text is set as a tag.</param>
    public static IEnumerable<Diagnostic> MissingCharacters(this FlockReading reading, Func<string, bool, string?> firstMissing) =>
        from text in In(reading.Root, FlockKeys.Top)
        let missing = firstMissing(TextValues.Printed(text.Scalar, text.Form), text.Key == "tag")
        where missing is not null
        let wrong = FlockMessages.MissingCharacter(PlaceOf(missing, text.Scalar, reading.Source), missing)
        where !reading.Diagnostics.Any(d => d.Severity == Severity.Error && d.Span == wrong.Span)
        select wrong;

    private static IEnumerable<(string Key, Scalar Scalar, TextForm Form)> In(Node? node, KeyTable table) => node is Mapping mapping
        ? mapping.Entries.Where(e => table.Has(e.Key.Text)).SelectMany(e => In(e.Key.Text, e.Value, table.Key(e.Key.Text).Form))
        : [];

    private static IEnumerable<(string Key, Scalar Scalar, TextForm Form)> In(string key, Node node, Form form) => (form, node) switch
    {
        (EitherForm either, _) => In(key, node, either.One).Concat(In(key, node, either.Other)),
        (TextForm text, Scalar { IsBlank: false } scalar) => [(key, scalar, text)],
        (ListForm list, Sequence sequence) => sequence.Items.SelectMany(item => In(key, item, list.Item)),
        (SectionForm section, _) => In(node, section.Table),
        _ => [],
    };

    /// <summary>A character that is escaped, or put together from a letter and a mark, has the place of its text.</summary>
    private static SourceSpan PlaceOf(string missing, Scalar scalar, SourceText source)
    {
        var (start, end) = scalar.Extent;
        var at = source.Text.IndexOf(missing, start, end - start, StringComparison.Ordinal);
        return at < 0 ? scalar.Span : source.SpanAt(at, missing.Length);
    }
}
