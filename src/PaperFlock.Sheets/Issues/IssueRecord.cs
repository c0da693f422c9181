namespace PaperFlock.Sheets.Issues;

/// <summary>What has been printed of a pack: every leaf that should be in it, with the issue it came with and all it says but for telephone numbers.</summary>
/// <param name="Pack">Such as "HB-2027".</param>
/// <param name="Paper">Paper, planner, binding, duplex, units and box sizes in words: with another of them every leaf is another.</param>
/// <param name="Split">Printed as a file for each way of printing.</param>
/// <param name="Issues">First to last, at least one.</param>
public sealed record IssueRecord(string Pack, string Paper, bool Split, ImmutableArray<IssueLine> Issues, ImmutableArray<IssuedLeaf> Leaves)
{
    public IssueLine Last => Issues[^1];

    /// <summary>As JSON in UTF-8. The same record has the same bytes.</summary>
    public byte[] ToBytes() => IssueRecordJson.Write(this);

    /// <summary>Reads what <see cref="ToBytes"/> wrote, and nothing else: a byte more, less or other, and it is no record.</summary>
    public static RecordReading FromBytes(ReadOnlySpan<byte> bytes) => IssueRecordJson.Read(bytes);

    /// <summary>Whether it can have come about: issues are numbered from 1 in order of time, and each leaf is there once and came with one of them.</summary>
    internal bool IsSound =>
        Issues.Select((issue, i) => issue.Number == i + 1 && (i == 0 || Issues[i - 1].On <= issue.On)).DefaultIfEmpty(false).All(good => good)
        && Leaves.All(l => l.Issue > 0 && l.Issue <= Last.Number && l.Replaces is null or > 0 && !(l.Replaces >= l.Issue))
        && Leaves.Select(l => l.Leaf.Id).Distinct(StringComparer.Ordinal).Count() == Leaves.Length;
}

/// <param name="Number">From 1.</param>
/// <param name="What">What was printed, in words.</param>
public sealed record IssueLine(int Number, LocalDate On, string What)
{
    public static IssueLine First(LocalDate on) => new(1, on, "First issue: every sheet is new.");
}

/// <param name="Issue">The one it was last printed with.</param>
/// <param name="Replaces">The one it took the place of then; null where there was none.</param>
public sealed record IssuedLeaf(Leaf Leaf, int Issue, int? Replaces = null);
