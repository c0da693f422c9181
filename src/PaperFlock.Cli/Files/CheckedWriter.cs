using System.Text;

namespace PaperFlock.Cli.Files;

/// <summary>
/// Standard output, which may be a file on a full disk. Trouble with it is the user's to mend, and not a fault of the program.
/// </summary>
internal sealed class CheckedWriter(TextWriter inner) : TextWriter
{
    public override Encoding Encoding => inner.Encoding;

    public override void Write(char value) => Try(() => inner.Write(value));

    public override void Write(char[] buffer, int index, int count) => Try(() => inner.Write(buffer, index, count));

    public override void Write(string? value) => Try(() => inner.Write(value));

    public override void WriteLine(string? value) => Try(() => inner.WriteLine(value));

    public override void Flush() => Try(inner.Flush);

    private static void Try(Action write)
    {
        try
        {
            write();
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            throw new UsageException(Messages.CannotWriteOut(FileTrouble.Reason(e)), e);
        }
    }
}
