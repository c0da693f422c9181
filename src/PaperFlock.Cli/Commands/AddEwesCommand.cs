using PaperFlock.Cli.Csv;
using PaperFlock.Cli.Files;
using PaperFlock.Cli.Lists;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Editing;

namespace PaperFlock.Cli.Commands;

/// <summary>Adds the ewes of a list to a flock file, after those it has, and changes nothing else in it.</summary>
internal static class AddEwesCommand
{
    /// <param name="path">As typed, as is <paramref name="list"/>.</param>
    /// <param name="goodRows">Rows that are refused do not keep the others out.</param>
    /// <exception cref="UsageException">One of the two cannot be read, or the flock file cannot be written.</exception>
    public static int Run(string path, string list, bool goodRows, Host host)
    {
        var bytes = FlockBytes.Read(path, host);
        if (FlockFile.Open(path, bytes, out var reading) is not { } file)
        {
            DiagnosticsOut.Write(reading.Source, reading.Diagnostics, host);
            return ExitStatus.FlockErrors;
        }

        var found = new DiagnosticBag();
        var table = CsvTable.Read(list, FlockBytes.Read(list, host), found);
        var rows = EweList.Read(table, file.Flock.Season.TupIn.Year, found);
        rows = ListTrial.Of(
            rows,
            ewes =>
            {
                var edit = file.Apply(AddToList.Ewes(ewes.Select(e => FlockValue.Section(e.Ewe!.Lines))));
                return (edit.Source, edit.Diagnostics);
            },
            found);
        if (!ListReport.Write(list, table.Source, rows, found, goodRows, host))
        {
            host.Error.WriteLine(Messages.Complaint(ListMessages.Refused(list, rows.Any(r => r.Ewe is not null))));
            return ExitStatus.FlockErrors;
        }

        var added = rows.Where(r => r.Ewe is not null).Select(r => FlockValue.Section(r.Ewe!.Lines)).ToArray();
        var changed = file.Apply(AddToList.Ewes(added)).File ?? throw new InvalidOperationException("Ewes tried together are refused together.");
        host.Stop.ThrowIfCancellationRequested();
        FlockWriter.Write(path, bytes, changed.ToBytes(), host);

        host.Out.WriteLine(ListMessages.Added(path, added.Length, changed.Flock.Ewes.Length));
        if (changed.Flock.Ewes.Count(e => e.Tag.StartsWith("____", StringComparison.Ordinal)) is > 0 and var unnamed)
        {
            host.Out.WriteLine($"  {ListMessages.StillUnnamed(unnamed)}");
        }

        return found.HasErrors ? ExitStatus.FlockErrors : ExitStatus.Clean;
    }
}
