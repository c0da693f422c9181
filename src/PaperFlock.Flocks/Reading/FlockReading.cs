namespace PaperFlock.Flocks.Reading;

/// <summary>What came of reading one file.</summary>
/// <param name="Flock">Null when there is any error; warnings leave it whole.</param>
/// <param name="Diagnostics">All that was found in one run, in the order of the file.</param>
/// <param name="Source">What the diagnostics point into, for drawing them.</param>
public sealed record FlockReading(Flock? Flock, ImmutableArray<Diagnostic> Diagnostics, SourceText Source)
{
    /// <summary>Null where the file is no YAML.</summary>
    internal Node? Root { get; init; }
}
