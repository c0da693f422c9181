using PaperFlock.Flocks.Reading.Yaml;

namespace PaperFlock.Flocks.Reading;

/// <summary>What came of reading one file.</summary>
/// <param name="Flock">Null when there is any error; warnings leave it whole.</param>
/// <param name="Diagnostics">All that was found in one run, in the order of the file.</param>
/// <param name="Source">What the diagnostics point into, for drawing them.</param>
public sealed record FlockReading(Flock? Flock, ImmutableArray<Diagnostic> Diagnostics, SourceText Source)
{
    /// <summary>Null where the file is no YAML.</summary>
    internal Node? Root { get; init; }

    /// <summary>A warning for each text of the file, whatever its key, with a character that the paper cannot show.</summary>
    /// <param name="firstMissing">The first character of a text that cannot be shown, null when all can; its second argument says whether the text is set as a tag.</param>
    public IEnumerable<Diagnostic> MissingCharacters(Func<string, bool, string?> firstMissing) =>
        Root is null ? [] : PrintedTexts.MissingCharacters(Root, Source, firstMissing);
}
