using PaperFlock.Cli.Calendar;
using PaperFlock.Cli.Files;

namespace PaperFlock.Cli.Commands;

/// <summary>Writes the jobs as a calendar file, for a telephone or the family's computer.</summary>
internal static class CalendarCommand
{
    private const string Ending = ".ics";

    /// <param name="folder">As typed.</param>
    /// <exception cref="UsageException">It cannot be written.</exception>
    public static int Run(FlockLoader loader, string folder, Host host)
    {
        var output = new PackPaths(loader.Path, folder, host);
        if (loader.Plan(forPaper: false) is not { } planned)
        {
            return ExitStatus.FlockErrors;
        }

        using var staged = new StagedFiles();
        staged.Add(output.File(Ending), output.ShownFile(Ending), JobCalendar.Of(planned.Plan));
        staged.PutInPlace(host.Stop);
        host.Out.WriteLine(Messages.WroteCalendar(output.ShownFile(Ending), planned.Plan));
        return ExitStatus.Clean;
    }
}
