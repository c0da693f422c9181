using PaperFlock.Flocks.Reading;

namespace PaperFlock.Cli.Commands;

/// <summary>The JSON Schema of the flock file, on standard output.</summary>
internal static class SchemaCommand
{
    public static int Run(Host host)
    {
        host.Out.Write(FlockSchema.Json());
        return ExitStatus.Clean;
    }
}
