namespace PaperFlock.Flocks.Editing;

/// <summary>A text as lines and columns, and where in it nodes really end. Lines end as YAML has it: at CR LF, LF or a lone CR.</summary>
internal sealed class Layout(string text)
{
    public string Text => text;

    /// <summary>The line break used at a place: that of its line, else the first there is, else LF.</summary>
    public string BreakAt(int at)
    {
        var end = LineEnd(at) is var own && own < text.Length ? own : LineEnd(0);
        return end == text.Length ? "\n" : text[end..NextLine(end)];
    }

    public int LineStart(int at) => text.AsSpan(0, at).LastIndexOfAny('\n', '\r') + 1;

    /// <summary>Just before the line break, or the end of the text.</summary>
    public int LineEnd(int at) => text.AsSpan(at).IndexOfAny('\n', '\r') is >= 0 and var rest ? at + rest : text.Length;

    /// <summary>Where the next line begins; the end of the text when this is the last.</summary>
    public int NextLine(int at)
    {
        var end = LineEnd(at);
        return end == text.Length ? end : end + (text.AsSpan(end).StartsWith("\r\n") ? 2 : 1);
    }

    public int AfterBlanks(int at) => text.AsSpan(at).IndexOfAnyExcept(' ', '\t') is >= 0 and var blanks ? at + blanks : text.Length;

    public bool IsBlank(int from, int to) => text.AsSpan(from, to - from).Trim(" \t").IsEmpty;

    /// <summary>Whether nothing but blanks, and perhaps a comment, follows on the line.</summary>
    public bool IsRestOfLineFree(int at)
    {
        var rest = text.AsSpan(at, LineEnd(at) - at);
        var trimmed = rest.TrimStart(" \t");
        return trimmed.IsEmpty || (trimmed[0] == '#' && (trimmed.Length < rest.Length || at == LineStart(at)));
    }

    /// <summary>What a line of its own must begin with to stand under this place: the same blanks, and a space for anything else.</summary>
    public string IndentOf(int at) => string.Concat(text[LineStart(at)..at].Select(c => c == '\t' && IsBlank(LineStart(at), at) ? '\t' : ' '));

    public bool BeginsItsLine(int at) => IsBlank(LineStart(at), at);

    /// <summary>The last character that a node is written with; for a value that is not there, where it would begin.</summary>
    public int EndOf(Entry entry) => IsUnwritten(entry.Value) ? ColonOf(entry) is { } colon ? colon + 1 : entry.Key.Extent.End : EndOf(entry.Value);

    public int EndOf(Node node) => node switch
    {
        Mapping { IsFlow: false, Entries: [.., var last] } => EndOf(last),
        Sequence { IsFlow: false, Items: [.., var last] } => EndOf(last),
        _ when IsBlockScalar(node) => EndOfBlockScalar(node.Extent),
        _ => node.Extent.End,
    };

    /// <summary>The colon between a key and its value; null where a key stands alone, as it may in braces or after a question mark.</summary>
    public int? ColonOf(Entry entry)
    {
        var at = entry.Key.Extent.End;
        while (at < text.Length && text[at] is ' ' or '\t' or '\n' or '\r' or '#')
        {
            at = text[at] == '#' ? LineEnd(at) : at + 1;
        }

        return at < text.Length && text[at] == ':' && (IsUnwritten(entry.Value) || at < entry.Value.Extent.Start) ? at : null;
    }

    public bool IsBlockScalar(Node node) => node is Scalar && node.Extent.Start < node.Extent.End && text[node.Extent.Start] is '|' or '>';

    public static bool IsUnwritten(Node node) => node is Scalar { IsBlank: true };

    /// <summary>A block takes in the empty lines after it, which belong to nobody.</summary>
    private int EndOfBlockScalar(TextRange extent) => extent.Start + text.AsSpan(extent.Start, extent.End - extent.Start).TrimEnd(" \t\n\r").Length;
}
