using System.Text;

namespace PaperFlock.Cli.Files;

/// <summary>A standard stream, which may be a file on a full disk or a pipe nobody reads: trouble with it is the user's to mend, and no fault of the program.</summary>
/// <param name="onTrouble">Told what the system threw.</param>
internal sealed class GuardedWriter(TextWriter inner, Action<Exception> onTrouble) : TextWriter
{
    public override Encoding Encoding => inner.Encoding;

    /// <summary>Results that cannot be written end the command.</summary>
    public static GuardedWriter Results(TextWriter output) =>
        new(output, e => throw new UsageException($"cannot write the results out: {FileTrouble.Reason(e)}", e));

    /// <summary>When not even a complaint can be written there is nobody left to tell, and the work goes on without a word.</summary>
    public static GuardedWriter Complaints(TextWriter error) => new(error, _ => { });

    public override void Write(char value) => Try(() => inner.Write(value));

    public override void Write(char[] buffer, int index, int count) => Try(() => inner.Write(buffer, index, count));

    public override void Write(string? value) => Try(() => inner.Write(value));

    public override void WriteLine(string? value) => Try(() => inner.WriteLine(value));

    public override void Flush() => Try(inner.Flush);

    private void Try(Action write)
    {
        try
        {
            write();
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            onTrouble(e);
        }
    }
}
