namespace PaperFlock.Cli.Commands;

/// <summary>Reads and plans, and says what it found.</summary>
internal static class CheckCommand
{
    public static int Run(Desk desk, Surroundings surroundings)
    {
        if (desk.Plan(forPaper: true) is not { } planned)
        {
            return ExitStatus.FlockErrors;
        }

        surroundings.Out.WriteLine(Words.Found(desk.Path, planned.Plan));
        surroundings.Out.WriteLine(planned.Warnings == 0 ? Words.NothingWrong : Words.NoErrors(planned.Warnings));
        return ExitStatus.Clean;
    }
}
