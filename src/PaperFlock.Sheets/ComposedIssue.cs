namespace PaperFlock.Sheets;

/// <summary>An issue of a pack, ready to print.</summary>
/// <param name="Pack">Every sheet of it, or only changed leaves with a list of them on top.</param>
/// <param name="Outcome">Null for some sheets only, which are no issue.</param>
/// <param name="Record">To keep once the pack is printed; null where there is nothing new to keep.</param>
/// <param name="Whole">Why every leaf is printed.</param>
public sealed record ComposedIssue(ComposedPack Pack, IssueOutcome? Outcome, IssueRecord? Record, WholeReason Whole);

public enum WholeReason
{
    /// <summary>Only changed leaves are printed.</summary>
    NotWhole,

    /// <summary>Nothing else was asked for.</summary>
    Asked,

    /// <summary>Changed leaves were asked for, and there is no record to tell them by.</summary>
    NoRecord,

    /// <summary>The record is of another pack, such as last season's.</summary>
    OtherPack,

    /// <summary>The paper, the boxes or the units are others, or the sheets are bound in other files.</summary>
    OtherPaper,
}
