namespace PaperFlock.Packs;

/// <summary>A flock file read and planned for a day.</summary>
/// <param name="Plan">Null when the file has errors.</param>
/// <param name="Diagnostics">All that was noticed, in the order of the file.</param>
/// <param name="Source">What they point into, for drawing them.</param>
public sealed record PlannedFlock(SeasonPlan? Plan, ImmutableArray<Diagnostic> Diagnostics, SourceText Source);
