using System.Collections.Immutable;
using PaperFlock.Diagnostics;

namespace PaperFlock.Languages.Po;

/// <summary>One entry of a catalogue.</summary>
/// <param name="Context">Null where there is none.</param>
/// <param name="Id">The English, with holes; empty for the header.</param>
/// <param name="Plural">The English for more than one; null where there is one form only.</param>
/// <param name="Said">What to say, form by form; an empty text is one still to come. Never without a text.</param>
/// <param name="IsFuzzy">A guess that nobody has looked at: it is not used.</param>
public sealed record PoEntry(string? Context, PoText Id, PoText? Plural, ImmutableArray<PoText> Said, bool IsFuzzy)
{
    public bool IsHeader => Id.Words.Length == 0 && Context is null;

    /// <summary>All its forms are there, and somebody has looked at them.</summary>
    public bool IsTranslated => !IsFuzzy && Said.All(s => s.Words.Length > 0);

    public string Key => Language.KeyOf(Context, Id.Words);
}

/// <param name="Words">Without quotes and escapes.</param>
/// <param name="Span">The first of its strings, quotes included.</param>
public readonly record struct PoText(string Words, SourceSpan Span);
