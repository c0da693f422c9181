using PaperFlock.Diagnostics;

namespace PaperFlock.Planning;

/// <summary>Something in the flock file that does not agree, or that the plan cannot do.</summary>
/// <param name="Span">What in the flock file it is about.</param>
public abstract record PlanWarning(SourceSpan Span)
{
    public sealed record UnfitForTup(EwePlan Ewe) : PlanWarning(Ewe.Ewe.Span);

    /// <summary>She is kept back from the tup, and was marked or scanned with lambs.</summary>
    public sealed record KeptBackYetMated(Ewe Ewe) : PlanWarning(Ewe.Span);

    /// <param name="Mated">The day of her mark or mating.</param>
    public sealed record MarkedTooLateToCount(Ewe Ewe, LocalDate Mated, LocalDate Scan) : PlanWarning(Ewe.Span);

    /// <param name="Ewes">How many may have been mated too late.</param>
    /// <param name="LastMated">The last day on which any of them may have been.</param>
    public sealed record TooLateToCount(TuppingGroup Group, int Ewes, LocalDate LastMated, LocalDate Scan) : PlanWarning(Group.Span);

    /// <param name="Ewes">How many nobody has scanned.</param>
    public sealed record NotScannedByFeeding(TuppingGroup Group, int Ewes, LocalDate FeedFrom) : PlanWarning(Group.Span);

    /// <param name="Limit">More than this is too many for one tup.</param>
    public sealed record TooManyEwes(TuppingGroup Group, int Ewes, int Limit) : PlanWarning(Group.Span);

    public sealed record StageAgainstMark(Ewe Ewe, ScanStage Stage, LocalDate Mark) : PlanWarning(Ewe.Span);

    /// <summary>The keeper is away for the whole of its window.</summary>
    public sealed record NoDayForJob(Job Job) : PlanWarning(Job.Rule.Own?.Span ?? Job.Group!.Span);

    /// <summary>It has not the floor or the trough for one ewe of this flock.</summary>
    public sealed record PenTooSmall(Pen Pen) : PlanWarning(Pen.Span);

    /// <summary>The shed is too small for them.</summary>
    /// <param name="Ewes">How many would stand outside.</param>
    /// <param name="First">Of the pens in the file.</param>
    public sealed record NoRoom(int Ewes, Pen First) : PlanWarning(First.Span);

    /// <summary>Ewes shorn at housing have to stay in, and these lamb outdoors.</summary>
    public sealed record ShornOutdoors(Season Season) : PlanWarning(Season.Span);
}
