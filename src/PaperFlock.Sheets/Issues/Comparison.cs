namespace PaperFlock.Sheets.Issues;

/// <summary>Holds what should be in the binder against what was put into it.</summary>
internal static class Comparison
{
    /// <param name="record">Null for a first issue: every leaf is new.</param>
    /// <param name="leaves">All the pack should have. Those that are over on <paramref name="day"/> are passed over.</param>
    /// <param name="whole">Every leaf is printed, changed or not.</param>
    public static IssueOutcome Of(IssueRecord? record, ImmutableArray<Leaf> leaves, LocalDate day, bool whole)
    {
        var number = (record?.Last.Number ?? 0) + 1;
        var before = (record?.Leaves ?? []).ToDictionary(l => l.Leaf.Id, StringComparer.Ordinal);
        var present = leaves.Where(l => !l.IsOver(day)).ToImmutableArray();
        var outcomes = present.Select(leaf => Outcome(leaf, before.GetValueOrDefault(leaf.Id), number, day, whole)).ToImmutableArray();
        var ids = present.Select(l => l.Id).ToHashSet(StringComparer.Ordinal);
        return new IssueOutcome(
            number,
            day,
            outcomes,
            [.. (record?.Leaves ?? []).Where(l => !ids.Contains(l.Leaf.Id) && !l.Leaf.IsOver(day))]);
    }

    private static LeafOutcome Outcome(Leaf leaf, IssuedLeaf? before, int number, LocalDate day, bool whole)
    {
        if (before is null)
        {
            return new LeafOutcome(leaf, LeafFate.Added, number, null, []);
        }

        var same = before.Leaf.SaysOn(day, leaf);
        var changes = same ? [] : RowDiff.Between(before.Leaf.Rows, leaf.Rows, day);
        var struck = PackSheets.OfCode(leaf.Id.Split(' ')[0])?.IsStruckByHand == true ? Strikes.Of(changes) : [];

        // The paper in the binder has its old label and title; what it says is written down anew, so that a record of an earlier format is taken over.
        return (same || !struck.IsEmpty) && !whole
            ? new LeafOutcome(before.Leaf with { Rows = leaf.Rows }, LeafFate.Kept, before.Issue, before.Replaces, []) { Struck = struck }
            : new LeafOutcome(leaf, LeafFate.Changed, number, before.Issue, changes);
    }
}
