using System.CommandLine;
using NodaTime;
using PaperFlock.Cli.Commands;
using PaperFlock.Cli.Entering.Sheets;
using PaperFlock.Cli.Wiring;

namespace PaperFlock.Cli.Entering;

/// <summary>How <c>enter</c> is typed: a command for each sheet.</summary>
internal static class EnterLine
{
    public static IPencilSheet[] Sheets { get; } = [new ScanResults(), new RaddleMarks(), new TeethToesTeats(), new LambingResults()];

    public static Command Describe(Argument<string> flock, Option<LocalDate?> asOf, Surroundings surroundings, ILine line)
    {
        var enter = new Command("enter", EnterWords.About);
        foreach (var sheet in Sheets)
        {
            var command = new Command(sheet.Word, sheet.About) { flock, asOf };
            command.SetAction(typed => EnterCommand.Run(
                sheet, typed.GetRequiredValue(flock), typed.GetValue(asOf), surroundings, line));
            enter.Add(command);
        }

        return enter;
    }
}
