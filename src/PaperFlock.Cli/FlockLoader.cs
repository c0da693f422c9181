using PaperFlock.Cli.Files;

namespace PaperFlock.Cli;

/// <summary>Where every command begins: one flock file and the day it is looked at.</summary>
internal static class FlockLoader
{
    /// <summary>Reads and plans, and tells the user what was noticed.</summary>
    /// <param name="path">As the user typed it.</param>
    /// <param name="asOf">Null for today at the holding.</param>
    /// <param name="forPaper">The words in the file are going to be printed: say which characters cannot be.</param>
    /// <exception cref="UsageException">The file cannot be read.</exception>
    public static PlannedFlock Plan(string path, LocalDate? asOf, bool forPaper, Host host)
    {
        var day = asOf;
        var reading = PackMaker.Read(path, InputFile.Read(path, host), zone => day ??= host.Today(zone));
        host.Stop.ThrowIfCancellationRequested();
        var planned = PackMaker.Plan(reading, day ?? host.Today(DateTimeZone.Utc), forPaper);
        DiagnosticsOut.Write(planned.Source, planned.Diagnostics, host);
        return planned;
    }
}
