namespace PaperFlock.Flocks.Editing;

/// <summary>Changes of the items of one list.</summary>
/// <exception cref="ArgumentException">There is no such section.</exception>
internal sealed class ListChange(Layout layout, Node root, FlockPlace section, string key)
{
    private readonly Sequence? _list = Places.Section(root, section).Entries.FirstOrDefault(e => e.Key.Text == key)?.Value as Sequence;

    private FlockPlace Place => section.Key(key);

    public Splice? Add(ImmutableArray<FlockValue> items)
    {
        if (_list is null)
        {
            return new SectionChange(layout, root, section).Set(key, FlockValue.List(items));
        }

        var expected = Places.With(root, Place, _list with { Items = _list.Items.AddRange(items.Select(i => i.Node)) });
        return items.IsEmpty ? new Splice(0, 0, "", root) : _list.IsFlow ? InBrackets(_list, items, expected) : UnderDashes(_list, items, expected);
    }

    /// <exception cref="ArgumentException">There is no such item.</exception>
    public IEnumerable<Splice> Remove(int index)
    {
        var (list, old) = Item(index);
        var withKey = list.Items.Length == 1 ? new SectionChange(layout, root, section).Clear(key) : [];

        // Without its only dash a list is a key with nothing after its colon.
        Node left = list.IsFlow || list.Items.Length > 1 ? list with { Items = list.Items.RemoveAt(index) } : new Scalar("", IsPlain: true, default);
        var expected = Places.With(root, Place, left);
        var alone = list.IsFlow ? RemoveFromBrackets(list, index, expected) : RemoveDash(old, expected);
        return alone is null ? withKey : withKey.Append(alone);
    }

    private (Sequence List, Node Item) Item(int index) =>
        _list is { } list && index >= 0 && index < list.Items.Length
            ? (list, list.Items[index])
            : throw new ArgumentException($"There is no item {index} in `{Place}`.", nameof(index));

    private Splice InBrackets(Sequence list, ImmutableArray<FlockValue> items, Node expected)
    {
        var isJson = list.Items.Any(i => i is Mapping { IsFlow: true } m && m.Entries.All(e => layout.Text[e.Key.Extent.Start] == '"'))
            || (list.Items.Length > 0 && list.Items.All(i => i is Scalar s && layout.Text[s.Extent.Start] == '"'));
        var written = items.Select(i => NodeText.Flow(i.Node, isJson)).ToList();
        if (list.Items.IsEmpty)
        {
            var start = list.Extent.Start + 1;
            return new Splice(start, start, string.Join(", ", written), expected);
        }

        // Sections that stand a line each go on so; a comment after the last one stays on its line.
        var last = list.Items[^1];
        var end = layout.EndOf(last);
        if (last is Mapping && layout.BeginsItsLine(last.Extent.Start) && layout.IsRestOfLineFree(end))
        {
            var line = layout.LineEnd(end);
            var separator = layout.BreakAt(end) + layout.Text[layout.LineStart(last.Extent.Start)..last.Extent.Start];
            return new Splice(end, line, $",{layout.Text[end..line]}{string.Concat(separator, string.Join("," + separator, written))}", expected);
        }

        return new Splice(end, end, string.Concat(written.Select(w => ", " + w)), expected);
    }

    private Splice? UnderDashes(Sequence list, ImmutableArray<FlockValue> items, Node expected)
    {
        var last = list.Items[^1];
        var end = layout.EndOf(last);
        if (!layout.IsRestOfLineFree(end))
        {
            return null;
        }

        var dash = layout.IndentOf(list.Extent.Start);
        var gap = Gap(last);
        var newLine = layout.BreakAt(end);
        var between = items[0].Node is Mapping && HasEmptyLineBefore(last) ? newLine : "";
        var at = items[0].Node is Mapping ? AfterComments(end, dash.Length) : layout.LineEnd(end);
        var written = items.Select(i => $"{between}{newLine}{dash}-{gap}{Item(i.Node, dash + " " + gap, newLine, last is Mapping { IsFlow: true })}");
        return new Splice(at, at, string.Concat(written), expected);
    }

    private static string Item(Node item, string indent, string newLine, bool inBraces) => item is Mapping section && !inBraces
        ? string.Join(newLine + indent, section.Entries.Select(e => $"{NodeText.Key(e.Key.Text)}: {NodeText.Block(e.Value)}"))
        : NodeText.Block(item);

    /// <summary>The blanks between a dash and what follows it on its line.</summary>
    private string Gap(Node item)
    {
        var start = item.Extent.Start;
        var line = layout.LineStart(start);
        var dash = layout.Text.AsSpan(line, start - line).TrimEnd(" \t").Length - 1;
        return dash >= 0 && layout.Text[line + dash] == '-' && !layout.Text.AsSpan(line + dash, start - line - dash).Contains('\t')
            ? layout.Text[(line + dash + 1)..start]
            : " ";
    }

    private bool HasEmptyLineBefore(Node item)
    {
        var line = layout.LineStart(item.Extent.Start);
        return line > 1 && layout.LineStart(line - 1) is var before && layout.IsBlank(before, layout.LineEnd(before));
    }

    /// <summary>The end of the last comment that stands further in than the dash: it is about the item above.</summary>
    private int AfterComments(int end, int dash)
    {
        var at = layout.LineEnd(end);
        for (var next = layout.NextLine(at); next < layout.Text.Length && next > at; next = layout.NextLine(next))
        {
            var first = layout.AfterBlanks(next);
            if (first == layout.Text.Length || layout.Text[first] != '#' || first - next <= dash)
            {
                break;
            }

            at = layout.LineEnd(first);
        }

        return at;
    }

    private Splice? RemoveFromBrackets(Sequence list, int index, Node expected)
    {
        var (from, to) = index > 0
            ? (layout.EndOf(list.Items[index - 1]), layout.EndOf(list.Items[index]))
            : (list.Items[0].Extent.Start, list.Items.Length > 1 ? list.Items[1].Extent.Start : layout.EndOf(list.Items[0]));
        if (list.Items.Length > 1 && !layout.Text.AsSpan(from, to - from).Contains('#'))
        {
            return new Splice(from, to, "", expected);
        }

        // Comments stand between: only the item goes, and the comma after it; the last may leave a comma behind, which YAML allows.
        var (start, end) = (list.Items[index].Extent.Start, layout.EndOf(list.Items[index]));
        var comma = layout.AfterBlanks(end);
        return layout.Text[comma] == ',' ? new Splice(start, comma + 1, "", expected)
            : index == list.Items.Length - 1 ? new Splice(start, end, "", expected)
            : null;
    }

    /// <summary>The whole line of a single value, or all of it but its comment; all lines of a section, with the remarks in them, which are about what goes.</summary>
    private Splice? RemoveDash(Node item, Node expected)
    {
        var end = layout.EndOf(item);
        var line = layout.LineStart(item.Extent.Start);
        var dash = layout.Text.AsSpan(line, item.Extent.Start - line).Trim(" \t");
        if (item is Sequence || dash is not "-" || !layout.IsRestOfLineFree(end))
        {
            return null;
        }

        var at = layout.Text.IndexOf('-', line);
        var (from, to) = item is Mapping ? (line, layout.NextLine(AfterComments(end, at - line)))
            : layout.IsBlank(end, layout.LineEnd(end)) ? (line, layout.NextLine(end))
            : (at, layout.Text.IndexOf('#', end));
        return new Splice(from, to, "", expected);
    }
}
