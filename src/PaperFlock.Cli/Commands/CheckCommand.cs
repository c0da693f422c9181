using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Cli.Many;
using PaperFlock.Cli.Wiring;

namespace PaperFlock.Cli.Commands;

/// <summary>Reads and plans, and says what it found.</summary>
internal static class CheckCommand
{
    /// <param name="files">As they are to be shown; never empty.</param>
    /// <param name="asOf">Null for today at each holding.</param>
    public static int Run(ImmutableArray<string> files, LocalDate? asOf, Host host, ILine line) => files.Length == 1
        ? Check(new FlockLoader(files[0], asOf, host, line), host)
        : ManyFlocks.Run("check", files, host, Messages.ManyChecked, (file, own) => Check(new FlockLoader(file, asOf, own, line), own));

    private static int Check(FlockLoader loader, Host host)
    {
        if (loader.Plan(forPaper: true) is not { } planned)
        {
            return ExitStatus.FlockErrors;
        }

        host.Out.WriteLine(Messages.Found(loader.Path, planned.Plan));
        host.Out.WriteLine(planned.Warnings == 0 ? Messages.NothingWrong : Messages.NoErrors(planned.Warnings));
        return ExitStatus.Clean;
    }
}
