namespace PaperFlock.Sheets;

/// <summary>An issue of a pack, ready to print.</summary>
/// <param name="Pack">Every sheet of it, or only changed leaves with a list of them on top.</param>
/// <param name="Outcome">Null for some sheets only and for a draft, which are no issue.</param>
/// <param name="Record">To keep once the pack is printed; null where there is nothing new to keep.</param>
/// <param name="Whole">Why every leaf is printed.</param>
public sealed record ComposedIssue(ComposedPack Pack, IssueOutcome? Outcome, IssueRecord? Record, WholeReason Whole)
{
    /// <summary>The issue it was compared with; null where it was with none.</summary>
    public PackIssue? Since { get; init; }

    /// <summary>The very issue that was made last, once more.</summary>
    public bool IsAgain { get; init; }

    /// <summary>Of some sheets only: the labels of those leaves that do not say what the issue they bear said.</summary>
    public ImmutableArray<string> Newer { get; init; } = [];

    /// <summary>Codes of single leaves that were asked for and are not there.</summary>
    public ImmutableArray<string> Missing { get; init; } = [];

    /// <summary>Where some are missing: the codes of all leaves of their kinds.</summary>
    public ImmutableArray<string> Alike { get; init; } = [];
}

public enum WholeReason
{
    /// <summary>Only changed leaves are printed.</summary>
    NotWhole,

    /// <summary>Nothing else was asked for.</summary>
    Asked,

    /// <summary>Changed leaves were asked for, but the paper, the boxes or the units are others, or the sheets are bound in other files.</summary>
    OtherPaper,
}
