namespace PaperFlock.Sheets.Issues;

/// <summary>A record as it is kept: a leaf that stays from issue to issue is there once.</summary>
/// <param name="Sum">Fingerprint of the same with this left empty.</param>
/// <param name="Leaves">In the order in which issues first have them.</param>
internal sealed record StoredRecord(string Format, int Version, string Sum, string Holding, string Pack, ImmutableArray<StoredIssue> Issues, ImmutableArray<Leaf> Leaves, int? Filed = null)
{
    public static StoredRecord Of(IssueRecord record, string format, int version)
    {
        var places = new Dictionary<Leaf, int>();
        ImmutableArray<StoredIssue> issues = [.. record.Issues.Select(i => new StoredIssue(i.Number, i.On, i.What, i.Paper, i.Split, [.. i.Leaves.Select(Place)], i.Since))];
        return new StoredRecord(format, version, string.Empty, record.Holding, record.Pack, issues, [.. places.OrderBy(p => p.Value).Select(p => p.Key)], record.Filed);

        StoredLeaf Place(IssuedLeaf leaf)
        {
            var next = places.Count;
            return new StoredLeaf(places.TryAdd(leaf.Leaf, next) ? next : places[leaf.Leaf], leaf.Issue, leaf.Replaces);
        }
    }

    /// <returns>Null where an issue has a leaf that is not there.</returns>
    public IssueRecord? Record => Issues.All(i => i.Leaves.All(l => l.Leaf >= 0 && l.Leaf < Leaves.Length))
        ? new IssueRecord(Holding, Pack, Filed, [.. Issues.Select(i => new PackIssue(i.Number, i.On, i.What, i.Since, i.Paper, i.Split, [.. i.Leaves.Select(l => new IssuedLeaf(Leaves[l.Leaf], l.Issue, l.Replaces))]))])
        : null;
}

internal sealed record StoredIssue(int Number, LocalDate On, string What, string Paper, bool Split, ImmutableArray<StoredLeaf> Leaves, int? Since = null);

/// <param name="Leaf">Which of the leaves of the record, from 0.</param>
internal sealed record StoredLeaf(int Leaf, int Issue, int? Replaces = null);

/// <summary>What any version of it begins with.</summary>
internal sealed record StoredRecordHead(string Format, int Version);
