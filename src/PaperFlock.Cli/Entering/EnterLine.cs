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

    public static Command Describe(Argument<string> flock, Option<LocalDate?> asOf, Host host, ILine line)
    {
        var enter = new Command("enter", EnterMessages.About);
        var from = new Option<string>("--from") { HelpName = EnterMessages.ResultsValue, Description = EnterMessages.AboutFrom };
        var goodRows = new Option<bool>("--good-rows") { Description = EnterMessages.AboutGoodRows };
        foreach (var sheet in Sheets)
        {
            var command = new Command(sheet.Word, sheet.About) { flock, from, goodRows, asOf };
            command.SetAction(typed => EnterCommand.Run(
                sheet,
                new EnterWishes(typed.GetRequiredValue(flock), typed.GetValue(asOf), typed.GetValue(from), typed.GetValue(goodRows)),
                host,
                line));
            enter.Add(command);
        }

        return enter;
    }
}
