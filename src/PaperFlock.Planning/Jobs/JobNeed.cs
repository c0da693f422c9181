using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Jobs;

/// <summary>A job with its window on the calendar, before it has a day.</summary>
/// <param name="RidesWith">Id of the job of the same group whose day this one shares; null when it stands alone.</param>
/// <param name="Remark">More to be said of its day, such as that she must be handled standing; null for nothing.</param>
/// <param name="NotAfter">A day past which it may not be put even where nothing in the window will do; null for no bar.</param>
/// <param name="Span">What in the flock file asks for it.</param>
internal sealed record JobNeed(
    string Id,
    string Title,
    TuppingGroup? Group,
    LocalDate Earliest,
    LocalDate Best,
    LocalDate Latest,
    bool Handled,
    bool Fixed,
    int? Minutes,
    string Reason,
    string Source,
    string? RidesWith,
    string? Remark,
    LocalDate? NotAfter,
    SourceSpan Span)
{
    /// <summary>What the window is counted from; null for a job that the flock file puts on a day.</summary>
    public JobBasis? Basis { get; init; }
}
