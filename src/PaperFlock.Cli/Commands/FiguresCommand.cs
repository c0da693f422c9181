using PaperFlock.Cli.Figures;

namespace PaperFlock.Cli.Commands;

/// <summary>The whole plan as JSON.</summary>
internal static class FiguresCommand
{
    public static int Run(FlockLoader loader, Host host)
    {
        if (loader.Plan(forPaper: false) is not { } planned)
        {
            return ExitStatus.FlockErrors;
        }

        host.Out.Write(FiguresJson.Of(planned.Plan) + '\n');
        return ExitStatus.Clean;
    }
}
