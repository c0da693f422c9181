using PaperFlock.Sheets.Issues;

namespace PaperFlock.Packs;

/// <summary>A file that may remember an issue: a PDF of a pack, or the text file beside it in which earlier versions of this program kept their record.</summary>
/// <param name="Name">What the user knows it by.</param>
/// <param name="Bytes">Of one larger than <see cref="MostBytes"/>, one byte over that is enough.</param>
public sealed record EarlierFile(string Name, ReadOnlyMemory<byte> Bytes)
{
    public const int MostBytes = PdfAttachments.MostBytes;
}

/// <summary>The newest issue of a pack that is remembered.</summary>
/// <param name="File">Name of the file it was read from; null where there is none.</param>
/// <param name="Record">What has been printed, and which issue of it is in the binder; null where nothing is known.</param>
/// <param name="Troubles">Files that remember nothing to go by, and why, a sentence each without a full stop.</param>
public sealed record EarlierIssue(string? File, IssueRecord? Record, ImmutableArray<string> Troubles)
{
    public static readonly EarlierIssue None = new(null, null, []);

    /// <summary>What follows the flock's name in the name of the old text file. It is read, and never written.</summary>
    public const string OldEnding = ".issues.txt";

    /// <summary>A record of 300 ewes has 4 million bytes an issue, and all the leaves that stay are in it once.</summary>
    private const int MostRecordBytes = 1 << 25;

    private const string AttachmentName = "issue.json";

    /// <summary>The issue to compare with; null for the newest.</summary>
    public PackIssue? Since { get; init; }

    /// <summary>Name of the file that <see cref="Since"/> was read from, where it is another.</summary>
    public string? SinceFile { get; init; }

    /// <summary>The highest number an issue has had, as far as names of files tell that cannot be read; 0 where none does.</summary>
    public int LastNumber { get; init; }

    /// <summary>A file is there that may be the newest and cannot be read: which number comes next nobody can say.</summary>
    public bool IsCountLost { get; init; }

    internal bool IsOldFile => File is not null && IsOld(File);

    /// <summary>Compares with another issue than the newest.</summary>
    /// <exception cref="PackRequestException">There is none of that number, or its leaves are not remembered.</exception>
    public EarlierIssue ComparedWith(int number) => Record?.Find(number) switch
    {
        null => throw new PackRequestException($"there is no issue {number}: {(Record is null ? "none was found" : $"{File} knows of {ScreenText.List(Record.Issues.Select(i => $"{i.Number} of {ScreenText.Day(i.On)}"))}")}"),
        { Leaves.IsEmpty: true } => throw new PackRequestException($"what issue {number} said is not in {File}: give the PDF of that issue, such as --since FILE.pdf"),
        var issue => this with { Since = issue },
    };

    /// <summary>Compares with the last issue in a file that may be of another computer. Where it is the newest of all, the next one follows it.</summary>
    /// <exception cref="PackRequestException">It remembers none of this pack.</exception>
    public EarlierIssue ComparedWith(SeasonPlan plan, EarlierFile file)
    {
        var (record, whyNot) = ReadFor(plan, file);
        return record is null ? throw new PackRequestException($"{file.Name} {whyNot}")
            : Record is null || Record.Last.Number < record.Last.Number ? this with { File = file.Name, Record = record, Since = record.Last }
            : this with { Since = record.Last, SinceFile = file.Name };
    }

    /// <summary>Of this holding and season, the one with the highest number; a PDF before the old text file.</summary>
    /// <param name="files">Looked at one after another, and none of them kept.</param>
    internal static EarlierIssue Newest(SeasonPlan plan, IEnumerable<EarlierFile> files)
    {
        var (newest, troubles) = (None, ImmutableArray.CreateBuilder<string>());
        foreach (var file in files)
        {
            var (record, whyNot) = ReadFor(plan, file);
            if (record is null)
            {
                troubles.Add($"{file.Name} {whyNot}");
                var number = PackFileNames.IssueIn(file.Name);
                newest = newest with { LastNumber = Math.Max(newest.LastNumber, number), IsCountLost = newest.IsCountLost || (number == 0 && PdfAttachments.TitleOf(file.Bytes.Span) is not null && Read(file) is { Record: null }) };
            }
            else if (newest.Record is null || (record.Last.Number, !IsOld(file.Name)).CompareTo((newest.Record.Last.Number, !newest.IsOldFile)) > 0)
            {
                newest = newest with { File = file.Name, Record = record };
            }
        }

        return newest with { Troubles = troubles.ToImmutable() };
    }

    internal static PdfAttachment Attachment(IssueRecord record) =>
        new(AttachmentName, "application/json", "What has been printed of this pack, for `paperflock pack --changed`", record.ToBytes());

    /// <inheritdoc cref="PackMaker.Filed"/>
    internal static byte[]? Filed(ReadOnlyMemory<byte> pdf, IssueRecord record, int number) => PdfAttachments.Replace(pdf, AttachmentName, (record with { Filed = number }).ToBytes());

    private static (IssueRecord? Record, string? WhyNot) ReadFor(SeasonPlan plan, EarlierFile file)
    {
        var (record, whyNot) = Read(file);
        var (holding, pack) = (plan.Flock.Holding.Name, PackComposer.IdOf(plan));
        return record is null || record.IsOf(holding, pack) ? (record, whyNot)
            : (null, record.Holding.Length == 0 || record.IsOf(holding, record.Pack) ? $"is of {record.Pack}, and this is {pack}" : $"is of another holding, {record.Holding} {record.Pack}");
    }

    private static (IssueRecord? Record, string? WhyNot) Read(EarlierFile file)
    {
        if (IsOld(file.Name))
        {
            return IssueRecordText.Read(Encoding.UTF8.GetString(file.Bytes.Span)) is { } old ? (old, null) : (null, "has a record in it that is damaged");
        }

        var (outcome, bytes) = PdfAttachments.Read(file.Bytes, AttachmentName, MostRecordBytes);
        return outcome switch
        {
            PdfAttachmentOutcome.Found => FromBytes(bytes.Span),
            PdfAttachmentOutcome.Missing => (null, "has no record of an issue in it"),
            PdfAttachmentOutcome.Foreign => (null, "is no pack that this program has made"),
            PdfAttachmentOutcome.TooLarge => (null, "is larger than any pack"),
            _ => (null, "is damaged, or another program has changed it"),
        };
    }

    private static bool IsOld(string name) => name.EndsWith(OldEnding, StringComparison.Ordinal);

    private static (IssueRecord? Record, string? WhyNot) FromBytes(ReadOnlySpan<byte> bytes) => IssueRecord.FromBytes(bytes) switch
    {
        { Record: { } record } => (record, null),
        { Fault: RecordFault.Newer } => (null, "was made by a later PaperFlock"),
        { Fault: RecordFault.Altered } => (null, "has a record in it that is damaged: it is not as it was written"),
        { Fault: RecordFault.TooLarge } => (null, "has a record in it that is larger than any"),
        _ => (null, "has a record in it that is not one of issues"),
    };
}
