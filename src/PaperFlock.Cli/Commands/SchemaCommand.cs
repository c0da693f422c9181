using PaperFlock.Flocks.Reading;

namespace PaperFlock.Cli.Commands;

/// <summary>The JSON Schema of the flock file, on standard output.</summary>
internal static class SchemaCommand
{
    public static int Run(Surroundings surroundings)
    {
        surroundings.Out.Write(FlockSchema.Json());
        return ExitStatus.Clean;
    }
}
