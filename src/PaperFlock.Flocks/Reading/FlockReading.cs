using System.Text.Json.Nodes;

namespace PaperFlock.Flocks.Reading;

/// <summary>What came of reading one file.</summary>
/// <param name="Flock">Null when there is any error; warnings leave it whole.</param>
/// <param name="Diagnostics">All that was found in one run, in the order of the file.</param>
/// <param name="Source">What the diagnostics point into, for drawing them.</param>
public sealed record FlockReading(Flock? Flock, ImmutableArray<Diagnostic> Diagnostics, SourceText Source)
{
    /// <summary>Null where the file is no YAML.</summary>
    internal Node? Root { get; init; }

    /// <summary>An error for each text of the file, whatever its key, with a character that the paper cannot show, unless its place has a fault already.</summary>
    /// <param name="firstMissing">The first character of a text that cannot be shown, null when all can; its second argument says whether the text is set as a tag.</param>
    public IEnumerable<Diagnostic> MissingCharacters(Func<string, bool, string?> firstMissing) =>
        Root is null ? [] : PrintedTexts.MissingCharacters(Root, Source, firstMissing).Where(missing => !Diagnostics.Any(d => d.Severity == Severity.Error && d.Span == missing.Span));

    /// <summary>The file as it is written: sections as objects, lists as arrays, values as texts, and null where nothing is written.</summary>
    /// <returns>Null where the file is no YAML.</returns>
    public JsonNode? Values() => Root is null ? null : FlockTree.Values(Root);

    /// <summary>The way to what a place in the file is about: keys as texts, items of lists as numbers from 0. Empty for the file as a whole, or where it is no YAML.</summary>
    public JsonArray PathOf(SourceSpan span) => Root is null ? [] : FlockTree.PathOf(Root, Source, span);
}
