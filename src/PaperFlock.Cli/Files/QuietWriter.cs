using System.Text;

namespace PaperFlock.Cli.Files;

/// <summary>Standard error. When not even that can be written there is nobody left to tell, and the work goes on without a word.</summary>
internal sealed class QuietWriter(TextWriter inner) : TextWriter
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
            // See above.
        }
    }
}
