namespace PaperFlock.Flocks.Reading;

/// <summary>One key of the format. Keys are never renamed or taken away: people keep these files for years.</summary>
/// <param name="Name">As it is typed.</param>
/// <param name="Form">What may be written after the colon.</param>
/// <param name="IsRequired">Always. What is required only beside another key says so in its meaning.</param>
/// <param name="Default">What stands when the key is left out, as it would be typed; null when nothing stands in its place.</param>
/// <param name="Meaning">Why a keeper would write it, in what unit, and what follows when it is left out and no one value does.</param>
/// <param name="Example">A value to show when one is missing; only for what can be missed.</param>
internal sealed record FlockKey(string Name, Form Form, bool IsRequired, string? Default, string Meaning, string? Example = null);

/// <summary>The keys that may stand together.</summary>
/// <param name="Path">Such as <c>feeds.forage</c> or <c>ewes[]</c>; empty for the top of the file.</param>
internal sealed record KeyTable(string Path, ImmutableArray<FlockKey> Keys)
{
    /// <summary>Keys that say one thing in different ways: one of them is required, and only one may be given. Empty for most tables.</summary>
    public ImmutableArray<string> ExactlyOneOf { get; init; } = [];

    /// <summary>Where that is, for a sentence.</summary>
    public string Where => Path switch
    {
        "" => "at the top of the file",
        _ when Path.EndsWith("[]", StringComparison.Ordinal) => $"in an entry of `{Path[..^2]}`",
        _ => $"under `{Path}`",
    };

    public bool Has(string name) => Keys.Any(k => k.Name == name);

    /// <exception cref="ArgumentException">There is no such key: a fault of the program.</exception>
    public FlockKey Key(string name) =>
        Keys.FirstOrDefault(k => k.Name == name) ?? throw new ArgumentException($"`{name}` is not in the table of {Path}.", nameof(name));

    /// <summary>The key a word that is none was meant for: a slip of the fingers, or one with its value glued to it.</summary>
    public string? Meant(string word)
    {
        var colon = word.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 && Has(word[..colon]) ? word[..colon] : NearestWord.Find(word, Keys.Select(k => k.Name));
    }
}
