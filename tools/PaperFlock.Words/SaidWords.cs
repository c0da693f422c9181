using System.Collections.Immutable;

namespace PaperFlock.Words;

/// <summary>One text to be translated.</summary>
/// <param name="Context">Null where the text stands for itself.</param>
/// <param name="One">The English, with numbered holes; for the number 1 where there is <paramref name="Many"/>.</param>
/// <param name="Many">The English for other numbers; null where no number matters.</param>
/// <param name="Notes">What helps to translate it.</param>
/// <param name="Places">Source files.</param>
public sealed record SaidWords(string? Context, string One, string? Many, ImmutableArray<string> Notes, ImmutableArray<string> Places)
{
    public string Key => $"{Context}\u0004{One}";
}
