using PaperFlock.Cli.Figures;

namespace PaperFlock.Cli.Commands;

/// <summary>The whole plan as JSON.</summary>
internal static class FiguresCommand
{
    public static int Run(Desk desk, Surroundings surroundings)
    {
        if (desk.Plan(forPaper: false) is not { } planned)
        {
            return ExitStatus.FlockErrors;
        }

        surroundings.Out.Write(FiguresJson.Of(planned.Plan) + '\n');
        return ExitStatus.Clean;
    }
}
