using System.Collections.Immutable;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;

namespace PaperFlock.Cli.Wiring;

/// <summary>What became of a flock file.</summary>
/// <param name="Flock">Null when there is an error among <paramref name="Diagnostics"/>.</param>
internal sealed record Reading(SourceText Source, Flock? Flock, ImmutableArray<Diagnostic> Diagnostics);
