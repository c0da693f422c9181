namespace PaperFlock.Flocks.Editing;

/// <summary>Changes of the keys of one section.</summary>
/// <exception cref="ArgumentException">There is no such section.</exception>
internal sealed class SectionChange(Layout layout, Node root, FlockPlace place)
{
    private readonly Mapping _section = Places.Section(root, place);

    /// <summary>A file of another program may be JSON, which is YAML too, and stays JSON.</summary>
    private bool IsJson => _section.IsFlow && !_section.Entries.IsEmpty && _section.Entries.All(e => layout.Text[e.Key.Extent.Start] == '"');

    public Splice? Set(string key, FlockValue value) =>
        IndexOf(key) is var at && at < 0
            ? Insert(key, value)
            : Layout.IsUnwritten(_section.Entries[at].Value) ? Fill(at, value) : Replace(at, value);

    public IEnumerable<Splice> Clear(string key)
    {
        var at = IndexOf(key);
        if (at < 0)
        {
            return [new Splice(0, 0, "", root)];
        }

        // A line taken away may let a block of text above it run on into a comment: then the key stays, without its value.
        var entry = _section.Entries[at];
        Splice?[] ways = [WholeLines(at, entry), FromBraces(at, entry), Layout.IsUnwritten(entry.Value) ? new Splice(0, 0, "", root) : Blank(at, entry)];
        return ways.OfType<Splice>();
    }

    private int IndexOf(string key) => _section.Entries.ToList().FindIndex(e => e.Key.Text == key);

    private Splice? Fill(int at, FlockValue value)
    {
        var (entry, written) = (_section.Entries[at], InLine(value));
        var key = entry.Key.Extent.End;
        var (from, text) = layout.ColonOf(entry) is not { } colon ? (key, _section.IsFlow ? $": {written}" : $"{layout.BreakAt(key)}{layout.IndentOf(_section.Extent.Start)}: {written}")
            // One space may stand there already.
            : layout.Text.AsSpan(colon).StartsWith(": ") && colon + 2 == layout.LineEnd(colon) ? (colon + 2, written)
            : (colon + 1, $" {written}");
        return new Splice(from, from, text, With(at, value.Node));
    }

    private Splice? Replace(int at, FlockValue value)
    {
        var old = _section.Entries[at].Value;
        if (old is Scalar && value.Node is Scalar word)
        {
            if (layout.IsBlockScalar(old))
            {
                var comment = BlockComment(old.Extent.Start);
                return new Splice(old.Extent.Start, layout.EndOf(old), $"{InLine(value)}{comment}", With(at, value.Node));
            }

            var first = layout.Text[old.Extent.Start];
            var quote = first is '"' or '\'' ? first : (char?)null;
            return new Splice(old.Extent.Start, old.Extent.End, NodeText.Of(word, _section.IsFlow, quote), With(at, word));
        }

        // A list or a section may hold comments, and those are not ours to throw away.
        var from = (layout.ColonOf(_section.Entries[at]) ?? old.Extent.Start) + 1;
        var end = layout.EndOf(old);
        return layout.Text.AsSpan(from, end - from).Contains('#') ? null : new Splice(from, end, $" {InLine(value)}", With(at, value.Node));
    }

    /// <summary>A comment may stand after the mark that opens a block; with the blanks before it, or empty.</summary>
    private string BlockComment(int mark)
    {
        var line = layout.Text[mark..layout.LineEnd(mark)];
        var at = line.IndexOf('#', StringComparison.Ordinal);
        return at < 0 ? "" : line[line[..at].TrimEnd(' ', '\t').Length..].TrimEnd(' ', '\t');
    }

    private Splice? Insert(string key, FlockValue value)
    {
        var after = Before(key);
        var entries = _section.Entries.Insert(after + 1, new Entry(new Scalar(key, IsPlain: true, default), value.Node));
        var expected = Places.With(root, place, _section with { Entries = entries });
        var end = after < 0 ? _section.Extent.Start + 1 : layout.EndOf(_section.Entries[after]);
        if (!_section.IsFlow)
        {
            var line = layout.LineEnd(end);
            return layout.IsRestOfLineFree(end)
                ? new Splice(line, line, $"{layout.BreakAt(end)}{Indent()}{key}: {InLine(value)}", expected)
                : null;
        }

        var written = $"{NodeText.Key(key, IsJson)}: {InLine(value)}";
        if (after < 0)
        {
            return new Splice(end, end, written, expected);
        }

        // One pair in square brackets is a section without braces, and room for one pair only.
        return layout.Text[_section.Extent.Start] == '{'
            ? new Splice(end, end, $", {written}", expected)
            : new Splice(_section.Extent.Start, end, $"{{{layout.Text[_section.Extent.Start..end]}, {written}}}", expected);
    }

    /// <summary>The entry a new key goes after: the last of those that come before it in the table of keys, else the last of all; -1 when there is none.</summary>
    private int Before(string key)
    {
        var order = FlockKeys.All.FirstOrDefault(t => t.Path == PathOf(place))?.Keys.Select(k => k.Name).ToList() ?? [];
        return order.Take(order.IndexOf(key)).Reverse().Select(IndexOf).FirstOrDefault(at => at >= 0, _section.Entries.Length - 1);
    }

    private static string PathOf(FlockPlace place) => place switch
    {
        { Above: null } => "",
        { Name: null } => $"{PathOf(place.Above)}[]",
        _ => $"{PathOf(place.Above)}.{place.Name}".TrimStart('.'),
    };

    /// <summary>That of a key that begins a line of this section, else blanks as wide as the first key stands from the margin.</summary>
    private string Indent()
    {
        var lines = _section.Entries.Skip(1).Select(e => e.Key.Extent.Start).Where(layout.BeginsItsLine);
        return lines.Any() ? layout.Text[layout.LineStart(lines.First())..lines.First()] : layout.IndentOf(_section.Extent.Start);
    }

    /// <summary>The lines of an entry that has them to itself; not the first of a list's entry, which has the dash before it.</summary>
    private Splice? WholeLines(int at, Entry entry)
    {
        var (start, end) = (entry.Key.Extent.Start, layout.EndOf(entry));
        var line = layout.LineStart(start);
        var isAlone = !_section.IsFlow && layout.BeginsItsLine(start) && layout.IsBlank(end, layout.LineEnd(end)) && _section.Entries.Length > 1;
        if (!isAlone || layout.Text.AsSpan(start, end - start).Contains('#'))
        {
            return null;
        }

        var next = layout.NextLine(end);
        // The last line of a file that ends without a break: the break before it goes instead.
        return next == layout.LineEnd(end) && line > 0
            ? new Splice(layout.LineEnd(EndOfLineBefore(line)), next, "", Without(at))
            : new Splice(line, next, "", Without(at));
    }

    private int EndOfLineBefore(int line)
    {
        var end = line - 1;
        return end > 0 && layout.Text[end] == '\n' && layout.Text[end - 1] == '\r' ? end - 1 : end;
    }

    private Splice? FromBraces(int at, Entry entry)
    {
        if (!_section.IsFlow || _section.Entries.Length < 2)
        {
            return null;
        }

        var (from, to) = at > 0
            ? (layout.EndOf(_section.Entries[at - 1]), layout.EndOf(entry))
            : (entry.Key.Extent.Start, _section.Entries[1].Key.Extent.Start);
        var gone = layout.Text.AsSpan(from, to - from);
        // A key alone with its colon needs a space before what follows.
        var space = at > 0 && Layout.IsUnwritten(_section.Entries[at - 1].Value) ? " " : "";
        return gone.ContainsAny("#\r\n") ? null : new Splice(from, to, space, Without(at));
    }

    /// <summary>Leaves the key with nothing after its colon, which reads as left out.</summary>
    private Splice? Blank(int at, Entry entry)
    {
        var (from, end) = (entry.Value.Extent.Start, layout.EndOf(entry.Value));
        var comment = layout.IsBlockScalar(entry.Value) ? BlockComment(from) : "";
        return comment.Length == 0 && entry.Value is not Scalar && layout.Text.AsSpan(from, end - from).Contains('#')
            ? null
            : new Splice(from, end, comment, With(at, new Scalar("", IsPlain: true, default)));
    }

    private string InLine(FlockValue value) =>
        _section.IsFlow ? NodeText.Flow(value.Node, IsJson) : value.ToYaml();

    private Node With(int at, Node value) =>
        Places.With(root, place, _section with { Entries = _section.Entries.SetItem(at, _section.Entries[at] with { Value = value }) });

    private Node Without(int at) => Places.With(root, place, _section with { Entries = _section.Entries.RemoveAt(at) });
}
