namespace PaperFlock.Flocks.Reading;

/// <summary>
/// Something written in the file, under the name messages call it by. What it means is read by the <c>As…</c> methods:
/// each gives null after reporting what cannot be read.
/// </summary>
/// <param name="Name">The key; for an item, the key of its list.</param>
/// <param name="Form">What may stand here, by the table of keys.</param>
/// <param name="KeySpan">The key; for an item, the item itself.</param>
internal sealed record Field(string Name, Form Form, SourceSpan KeySpan, Node Value, DiagnosticBag Bag)
{
    public SourceSpan Span => Value.Span;

    /// <summary>What might stand here, to show; null where the table of keys has none.</summary>
    public string? Example { get; init; }

    /// <summary>The form to read by, where the table has that kind for this key.</summary>
    /// <exception cref="ArgumentException">The table says otherwise: a fault of the program.</exception>
    public T As<T>()
        where T : Form => Form.Among<T>();

    /// <summary>Reports what is wrong with it.</summary>
    /// <returns>Nothing in place of a value.</returns>
    public T? Refuse<T>(Diagnostic wrong) => Bag.Refuse<T>(wrong);

    /// <summary>What was read, unless something is wrong with it, which is then reported.</summary>
    /// <returns>Nothing in place of a value that is wrong.</returns>
    public T? Unless<T>(Diagnostic? wrong, T read) => wrong is null ? read : Refuse<T>(wrong);

    public Section? AsSection() => Value switch
    {
        Mapping mapping => Section.Of(mapping, As<SectionForm>().Table, KeySpan, Bag),
        Unreadable => null,
        _ => Refuse<Section>(FlockMessages.NotASection(Span, Name, As<SectionForm>().Table, (Value as Scalar)?.Text)),
    };

    /// <summary>The items of a list, each a field of the list's name; null when it is no list.</summary>
    public IReadOnlyList<Field>? AsItems() => Value switch
    {
        Sequence sequence => [.. sequence.Items.Select(item => new Field(Name, As<ListForm>().Item, item.Span, item, Bag))],
        Unreadable => null,
        _ => Refuse<IReadOnlyList<Field>>(FlockMessages.NotAList(Span, Name, (Value as Scalar)?.Text, (Value as Mapping)?.Entries.FirstOrDefault()?.Key.Text)),
    };

    /// <summary>The sections of a list of them; what is no section is reported and left out.</summary>
    public IReadOnlyList<Section> AsSections() =>
        [.. (AsItems() ?? []).Select(item => item.AsSection()).OfType<Section>()];

    /// <summary>One value, as text; null when it is a list or a section.</summary>
    public Scalar? AsScalar()
    {
        Bag.Add(Value is Mapping or Sequence ? FlockMessages.NotASingleValue(Span, Name) : null);
        return Value as Scalar;
    }

    /// <summary>One value, as text without the blanks round it; null when it is a list or a section.</summary>
    public string? AsWord() => AsScalar()?.Text.Trim(' ');
}
