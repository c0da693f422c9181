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
    public static int Run(ImmutableArray<string> files, LocalDate? asOf, Surroundings surroundings, ILine line) => files.Length == 1
        ? Check(new Desk(files[0], asOf, surroundings, line), surroundings)
        : ManyFlocks.Run("check", files, surroundings, Words.ManyChecked, (file, own) => Check(new Desk(file, asOf, own, line), own));

    private static int Check(Desk desk, Surroundings surroundings)
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
