using NodaTime;
using PaperFlock.Cli.Files;
using PaperFlock.Cli.Wiring;
using PaperFlock.Diagnostics;
using PaperFlock.Planning;
using PaperFlock.Sheets;

namespace PaperFlock.Cli;

/// <summary>Where every command begins: one flock file and the day it is looked at.</summary>
/// <param name="path">As the user typed it.</param>
/// <param name="asOf">Null for today at the holding.</param>
internal sealed class FlockLoader(string path, LocalDate? asOf, Host host, ILine line)
{
    public string Path => path;

    /// <summary>Reads and plans, and tells the user what was noticed.</summary>
    /// <param name="forPaper">The words in the file are going to be printed: say which characters cannot be.</param>
    /// <returns>Null when the flock file has errors.</returns>
    /// <exception cref="UsageException">The file cannot be read.</exception>
    public PlannedFlock? Plan(bool forPaper)
    {
        var reading = line.Read(path, FlockBytes.Read(path, host));
        var found = new DiagnosticBag();
        AddAll(found, reading.Diagnostics);
        if (reading.Flock is not { } flock || found.HasErrors)
        {
            Show(reading.Source, found);
            return null;
        }

        host.Stop.ThrowIfCancellationRequested();
        var plan = line.Plan(flock, asOf ?? Today(flock.Holding.TimeZone));
        AddAll(found, WarningText.Of(plan));
        if (forPaper)
        {
            AddAll(found, MissingCharacters.In(flock, reading.Source, line.FirstMissing));
        }

        Show(reading.Source, found);
        return found.HasErrors ? null : new PlannedFlock(plan, found.Count);
    }

    private LocalDate Today(DateTimeZone zone) => host.Clock.GetCurrentInstant().InZone(zone).Date;

    private void Show(SourceText source, DiagnosticBag found) =>
        DiagnosticsOut.Write(source, found.ToSorted(), host);

    private static void AddAll(DiagnosticBag found, IEnumerable<Diagnostic> more)
    {
        foreach (var diagnostic in more)
        {
            found.Add(diagnostic);
        }
    }
}

/// <param name="Warnings">How many were shown.</param>
internal sealed record PlannedFlock(SeasonPlan Plan, int Warnings);
