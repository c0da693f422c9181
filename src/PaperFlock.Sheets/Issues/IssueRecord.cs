namespace PaperFlock.Sheets.Issues;

/// <summary>What has been printed of a pack: every issue with all that its leaves say but for telephone numbers, and which of them is in the binder.</summary>
/// <param name="Holding">Its name; empty in a record of an earlier format.</param>
/// <param name="Pack">Such as "HB-2027".</param>
/// <param name="Filed">The issue that the keeper says is in the binder; null where nothing has been said.</param>
/// <param name="Issues">First to last, at least one.</param>
public sealed record IssueRecord(string Holding, string Pack, int? Filed, ImmutableArray<PackIssue> Issues)
{
    public PackIssue Last => Issues[^1];

    /// <returns>Null where there is none of that number.</returns>
    public PackIssue? Find(int number) => Issues.FirstOrDefault(i => i.Number == number);

    /// <summary>Whether it is of that holding and season. An earlier format knows the holding by its initials alone.</summary>
    public bool IsOf(string holding, string pack) => Pack == pack && (Holding.Length == 0 || Holding == Wording.Tidy(holding));

    /// <summary>As JSON in UTF-8. The same record has the same bytes.</summary>
    public byte[] ToBytes() => IssueRecordJson.Write(this);

    /// <summary>Reads what <see cref="ToBytes"/> wrote, now or in the format before, and nothing else: a byte more, less or other, and it is no record.</summary>
    public static RecordReading FromBytes(ReadOnlySpan<byte> bytes) => IssueRecordJson.Read(bytes);

    /// <summary>Whether it can have come about: no number is given twice, and only an issue there has been is filed.</summary>
    internal bool IsSound =>
        !Issues.IsEmpty && Issues.All(i => i.IsSound) && Issues.Zip(Issues.Skip(1)).All(pair => pair.First.Number < pair.Second.Number) && (Filed is not { } filed || Find(filed) is not null);
}
