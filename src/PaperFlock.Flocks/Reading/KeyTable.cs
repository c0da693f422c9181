using System.Collections.Immutable;
using PaperFlock.Diagnostics;

namespace PaperFlock.Flocks.Reading;

/// <summary>One key of the format. Keys are never renamed or taken away: people keep these files for years.</summary>
/// <param name="Name">As it is typed.</param>
/// <param name="Form">What is written after the colon.</param>
/// <param name="Default">What stands when the key is left out, as it would be typed; null when nothing stands in its place.</param>
/// <param name="Meaning">Why a keeper would write it.</param>
/// <param name="Example">A value to show when one is missing; only for what can be missed.</param>
internal sealed record FlockKey(string Name, string Form, string? Default, string Meaning, string? Example = null);

/// <summary>The keys that may stand together.</summary>
/// <param name="Path">Such as <c>feeds.forage</c> or <c>ewes[]</c>; empty for the top of the file.</param>
internal sealed record KeyTable(string Path, ImmutableArray<FlockKey> Keys)
{
    /// <summary>Where that is, for a sentence.</summary>
    public string Where => Path switch
    {
        "" => "at the top of the file",
        _ when Path.EndsWith("[]", StringComparison.Ordinal) => $"in an entry of `{Path[..^2]}`",
        _ => $"under `{Path}`",
    };

    public bool Has(string name) => Keys.Any(k => k.Name == name);

    /// <summary>The key a word that is none was meant for: a slip of the fingers, or one with its value glued to it.</summary>
    public string? Meant(string word)
    {
        var colon = word.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 && Has(word[..colon]) ? word[..colon] : NearestWord.Find(word, Keys.Select(k => k.Name));
    }
}
