namespace PaperFlock.Flocks.Editing;

/// <summary>
/// A flock file opened to be changed: its text, kept to the letter, and the flock it says. A change replaces as few
/// characters as will do. The result is read again, and must say what the old text said but for what was meant; where
/// it does not, the layout is one this editor does not understand, and the change is refused.
/// </summary>
public sealed class FlockFile
{
    private readonly bool _hasByteOrderMark;
    private readonly SourceText _source;
    private readonly Node _root;
    private readonly bool _mayBeWrong;
    private readonly Func<DateTimeZone, LocalDate>? _today;

    private FlockFile(FlockReading reading, bool hasByteOrderMark, bool mayBeWrong, Func<DateTimeZone, LocalDate>? today)
    {
        (Reading, _source, _hasByteOrderMark, _mayBeWrong, _today) = (reading, reading.Source, hasByteOrderMark, mayBeWrong, today);
        _root = reading.Root!;
    }

    /// <exception cref="InvalidOperationException">The file was opened as it is, and has errors.</exception>
    public Flock Flock => Reading.Flock ?? throw new InvalidOperationException("A flock file with errors has no flock.");

    /// <summary>Without errors, but for a file opened as it is; there may be warnings.</summary>
    public FlockReading Reading { get; }

    /// <summary>Without a byte order mark.</summary>
    public string Text => _source.Text;

    /// <param name="shownPath">As messages show it; nothing is opened.</param>
    /// <param name="reading">All that was found, errors too.</param>
    /// <param name="today">The day it is in a time zone: nothing may be written down as seen after it. Null holds nothing against the calendar.</param>
    /// <returns>Null when the file has errors: then nobody can say what a change would do to it.</returns>
    public static FlockFile? Open(string shownPath, ReadOnlySpan<byte> bytes, out FlockReading reading, Func<DateTimeZone, LocalDate>? today = null)
    {
        reading = FlockReader.Read(shownPath, bytes, today);
        return reading.Flock is null ? null : new FlockFile(reading, bytes.StartsWith(Encoding.UTF8.Preamble), mayBeWrong: false, today);
    }

    /// <summary>Opens a file that may have errors, and may have some after a change too: for a form, in which somebody is still typing.</summary>
    /// <inheritdoc cref="Open"/>
    /// <returns>Null when the file is no YAML, so that nobody can say where anything stands.</returns>
    public static FlockFile? OpenAsIs(string shownPath, ReadOnlySpan<byte> bytes, out FlockReading reading, Func<DateTimeZone, LocalDate>? today = null)
    {
        reading = FlockReader.Read(shownPath, bytes, today);
        return reading.Root is null ? null : new FlockFile(reading, bytes.StartsWith(Encoding.UTF8.Preamble), mayBeWrong: true, today);
    }

    /// <summary>Makes all the changes, one after another, or none. The file need only be right after the last one.</summary>
    /// <exception cref="ArgumentException">A change is of a place that is not there.</exception>
    public FlockEdit Apply(params IEnumerable<FlockChange> changes)
    {
        var (source, root) = (_source, _root);
        foreach (var wave in Waves([.. changes]))
        {
            if (wave.Count > 1 && Together(source, root, wave) is { } all)
            {
                (source, root) = all;
                continue;
            }

            foreach (var change in wave)
            {
                var (before, tree) = (source, root);
                var ways = Ways(change, new Layout(source.Text), root);
                if (ways.Select(way => Changed(before, tree, [way], way.Expected)).FirstOrDefault(changed => changed is not null) is not { } next)
                {
                    return new FlockEdit(null, [FlockMessages.CannotEdit(Places.Find(root, change.Section).Span, Describe(change))], source);
                }

                (source, root) = next;
            }
        }

        var bytes = BytesOf(source.Text);
        var file = _mayBeWrong ? OpenAsIs(source.Path, bytes, out var reading, _today) : Open(source.Path, bytes, out reading, _today);
        return new FlockEdit(file, reading.Diagnostics, reading.Source);
    }

    /// <summary>The same file without its remarks, each key on a line of its own: a layout in which any change can be made.</summary>
    public FlockFile Plain() => new(FlockReader.Read(new SourceText(_source.Path, PlainText.Of(_root)), _today), hasByteOrderMark: false, _mayBeWrong, _today);

    /// <summary>Whether a section or a list, right or wrong, is written there.</summary>
    public bool Has(FlockPlace place) => Places.TryFind(_root, place) is Mapping or Sequence;

    /// <summary>Whether anything is written after a key.</summary>
    /// <exception cref="ArgumentException">There is no such section.</exception>
    public bool IsGiven(FlockPlace section, string key) => Entry(section, key) is not (null or Scalar { IsBlank: true });

    /// <summary>What is written for a key, to be written again; null where nothing is.</summary>
    /// <exception cref="ArgumentException">There is no such section.</exception>
    public FlockValue? ValueOf(FlockPlace section, string key) => Entry(section, key) is { } value ? FlockValue.Of(value) : null;

    /// <summary>The items of a list of single values, as written and in the order of the file, which need not be that of the flock; empty where there is no such list.</summary>
    /// <exception cref="ArgumentException">There is no such section.</exception>
    public ImmutableArray<string> ItemsOf(FlockPlace section, string key) =>
        Entry(section, key) is Sequence list ? [.. list.Items.Select(i => i is Scalar scalar ? scalar.Text.Trim(' ') : "")] : [];

    private Node? Entry(FlockPlace section, string key) =>
        Places.Section(_root, section).Entries.FirstOrDefault(e => e.Key.Text == key)?.Value;

    /// <summary>As the file is to lie on the disk, with its byte order mark if it had one.</summary>
    public byte[] ToBytes() => BytesOf(_source.Text);

    private byte[] BytesOf(string text) => [.. _hasByteOrderMark ? Encoding.UTF8.Preamble : [], .. Encoding.UTF8.GetBytes(text)];

    /// <summary>
    /// Changes in their order, gathered where they follow one another and are of keys of items of one list. Those of different items move nothing that another
    /// is about, and do not wait for one another: the first of each item, then the second, and so on.
    /// </summary>
    private static IEnumerable<IReadOnlyList<FlockChange>> Waves(IReadOnlyList<FlockChange> changes)
    {
        for (var at = 0; at < changes.Count;)
        {
            var list = ListOf(changes[at]);
            var run = changes.Skip(at).TakeWhile((change, i) => i == 0 || (list is not null && ListOf(change) == list)).ToList();
            foreach (var round in run.GroupBy(c => c.Section.Index).SelectMany(item => item.Index()).GroupBy(c => c.Index, c => c.Item))
            {
                yield return [.. round];
            }

            at += run.Count;
        }
    }

    /// <summary>The list of whose items a change is of a key; null where it is of something else.</summary>
    private static string? ListOf(FlockChange change) => change is SetKey or ClearKey && change.Section is { Above: { } list, Name: null } ? list.ToString() : null;

    /// <summary>Makes the changes of a wave at once: reading the text again after each would take a flock of 300 ewes a minute.</summary>
    /// <returns>Null when one of them cannot be made in its tidiest way, or two touch.</returns>
    private static (SourceText Source, Node Root)? Together(SourceText source, Node root, IReadOnlyList<FlockChange> wave)
    {
        var (layout, expected, splices) = (new Layout(source.Text), root, new List<Splice>());
        foreach (var change in wave)
        {
            if (Ways(change, layout, expected).FirstOrDefault() is not { } way)
            {
                return null;
            }

            expected = way.Expected;
            splices.Add(way);
        }

        return Changed(source, root, splices, expected);
    }

    /// <param name="splices">All to be made; one that replaces nothing by nothing leaves the text as it is.</param>
    /// <param name="expected">What the changed text should say.</param>
    /// <returns>Null when it does not, or two of them touch.</returns>
    private static (SourceText Source, Node Root)? Changed(SourceText source, Node root, IEnumerable<Splice> splices, Node expected)
    {
        var (text, at) = (new StringBuilder(), 0);
        foreach (var splice in splices.Where(s => s.Start < s.End || s.Text.Length > 0).OrderBy(s => s.Start))
        {
            if (splice.Start < at)
            {
                return null;
            }

            text.Append(source.Text, at, splice.Start - at).Append(splice.Text);
            at = splice.End;
        }

        if (at == 0 && text.Length == 0)
        {
            return (source, root);
        }

        var (changed, bag) = (new SourceText(source.Path, text.Append(source.Text, at, source.Text.Length - at).ToString()), new DiagnosticBag());
        return TreeBuilder.Build(changed, bag) is { } tree && !bag.HasErrors && Meaning.IsSame(tree, expected) ? (changed, tree) : null;
    }

    /// <returns>Ways to make it, the tidiest first, each to be tried in turn; none when the layout leaves no way without touching something else.</returns>
    private static IEnumerable<Splice> Ways(FlockChange change, Layout layout, Node root) => change switch
    {
        SetKey c => Only(new SectionChange(layout, root, c.Section).Set(c.Key, c.Value)),
        ClearKey c => new SectionChange(layout, root, c.Section).Clear(c.Key),
        AddToList c => Only(new ListChange(layout, root, c.Section, c.Key).Add(c.Items)),
        RemoveFromList c => new ListChange(layout, root, c.Section, c.Key).Remove(c.Index),
        _ => throw new ArgumentOutOfRangeException(nameof(change)),
    };

    private static IEnumerable<Splice> Only(Splice? way) => way is null ? [] : [way];

    /// <summary>The line a person would write.</summary>
    private static string Describe(FlockChange change) => change switch
    {
        SetKey c => $"{c.Key}: {NodeText.Flow(c.Value.Node)}",
        AddToList { Items: [var only] } c => $"{c.Key}: {NodeText.Flow(FlockValue.List(only).Node)}",
        _ => $"{change.Key}:",
    };
}
