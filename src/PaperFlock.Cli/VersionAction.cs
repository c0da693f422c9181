using System.CommandLine;
using System.CommandLine.Invocation;

namespace PaperFlock.Cli;

/// <summary>Prints this program's version: the library's own way asks the process, which in a test is another program.</summary>
internal sealed class VersionAction(TextWriter output) : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        output.WriteLine(Messages.Version);
        return ExitStatus.Clean;
    }
}
