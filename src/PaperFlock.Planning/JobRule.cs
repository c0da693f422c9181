namespace PaperFlock.Planning;

/// <summary>When a job may be done, and why then: a line of the trade's calendar, or a job of the keeper's.</summary>
/// <param name="Anchor">What the window is counted from; null where the flock file or a feed chart gives the day.</param>
/// <param name="Window">Days from the anchor.</param>
/// <param name="Handled">Ewes must be gathered for it.</param>
public sealed record JobRule(JobKind Kind, JobAnchor? Anchor, JobWindow Window, bool Handled, JobReason Reason, FigureSource Source)
{
    /// <summary>Stands on its day whatever the keeper's week.</summary>
    public bool IsFixed { get; init; }

    /// <summary>The raddle put on; null where none is changed.</summary>
    public string? Colour { get; init; }

    /// <summary>Code of the feed chart it is read from; null where none is.</summary>
    public string? Chart { get; init; }

    /// <summary>The keeper's job; null for one of the trade's.</summary>
    public OwnJob? Own { get; init; }

    public LateHandling Late { get; init; }
}

/// <summary>What the last six weeks before lambing mean for a job of the keeper's.</summary>
public enum LateHandling
{
    None,

    /// <summary>Its window was cut short to end before them.</summary>
    KeptBefore,

    /// <summary>It lies in them, so ewes must be handled standing.</summary>
    Standing,
}
