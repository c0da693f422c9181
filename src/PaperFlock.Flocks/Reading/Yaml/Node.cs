namespace PaperFlock.Flocks.Reading.Yaml;

/// <summary>A value of the file with its place. Every scalar is text: what it means is for whoever asks.</summary>
internal abstract record Node(SourceSpan Span)
{
    /// <summary>All of it in the text, for whoever changes the text; a node that is not of a text has none.</summary>
    public TextRange Extent { get; init; }
}

/// <summary>A stretch of a text, in UTF-16 code units from 0.</summary>
/// <param name="End">Excluded. Nothing was written where it is the same as <paramref name="Start"/>.</param>
internal readonly record struct TextRange(int Start, int End);

/// <param name="Text">Quotes and escapes resolved; otherwise as typed.</param>
/// <param name="IsPlain">Neither quoted nor a block: only then does an empty text mean that nothing was written.</param>
internal sealed record Scalar(string Text, bool IsPlain, SourceSpan Span) : Node(Span)
{
    public bool IsBlank => IsPlain && Text.Length == 0;

    /// <summary>A remark behind it with nothing between its mark and its first letter or figure, so that it may have been meant as text: <c>ZZ 1 #2</c>.</summary>
    public SourceSpan? DoubtfulRemark { get; init; }
}

/// <param name="Entries">In the order of the file; no key twice.</param>
/// <param name="Span">The first key, or the opening bracket.</param>
/// <param name="IsFlow">In braces, or one pair in square brackets.</param>
internal sealed record Mapping(ImmutableArray<Entry> Entries, SourceSpan Span, bool IsFlow) : Node(Span);

internal sealed record Entry(Scalar Key, Node Value);

/// <param name="Span">The first dash, or the opening bracket.</param>
/// <param name="IsFlow">In square brackets.</param>
internal sealed record Sequence(ImmutableArray<Node> Items, SourceSpan Span, bool IsFlow) : Node(Span);

/// <summary>A value already reported as unusable: whoever asks for it gets nothing and says nothing more.</summary>
internal sealed record Unreadable(SourceSpan Span) : Node(Span);
