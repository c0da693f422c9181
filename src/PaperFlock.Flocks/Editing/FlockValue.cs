namespace PaperFlock.Flocks.Editing;

/// <summary>Something to write into a flock file, before it is known where and in which style.</summary>
public abstract record FlockValue
{
    private protected FlockValue()
    {
    }

    /// <summary>A word of the format, a number, a date or a quantity: written without quotes where that can be.</summary>
    /// <exception cref="ArgumentException">It is empty: YAML reads that as nothing written.</exception>
    public static FlockValue Word(string text) => new FlockWord(NotBlank(text), MayNeedQuotes: false);

    /// <summary>A name, a tag, a note: quoted where it would otherwise be read as something else, by this program or by another.</summary>
    /// <exception cref="ArgumentException">It is empty.</exception>
    public static FlockValue Text(string text) => new FlockWord(NotBlank(text), MayNeedQuotes: true);

    public static FlockValue List(params IEnumerable<FlockValue> items) => new FlockList([.. items]);

    /// <summary>Keys with values, in the order they are to be written.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static FlockValue Section(params IEnumerable<(string Key, FlockValue Value)> entries) =>
        new FlockSection([.. entries]) is { Entries.Length: > 0 } section ? section : throw new ArgumentException("A section needs a key.", nameof(entries));

    /// <summary>As it stands after a key's colon, on one line.</summary>
    public string ToYaml() => this is FlockWord word ? ScalarText.Of(word, inFlow: false, quote: null) : ScalarText.Flow(this, json: false);

    /// <returns>Null where nothing is written.</returns>
    internal static FlockValue? Of(Node node) => node switch
    {
        Scalar { IsBlank: false } scalar => scalar.IsPlain ? Word(scalar.Text.Trim(' ')) : Text(scalar.Text),
        Sequence list => List(list.Items.Select(Of).OfType<FlockValue>()),
        Mapping { Entries.IsEmpty: false } section => Section(section.Entries.Where(e => Of(e.Value) is not null).Select(e => (e.Key.Text, Of(e.Value)!))),
        _ => null,
    };

    /// <summary>What a reader of the text should find.</summary>
    internal abstract Node AsNode();

    private static string NotBlank(string text)
    {
        ArgumentException.ThrowIfNullOrEmpty(text);
        return text;
    }
}

internal sealed record FlockWord(string Content, bool MayNeedQuotes) : FlockValue
{
    internal override Node AsNode() => new Scalar(Content, IsPlain: true, SourceSpan.WholeFile);
}

internal sealed record FlockList(ImmutableArray<FlockValue> Items) : FlockValue
{
    internal override Node AsNode() => new Sequence([.. Items.Select(i => i.AsNode())], SourceSpan.WholeFile, IsFlow: true);
}

internal sealed record FlockSection(ImmutableArray<(string Key, FlockValue Value)> Entries) : FlockValue
{
    internal override Node AsNode() =>
        new Mapping([.. Entries.Select(e => new Entry(new Scalar(e.Key, IsPlain: true, SourceSpan.WholeFile), e.Value.AsNode()))], SourceSpan.WholeFile, IsFlow: true);
}
