using System.Collections.Frozen;

namespace PaperFlock.Sheets.Issues;

/// <summary>What a new issue of a pack is, next to what is in the binder.</summary>
/// <param name="Number">Of the new issue.</param>
/// <param name="Leaves">Every leaf the pack should have, in binding order.</param>
/// <param name="TakenOut">Leaves that nothing replaces. Those whose days are over are not among them: they are records now.</param>
public sealed record IssueOutcome(int Number, LocalDate On, ImmutableArray<LeafOutcome> Leaves, ImmutableArray<IssuedLeaf> TakenOut)
{
    private const int MostLabels = 10;

    public ImmutableArray<LeafOutcome> PutIn { get; } = [.. Leaves.Where(l => l.Fate != LeafFate.Kept)];

    /// <summary>What is new in it, for the list of issues.</summary>
    public string WordsIn()
    {
        if (Number == 1)
        {
            return PackIssue.FirstWords;
        }

        if (PutIn.Length == Leaves.Length)
        {
            return "Every sheet is printed again.";
        }

        var printed = Labels(PutIn.Select(l => l.Leaf));
        return TakenOut.IsEmpty ? $"{printed}." : $"{printed}; taken out: {Labels(TakenOut.Select(l => l.Leaf))}.";
    }

    public bool IsNothing => PutIn.IsEmpty && TakenOut.IsEmpty;

    /// <summary>Printed leaves as a fraction of all, 0 to 1.</summary>
    public double Share => Leaves.IsEmpty ? 0 : (double)PutIn.Length / Leaves.Length;

    private readonly FrozenDictionary<string, LeafOutcome> _byId = Leaves.ToFrozenDictionary(l => l.Leaf.Id, StringComparer.Ordinal);

    /// <exception cref="KeyNotFoundException">The pack should not have such a leaf, or its days are over.</exception>
    public LeafOutcome this[string id] => _byId[id];

    private static string Labels(IEnumerable<Leaf> leaves)
    {
        var labels = leaves.Select(l => l.Label).ToArray();
        return labels.Length switch
        {
            0 => "nothing new",
            <= MostLabels => string.Join(", ", labels),
            var n => $"{string.Join(", ", labels.Take(MostLabels))} and {n - MostLabels} more",
        };
    }
}

/// <param name="Issue">The one it bears once this issue is filed.</param>
/// <param name="Replaces">Issue of the leaf it takes or took the place of; null where there was none.</param>
/// <param name="Changes">Empty unless it is changed.</param>
public sealed record LeafOutcome(Leaf Leaf, LeafFate Fate, int Issue, int? Replaces, ImmutableArray<RowChange> Changes)
{
    /// <summary>What is to be struck through by hand on a leaf that is kept.</summary>
    public ImmutableArray<string> Struck { get; init; } = [];
}

public enum LeafFate
{
    Kept,
    Changed,
    Added,
}
