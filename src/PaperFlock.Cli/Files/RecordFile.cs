using System.Text;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Cli.Files;

/// <summary>The record of what has been printed of a pack, in a text file beside it.</summary>
/// <param name="record">Null where there is none that can be trusted.</param>
/// <param name="bytes">What it was read from; null where there is no file.</param>
internal sealed class RecordFile(IssueRecord? record, byte[]? bytes)
{
    /// <summary>What follows the flock's name.</summary>
    public const string Ending = ".issues.txt";

    /// <summary>A record of 3,000 ewes is a few million bytes; nothing so large as this was written by this program.</summary>
    private const long MostBytes = 1L << 28;

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    public IssueRecord? Record => record;

    /// <summary>There is a file, and it is not a whole record.</summary>
    public bool IsDamaged => bytes is not null && record is null;

    /// <summary>Whether no other run has written one since this was read.</summary>
    /// <exception cref="UsageException">There is one, and it cannot be read.</exception>
    public bool IsLatest(PackPaths paths) => Bytes(paths) is { } now ? bytes is not null && now.AsSpan().SequenceEqual(bytes) : bytes is null;

    /// <exception cref="UsageException">There is one, and it cannot be read.</exception>
    public static RecordFile Read(PackPaths paths)
    {
        var bytes = Bytes(paths);
        try
        {
            return new RecordFile(bytes is { Length: > 0 } ? IssueRecordText.Read(Utf8.GetString(bytes)) : null, bytes);
        }
        catch (DecoderFallbackException)
        {
            return new RecordFile(null, bytes);
        }
    }

    /// <returns>Null where there is no file; none at all of one far too large, or of a pipe or device, which would keep us waiting.</returns>
    private static byte[]? Bytes(PackPaths paths)
    {
        var full = paths.File(Ending);
        try
        {
            return !File.Exists(full) ? null : new FileInfo(full).Length is 0 or > MostBytes ? [] : File.ReadAllBytes(full);
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            throw new UsageException(Messages.CannotRead(paths.ShownFile(Ending), FileTrouble.Reason(e)), e);
        }
    }

    /// <returns>What is written of it; nothing of none.</returns>
    public static ReadOnlyMemory<byte> BytesOf(IssueRecord? record)
    {
        if (record is null)
        {
            return default;
        }

        var text = new MemoryStream();
        IssueRecordText.Write(record, text);
        return text.GetBuffer().AsMemory(0, (int)text.Length);
    }
}
