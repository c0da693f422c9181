using System.Text;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Cli.Files;

/// <summary>The record of what has been printed of a pack, in a text file beside it.</summary>
/// <param name="record">Null where there is none that can be trusted.</param>
/// <param name="isDamaged">There is a file, and it is not a whole record.</param>
internal sealed class RecordFile(IssueRecord? record, bool isDamaged)
{
    /// <summary>What follows the flock's name.</summary>
    public const string Ending = ".issues.txt";

    /// <summary>A record of 3,000 ewes is a few million bytes; nothing so large as this was written by this program.</summary>
    private const long MostBytes = 1L << 28;

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    public IssueRecord? Record => record;

    public bool IsDamaged => isDamaged;

    /// <exception cref="UsageException">There is one, and it cannot be read.</exception>
    public static RecordFile Read(PackPaths paths)
    {
        var full = paths.File(Ending);
        try
        {
            if (!File.Exists(full))
            {
                return new RecordFile(null, isDamaged: false);
            }

            var record = new FileInfo(full).Length > MostBytes ? null : IssueRecordText.Read(Utf8.GetString(File.ReadAllBytes(full)));
            return new RecordFile(record, record is null);
        }
        catch (DecoderFallbackException)
        {
            return new RecordFile(null, isDamaged: true);
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            throw new UsageException(Words.CannotRead(paths.ShownFile(Ending), FileTrouble.Reason(e)), e);
        }
    }

    /// <summary>Staged after all the documents of the issue, so that it is put in place last.</summary>
    /// <exception cref="UsageException">It cannot be written.</exception>
    public static void Stage(IssueRecord record, PackPaths paths, StagedFiles staged)
    {
        using var text = new MemoryStream();
        IssueRecordText.Write(record, text);
        staged.Add(paths.File(Ending), paths.ShownFile(Ending), text.GetBuffer().AsSpan(0, (int)text.Length));
    }
}
