namespace PaperFlock.Packs.Explain;

/// <summary>What the plan says of one thing, and why.</summary>
/// <param name="Lines">A label and what it labels; the label is empty where it is the one above.</param>
public sealed record Explanation(string Title, ImmutableArray<(string Label, string Text)> Lines)
{
    /// <param name="lines">What has no text is left out.</param>
    internal static Explanation Of(string title, IEnumerable<(string Label, string? Text)> lines) =>
        new(title, [.. lines.Where(l => !string.IsNullOrEmpty(l.Text)).Select(l => (l.Label, Plain(l.Text!)))]);

    /// <summary>Several lines under one label.</summary>
    internal static IEnumerable<(string Label, string? Text)> List(string label, IEnumerable<string> texts) =>
        texts.Select((text, i) => (i == 0 ? label : string.Empty, (string?)text));

    /// <summary>Amounts have no-break spaces for the paper, and a search on a screen would not find them.</summary>
    private static string Plain(string text) => text.Replace('\u00a0', ' ');
}
