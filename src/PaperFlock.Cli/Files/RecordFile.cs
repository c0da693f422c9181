using System.Text;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Cli.Files;

/// <summary>The record of what has been printed of a pack, in a file beside it.</summary>
/// <param name="bytes">What it was read from; null where there is no file.</param>
internal sealed class RecordFile(RecordReading? reading, byte[]? bytes)
{
    /// <summary>What follows the flock's name.</summary>
    public const string Ending = ".issues.json";

    /// <summary>The same of a record of format 1, which is read where there is no other.</summary>
    private const string EarlierEnding = ".issues.txt";

    /// <summary>Nothing so large was written by this program.</summary>
    private const long MostBytes = 1L << 25;

    public IssueRecord? Record => reading?.Record;

    /// <summary>What is wrong with it; none where there is no file.</summary>
    public RecordFault Fault => reading?.Fault ?? RecordFault.None;

    /// <summary>Whether no other run has written one since this was read.</summary>
    /// <exception cref="UsageException">There is one, and it cannot be read.</exception>
    public bool IsLatest(PackPaths paths) => (Bytes(paths, Ending) ?? Bytes(paths, EarlierEnding)) is { } now ? bytes is not null && now.AsSpan().SequenceEqual(bytes) : bytes is null;

    /// <exception cref="UsageException">There is one, and it cannot be read.</exception>
    public static RecordFile Read(PackPaths paths)
    {
        if (Bytes(paths, Ending) is { } bytes)
        {
            return new RecordFile(IssueRecord.FromBytes(bytes), bytes);
        }

        return Bytes(paths, EarlierEnding) is { } earlier ? new RecordFile(Earlier(earlier), earlier) : new RecordFile(null, null);
    }

    private static RecordReading Earlier(byte[] bytes) =>
        IssueRecordText.Read(Encoding.UTF8.GetString(bytes)) is { } record ? new RecordReading(record) : new RecordReading(null, RecordFault.Altered);

    /// <returns>Null where there is no file; none at all of one far too large, or of a pipe or device, which would keep us waiting.</returns>
    private static byte[]? Bytes(PackPaths paths, string ending)
    {
        var full = paths.File(ending);
        try
        {
            return !File.Exists(full) ? null : new FileInfo(full).Length is 0 or > MostBytes ? [] : File.ReadAllBytes(full);
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            throw new UsageException(Messages.CannotRead(paths.ShownFile(ending), FileTrouble.Reason(e)), e);
        }
    }
}
