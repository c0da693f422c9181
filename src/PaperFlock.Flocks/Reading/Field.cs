using PaperFlock.Flocks.Reading.Yaml;

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

    public Section? AsSection()
    {
        var table = As<SectionForm>().Table;
        switch (Value)
        {
            case Mapping mapping:
                return Section.Of(mapping, table, KeySpan, Bag);
            case Unreadable:
                return null;
            default:
                Bag.Add(FlockMessages.NotASection(Span, Name, table, (Value as Scalar)?.Text));
                return null;
        }
    }

    /// <summary>The items of a list, each a field of the list's name; null when it is no list.</summary>
    public IReadOnlyList<Field>? AsItems()
    {
        switch (Value)
        {
            case Sequence sequence:
                return [.. sequence.Items.Select(item => new Field(Name, As<ListForm>().Item, item.Span, item, Bag))];
            case Unreadable:
                return null;
            default:
                Bag.Add(FlockMessages.NotAList(Span, Name, (Value as Scalar)?.Text, (Value as Mapping)?.Entries.FirstOrDefault()?.Key.Text));
                return null;
        }
    }

    /// <summary>The sections of a list of them; what is no section is reported and left out.</summary>
    public IReadOnlyList<Section> AsSections() =>
        [.. (AsItems() ?? []).Select(item => item.AsSection()).OfType<Section>()];

    /// <summary>One value, as text; null when it is a list or a section.</summary>
    public Scalar? AsScalar()
    {
        if (Value is Mapping or Sequence)
        {
            Bag.Add(FlockMessages.NotASingleValue(Span, Name));
        }

        return Value as Scalar;
    }
}
