using PaperFlock.Cli.Dates;

namespace PaperFlock.Cli.Commands;

/// <summary>The dates of the season on the screen.</summary>
internal static class DatesCommand
{
    public static int Run(FlockLoader loader, Host host)
    {
        if (loader.Plan(forPaper: false) is not { } planned)
        {
            return ExitStatus.FlockErrors;
        }

        DatesReport.Write(planned.Plan, host);
        return ExitStatus.Clean;
    }
}
