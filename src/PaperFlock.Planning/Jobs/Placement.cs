using NodaTime;

namespace PaperFlock.Planning.Jobs;

/// <summary>The day a job was given.</summary>
/// <param name="Date">Null when the keeper is away for the whole of its window.</param>
/// <param name="Kind">What sort of day its window had to offer; free for a job that stands on its day.</param>
internal sealed record Placement(JobNeed Need, LocalDate? Date, DayKind Kind);
