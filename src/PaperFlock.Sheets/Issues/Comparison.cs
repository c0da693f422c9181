namespace PaperFlock.Sheets.Issues;

/// <summary>Holds what should be in the binder against what was put into it.</summary>
internal static class Comparison
{
    /// <param name="before">What is in the binder; nothing for a first issue: every leaf is new.</param>
    /// <param name="leaves">All the pack should have. Those that are over on <paramref name="day"/> are passed over.</param>
    /// <param name="whole">Every leaf is printed, changed or not.</param>
    public static IssueOutcome Of(ImmutableArray<IssuedLeaf> before, ImmutableArray<Leaf> leaves, int number, LocalDate day, bool whole)
    {
        var byId = before.ToDictionary(l => l.Leaf.Id, StringComparer.Ordinal);
        var present = leaves.Where(l => !l.IsOver(day)).ToImmutableArray();
        var outcomes = present.Select(leaf => Outcome(leaf, byId.GetValueOrDefault(leaf.Id), number, day, whole)).ToImmutableArray();
        var ids = present.Select(l => l.Id).ToHashSet(StringComparer.Ordinal);
        return new IssueOutcome(number, day, outcomes, [.. before.Where(l => !ids.Contains(l.Leaf.Id) && !l.Leaf.IsOver(day))]);
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

        // The paper in the binder has its old label and title. What a pencil has struck from it, and what an earlier format knew by its name alone, is written down anew.
        return (same || !struck.IsEmpty) && !whole
            ? new LeafOutcome(same && before.Leaf.Rows.All(r => r.Key.Kind != RowKind.Earlier) ? before.Leaf : before.Leaf with { Rows = leaf.Rows }, LeafFate.Kept, before.Issue, before.Replaces, []) { Struck = struck }
            : new LeafOutcome(leaf, LeafFate.Changed, number, before.Issue, changes);
    }
}
