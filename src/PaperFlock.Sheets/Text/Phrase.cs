namespace PaperFlock.Sheets;

/// <summary>Words among which ewes stand as ewes, so that on paper the tag of one without a name is set whole and in the mono face.</summary>
public sealed class Phrase
{
    private readonly ImmutableArray<(string Words, Ewe? Ewe)> _parts;

    private Phrase(ImmutableArray<(string Words, Ewe? Ewe)> parts) => _parts = parts;

    public static implicit operator Phrase(string words) => new([(words, null)]);

    public static implicit operator Phrase(Ewe ewe) => new([("", ewe)]);

    public static Phrase operator +(Phrase left, Phrase right) => left._parts[^1].Ewe is null && right._parts[0].Ewe is null
        ? new([.. left._parts[..^1], (left._parts[^1].Words + right._parts[0].Words, null), .. right._parts[1..]])
        : new([.. left._parts, .. right._parts]);

    /// <summary>"a, b, c"; empty for nothing.</summary>
    public static Phrase Join(string between, IEnumerable<Phrase> items) =>
        items.Select((item, i) => i == 0 ? item : between + item).Aggregate((Phrase)"", (list, item) => list + item);

    /// <summary>"a, b and c"; empty for nothing.</summary>
    public static Phrase List(IReadOnlyList<Phrase> items) =>
        items.Count < 2 ? Join("", items) : Join(", ", items.SkipLast(1)) + " and " + items[^1];

    internal ImmutableArray<Run> Runs(TextStyle style) => [.. _parts.Select(p => p.Ewe is { } ewe ? Who.Called(ewe, style) : new Run(p.Words, style))];

    /// <summary>For a screen, and for other programs.</summary>
    public override string ToString() => string.Concat(_parts.Select(p => p.Ewe?.CallName ?? p.Words));
}
