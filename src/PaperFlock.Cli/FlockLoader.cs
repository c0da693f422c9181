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
        var today = Today(asOf, host);
        var reading = PackMaker.Read(path, InputFile.Read(path, host), today);
        host.Stop.ThrowIfCancellationRequested();
        var planned = PackMaker.Plan(reading, today(DateTimeZone.Utc), forPaper);
        DiagnosticsOut.Write(planned.Source, planned.Diagnostics, host);
        return planned;
    }

    /// <summary>The day it is at a holding: the clock is asked once, and not at all where a day stands in for it.</summary>
    public static Func<DateTimeZone, LocalDate> Today(LocalDate? asOf, Host host)
    {
        var day = asOf;
        return zone => day ??= host.Today(zone);
    }

    /// <summary>Opens a flock file to be changed.</summary>
    /// <param name="path">As the user typed it.</param>
    /// <param name="today">Nothing may be written down as seen after it.</param>
    /// <returns>Null when it has errors; they have been shown.</returns>
    public static FlockFile? Open(string path, byte[] bytes, Func<DateTimeZone, LocalDate> today, Host host)
    {
        var file = FlockFile.Open(path, bytes, out var reading, today);
        if (file is null)
        {
            DiagnosticsOut.Write(reading.Source, reading.Diagnostics, host);
        }

        return file;
    }
}
