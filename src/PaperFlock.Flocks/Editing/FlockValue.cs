namespace PaperFlock.Flocks.Editing;

/// <summary>Something to write into a flock file, before it is known where and in which style.</summary>
public sealed record FlockValue
{
    private FlockValue(Node node) => Node = node;

    /// <summary>What a reader of the text should find. A scalar that is not plain is a text, quoted where it would otherwise be read as something else.</summary>
    internal Node Node { get; }

    /// <summary>A word of the format, a number, a date or a quantity: written without quotes where that can be.</summary>
    /// <exception cref="ArgumentException">It is empty: YAML reads that as nothing written.</exception>
    public static FlockValue Word(string text) => Single(text, isPlain: true);

    /// <summary>A name, a tag, a note: quoted where it would otherwise be read as something else, by this program or by another.</summary>
    /// <exception cref="ArgumentException">It is empty.</exception>
    public static FlockValue Text(string text) => Single(text, isPlain: false);

    public static FlockValue List(params IEnumerable<FlockValue> items) => new(new Sequence([.. items.Select(i => i.Node)], default, IsFlow: true));

    /// <summary>Keys with values, in the order they are to be written.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static FlockValue Section(params IEnumerable<(string Key, FlockValue Value)> entries)
    {
        ImmutableArray<Entry> all = [.. entries.Select(e => new Entry(new Scalar(e.Key, IsPlain: true, default), e.Value.Node))];
        return all.IsEmpty ? throw new ArgumentException("A section needs a key.", nameof(entries)) : new(new Mapping(all, default, IsFlow: true));
    }

    /// <summary>As it stands after a key's colon, on one line.</summary>
    public string ToYaml() => NodeText.Block(Node);

    /// <returns>Null where nothing is written.</returns>
    internal static FlockValue? Of(Node node) => node switch
    {
        Scalar { IsBlank: false } scalar => scalar.IsPlain ? Word(scalar.Text.Trim(' ')) : Text(scalar.Text),
        Sequence list => List(list.Items.Select(Of).OfType<FlockValue>()),
        Mapping { Entries.IsEmpty: false } section => Section(section.Entries.Where(e => Of(e.Value) is not null).Select(e => (e.Key.Text, Of(e.Value)!))),
        _ => null,
    };

    private static FlockValue Single(string text, bool isPlain)
    {
        ArgumentException.ThrowIfNullOrEmpty(text);
        return new(new Scalar(text, isPlain, default));
    }
}
