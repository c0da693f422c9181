namespace PaperFlock.Flocks.Editing;

/// <summary>What came of changing a flock file in memory.</summary>
/// <param name="File">The changed file; null when the change was refused, and then nothing is to be written.</param>
/// <param name="Diagnostics">Why it was refused, or the warnings of the changed file.</param>
/// <param name="Source">What the diagnostics point into: the text as it would have become.</param>
public sealed record FlockEdit(FlockFile? File, ImmutableArray<Diagnostic> Diagnostics, SourceText Source)
{
    /// <summary>A layout in which the change cannot be made without touching something else. No file as it stands has this code: only a change of one.</summary>
    public const string CannotEdit = "FLK017";
}
