namespace PaperFlock.Flocks.Reading;

/// <summary>One mapping of the file seen through the table of keys it may hold. Keys it may not hold are reported when it is made.</summary>
internal sealed class Section
{
    private readonly Dictionary<string, Entry> _entries = new(StringComparer.Ordinal);
    private readonly HashSet<string> _mistyped = new(StringComparer.Ordinal);
    private readonly KeyTable _table;

    private Section(KeyTable table, SourceSpan span, DiagnosticBag bag, bool isThere) =>
        (_table, Span, Bag, IsThere) = (table, span, bag, isThere);

    /// <summary>The key that opens it, the first key of a list's entry, or the whole file: where something missing is reported.</summary>
    public SourceSpan Span { get; }

    public DiagnosticBag Bag { get; }

    /// <summary>False for <see cref="Absent(KeyTable, DiagnosticBag)"/>.</summary>
    public bool IsThere { get; }

    /// <summary>A comma has cut a value in it, so that what is left of that value is not what was meant; reported.</summary>
    public bool IsCutByComma { get; private set; }

    public static Section Of(Mapping mapping, KeyTable table, SourceSpan span, DiagnosticBag bag)
    {
        var section = new Section(table, span, bag, isThere: true);
        for (var at = 0; at < mapping.Entries.Length; at++)
        {
            var entry = mapping.Entries[at];
            if (table.Has(entry.Key.Text))
            {
                section._entries.Add(entry.Key.Text, entry);
            }
            else if (mapping.IsFlow && at > 0 && CutByComma(mapping.Entries[at - 1].Value, entry) is { } whole)
            {
                bag.Add(FlockMessages.CutByComma(entry.Key.Span, whole.Text, whole.IsNumber));
                section.IsCutByComma = true;
            }
            else
            {
                var meant = table.Meant(entry.Key.Text);
                bag.Add(FlockMessages.UnknownKey(entry.Key.Span, entry.Key.Text, table, meant));
                section._mistyped.Add(meant ?? "");
            }
        }

        return section;
    }

    /// <summary>The value that a comma inside braces has cut in two, the second half a key with nothing after it; null where it is no such thing.</summary>
    private static (string Text, bool IsNumber)? CutByComma(Node before, Entry after)
    {
        if (before is not Scalar { IsPlain: true, Text: [.., var last] first } || after is not { Key: { IsPlain: true, Text: [var next, ..] second }, Value: Scalar { IsBlank: true } })
        {
            return null;
        }

        var isNumber = char.IsAsciiDigit(last) && char.IsAsciiDigit(next);
        return (isNumber ? $"{first}.{second}" : $"\"{$"{first}, {second}".Trim(PastedMarks.Quotes)}\"", isNumber);
    }

    /// <summary>Stands for a section that is not in the file, or not as it should be and reported: nothing in it is given, and nothing in it is missed.</summary>
    public static Section Absent(KeyTable table, DiagnosticBag bag) => new(table, SourceSpan.WholeFile, bag, isThere: false);

    /// <summary>Whether there is a key that is a slip of this one; reported.</summary>
    public bool IsMistyped(string key) => _mistyped.Contains(key);

    /// <summary>Whether anything at all was written for the key, usable or not.</summary>
    public bool IsGiven(string key) => Lookup(key) is { Value: not Scalar { IsBlank: true } };

    /// <summary>What was written for the key; null when nothing was, or nothing that can be used and that is reported.</summary>
    public Field? Find(string key) =>
        Lookup(key) is { Value: not (Scalar { IsBlank: true } or Unreadable) } entry
            ? new Field(key, _table.Key(key).Form, entry.Key.Span, entry.Value, Bag) { Example = _table.Key(key).Example }
            : null;

    /// <summary>As <see cref="Find"/>, and reports a key that is not there or has nothing after its colon.</summary>
    public Field? Require(string key)
    {
        // A mistyped key has been reported as such; that the right one is missing is the same fault.
        if (IsThere && !IsGiven(key) && !IsMistyped(key))
        {
            var entry = Lookup(key);
            Bag.Add(FlockMessages.Missing(entry?.Key.Span ?? Span, key, _table, entry is not null, entry?.Value is Scalar { DoubtfulRemark: not null }));
        }

        return Find(key);
    }

    /// <summary>The section below the key, or one in which nothing is given.</summary>
    public Section Below(string key) => Find(key)?.AsSection() ?? Absent(key);

    /// <summary>The sections of the list under the key.</summary>
    public IReadOnlyList<Section> ListBelow(string key) => Find(key)?.AsSections() ?? [];

    public Section RequireBelow(string key) => Require(key)?.AsSection() ?? Absent(key);

    /// <summary>Those of the keys that something was written for.</summary>
    public IEnumerable<Field> FindAll(params string[] keys) => keys.Select(Find).OfType<Field>();

    /// <summary>Reports each of the keys that is given, and means nothing here.</summary>
    /// <param name="because">Such as <c>without `lambed`</c>.</param>
    public void RefuseGiven(string because, string advice, params string[] keys) =>
        Bag.AddRange(FindAll(keys).Select(field => FlockMessages.DoesNotApply(field.KeySpan, field.Name, because, advice)));

    /// <summary>Keys of the table that say one thing, and are given.</summary>
    public int CountOfAlternatives => _table.ExactlyOneOf.Count(IsGiven);

    /// <summary>Whether a key of the file is a slip of one of those; reported.</summary>
    public bool IsAlternativeMistyped => _table.ExactlyOneOf.Any(IsMistyped);

    private Section Absent(string key) => Absent(_table.Key(key).Form.Among<SectionForm>().Table, Bag);

    private Entry? Lookup(string key) => _entries.GetValueOrDefault(_table.Key(key).Name);
}
