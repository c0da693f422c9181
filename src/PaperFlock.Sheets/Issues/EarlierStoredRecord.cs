namespace PaperFlock.Sheets.Issues;

/// <summary>A record as version 2 kept it, which nobody writes any more: the leaves of the last issue alone, and no name of a holding.</summary>
internal sealed record EarlierStoredRecord(string Format, int Version, string Sum, EarlierRecord Record);

internal sealed record EarlierRecord(string Pack, string Paper, bool Split, ImmutableArray<EarlierIssueLine> Issues, ImmutableArray<IssuedLeaf> Leaves)
{
    /// <returns>Null for one without an issue.</returns>
    public IssueRecord? ToRecord() => Issues.IsEmpty ? null : new IssueRecord(
        string.Empty, Pack, null, [.. Issues.Select((line, i) => new PackIssue(line.Number, line.On, line.What, i == 0 ? null : Issues[i - 1].Number, Paper, Split, i == Issues.Length - 1 ? Leaves : []))]);
}

internal sealed record EarlierIssueLine(int Number, LocalDate On, string What);
