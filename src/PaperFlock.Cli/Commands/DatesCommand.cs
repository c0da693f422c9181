using PaperFlock.Cli.Dates;

namespace PaperFlock.Cli.Commands;

/// <summary>The dates of the season on the screen.</summary>
internal static class DatesCommand
{
    public static int Run(Desk desk, Surroundings surroundings)
    {
        if (desk.Plan(forPaper: false) is not { } planned)
        {
            return ExitStatus.FlockErrors;
        }

        DatesReport.Write(planned.Plan, surroundings);
        return ExitStatus.Clean;
    }
}
