using System.Text;
using PaperFlock.Pdf;
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
/// <param name="Record">What has been printed; null where nothing is known.</param>
/// <param name="Troubles">Files that remember nothing to go by, and why, a sentence each without a full stop.</param>
public sealed record EarlierIssue(string? File, IssueRecord? Record, ImmutableArray<string> Troubles)
{
    /// <summary>What follows the flock's name in the name of the old text file. It is read, and never written.</summary>
    public const string OldEnding = ".issues.txt";

    /// <summary>A record of 3,000 ewes is a few million bytes; nothing so large as this was written by this program.</summary>
    private const int MostRecordBytes = 1 << 25;

    private const string AttachmentName = "issue.json";

    internal bool IsOldFile => File is not null && IsOld(File);

    /// <summary>An issue of this very pack comes before one of another, a higher number before a lower, and a PDF before the old text file.</summary>
    /// <param name="pack">Such as "HB-2027".</param>
    internal static EarlierIssue Newest(string pack, IEnumerable<EarlierFile> files)
    {
        var read = files.Select(file => (file.Name, Reading: Read(file))).ToList();
        var newest = read.Where(r => r.Reading.Record is not null).OrderByDescending(r => (r.Reading.Record!.Pack == pack, r.Reading.Record.Last.Number, !IsOld(r.Name))).FirstOrDefault();
        return new EarlierIssue(newest.Name, newest.Reading.Record, [.. read.Where(r => r.Reading.Record is null).Select(r => $"{r.Name} {r.Reading.WhyNot}")]);
    }

    internal static PdfAttachment Attachment(IssueRecord record) =>
        new(AttachmentName, "application/json", "What has been printed of this pack, for `paperflock pack --changed`", record.ToBytes());

    private static (IssueRecord? Record, string? WhyNot) Read(EarlierFile file)
    {
        if (IsOld(file.Name))
        {
            return OldFromBytes(file.Bytes.Span);
        }

        var (outcome, bytes) = PdfAttachments.Read(file.Bytes, AttachmentName, MostRecordBytes);
        return outcome switch
        {
            PdfAttachmentOutcome.Found => FromBytes(bytes.Span),
            PdfAttachmentOutcome.Missing => (null, "has no record of its issue in it"),
            PdfAttachmentOutcome.Foreign => (null, "is no pack that this program has made"),
            PdfAttachmentOutcome.TooLarge => (null, "is larger than any pack"),
            _ => (null, "is damaged, or another program has changed it"),
        };
    }

    private static bool IsOld(string name) => name.EndsWith(OldEnding, StringComparison.Ordinal);

    private static (IssueRecord? Record, string? WhyNot) OldFromBytes(ReadOnlySpan<byte> bytes) =>
        IssueRecordText.Read(Encoding.UTF8.GetString(bytes)) is { } record ? (record, null) : (null, "has a record in it that is damaged");

    private static (IssueRecord? Record, string? WhyNot) FromBytes(ReadOnlySpan<byte> bytes) => IssueRecord.FromBytes(bytes) switch
    {
        { Record: { } record } => (record, null),
        { Fault: RecordFault.Newer } => (null, "was made by a later PaperFlock"),
        { Fault: RecordFault.Altered } => (null, "has a record in it that is damaged: it is not as it was written"),
        _ => (null, "has a record in it that is not one of issues"),
    };
}
