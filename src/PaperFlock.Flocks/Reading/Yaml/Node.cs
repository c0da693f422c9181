using System.Collections.Immutable;
using PaperFlock.Diagnostics;

namespace PaperFlock.Flocks.Reading.Yaml;

/// <summary>A value of the file with its place. Every scalar is text: what it means is for whoever asks.</summary>
internal abstract record Node(SourceSpan Span);

/// <param name="Text">Quotes and escapes resolved; otherwise as typed.</param>
/// <param name="IsPlain">Neither quoted nor a block: only then does an empty text mean that nothing was written.</param>
internal sealed record Scalar(string Text, bool IsPlain, SourceSpan Span) : Node(Span)
{
    public bool IsBlank => IsPlain && Text.Length == 0;
}

/// <param name="Entries">In the order of the file; no key twice.</param>
/// <param name="Span">The first key, or the opening bracket.</param>
internal sealed record Mapping(ImmutableArray<Entry> Entries, SourceSpan Span) : Node(Span);

internal sealed record Entry(Scalar Key, Node Value);

/// <param name="Span">The first dash, or the opening bracket.</param>
internal sealed record Sequence(ImmutableArray<Node> Items, SourceSpan Span) : Node(Span);

/// <summary>A value already reported as unusable: whoever asks for it gets nothing and says nothing more.</summary>
internal sealed record Unreadable(SourceSpan Span) : Node(Span);
