namespace PaperFlock.Sheets.Issues;

/// <summary>An issue of a pack, and what the binder holds once it is filed.</summary>
/// <param name="Number">From 1; none is given twice.</param>
/// <param name="What">What was printed, in words.</param>
/// <param name="Since">The issue whose leaves it takes the place of; null where there was none.</param>
/// <param name="Paper">Paper, planner, binding, duplex, units and box sizes in words: with another of them every leaf is another.</param>
/// <param name="Split">Printed as a file for each way of printing.</param>
/// <param name="Leaves">Every leaf that should then be in the binder, in binding order; empty where that is no longer known.</param>
public sealed record PackIssue(int Number, LocalDate On, string What, int? Since, string Paper, bool Split, ImmutableArray<IssuedLeaf> Leaves)
{
    internal const string FirstWords = "First issue: every sheet is new.";

    /// <summary>Whether every leaf was printed with it.</summary>
    public bool IsWhole => !Leaves.IsEmpty && Leaves.All(l => l.Issue == Number);

    /// <summary>Whether the other is the same print, leaf for leaf.</summary>
    internal bool IsSameAs(PackIssue other) => this with { Leaves = [], What = "" } == other with { Leaves = [], What = "" } && Leaves.SequenceEqual(other.Leaves);

    /// <summary>Whether each leaf is there once and came with this issue or one before.</summary>
    internal bool IsSound =>
        Number > 0 && Since is null or > 0 && !(Since >= Number)
        && Leaves.All(l => l.Issue > 0 && l.Issue <= Number && l.Replaces is null or > 0 && !(l.Replaces >= l.Issue))
        && Leaves.Select(l => l.Leaf.Id).Distinct(StringComparer.Ordinal).Count() == Leaves.Length;
}

/// <param name="Issue">The one it was last printed with.</param>
/// <param name="Replaces">The one it took the place of then; null where there was none.</param>
public sealed record IssuedLeaf(Leaf Leaf, int Issue, int? Replaces = null);
