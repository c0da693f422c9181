using System.CommandLine;
using PaperFlock.Cli.Entering;
using PaperFlock.Cli.Entering.Sheets;
using PaperFlock.Cli.Files;
using PaperFlock.Flocks.Lists;
using PaperFlock.Planning;

namespace PaperFlock.Cli.Commands;

/// <summary>Takes what was written on a printed sheet into the flock file.</summary>
internal static class EnterCommand
{
    private static readonly IPencilSheet[] Sheets = [new ScanResults(), new RaddleMarks(), new TeethToesTeats(), new LambingResults()];

    public static Command Describe(Argument<string> flock, Option<LocalDate?> asOf, Host host)
    {
        var from = new Option<string>("--from") { HelpName = "RESULTS.csv", Description = "the results as a spreadsheet saves them (CSV), instead of typing them" };
        var goodRows = new Option<bool>("--good-rows") { Description = "with --from: enter the good rows even if others are refused" };
        var enter = new Command("enter", "take in what was written on a printed sheet: scan, marks, teeth-toes-teats or lambed");
        foreach (var sheet in Sheets)
        {
            var command = new Command(sheet.Word, sheet.About) { flock, from, goodRows, asOf };
            command.SetAction(typed => Run(sheet, typed.GetRequiredValue(flock), typed.GetValue(asOf), typed.GetValue(from), typed.GetValue(goodRows), host));
            enter.Add(command);
        }

        return enter;
    }

    /// <param name="path">Of the flock file, as typed.</param>
    /// <param name="results">A file of results, as typed; null to be asked.</param>
    /// <exception cref="UsageException">The flock has no such sheet, or a file cannot be read or written.</exception>
    private static int Run(IPencilSheet sheet, string path, LocalDate? asOf, string? results, bool goodRows, Host host)
    {
        if (goodRows && results is null)
        {
            throw new UsageException("--good-rows goes with --from RESULTS.csv");
        }

        if (AnswerBook.Open(path, host) is not { } book)
        {
            return ExitStatus.FlockErrors;
        }

        var plan = SeasonPlanner.Plan(book.Flock, asOf ?? host.Today(book.Flock.Holding.TimeZone));
        if (sheet.Ewes(plan).IsEmpty)
        {
            throw new UsageException(sheet.NoEwes);
        }

        return results is null ? Ask(sheet, book, plan, path, host) : TakeIn(sheet, book, plan, path, results, goodRows, host);
    }

    private static int Ask(IPencilSheet sheet, AnswerBook book, SeasonPlan plan, string path, Host host)
    {
        ITyping typing = host.ReadKey is { } readKey ? new TypedKeys(readKey, host.Out, host.Stop) : new TypedLines(host);
        host.Out.WriteLine(
            $"{sheet.Title}: {ScreenText.Count(sheet.Ewes(plan).Length, "ewe")} in the order of the sheet. Each answer goes into {path} at once. ? shows the keys, q leaves.");
        var session = new EntrySession(sheet, book, plan, typing, host);
        try
        {
            return session.Run() ? ExitStatus.Clean : ExitStatus.WrongUse;
        }
        catch (OperationCanceledException) when (host.Stop.IsCancellationRequested)
        {
            host.Out.WriteLine();
            host.Error.WriteLine(Messages.Complaint("Stopped. What was read back to you is in the file."));
            return ExitStatus.Stopped;
        }
        finally
        {
            Close(session.Tally, path, host);
        }
    }

    private static int TakeIn(IPencilSheet sheet, AnswerBook book, SeasonPlan plan, string path, string results, bool goodRows, Host host)
    {
        var bag = new DiagnosticBag();
        var table = CsvTable.Read(results, InputFile.Read(results, host), bag);
        var rows = new ResultsTable(sheet, table, bag).Read(book.Flock, sheet.Ewes(plan).Select(e => e.Ewe.Tag).ToHashSet(StringComparer.Ordinal), plan.AsOf);
        DiagnosticsOut.Write(table.Source, bag.ToSorted(), host);
        var taken = new RowsTaken(sheet, book, plan.AsOf);
        if (!(goodRows ? taken.EachAlone(rows) : !bag.HasErrors && taken.Together(rows)) && !goodRows)
        {
            host.Error.WriteLine(Messages.Complaint($"{path} is as it was: put the rows right, or enter only the good ones with --good-rows"));
            return ExitStatus.FlockErrors;
        }

        foreach (var words in taken.ReadBack)
        {
            host.Out.WriteLine(words);
        }

        foreach (var who in taken.Refused)
        {
            host.Error.WriteLine(Messages.Complaint($"what is said of {who} does not agree with the rest of the flock file"));
        }

        Close(taken.Tally, path, host);
        return taken.Refused.Count == 0 && !bag.HasErrors ? ExitStatus.Clean : ExitStatus.FlockErrors;
    }

    private static void Close(Tally tally, string path, Host host)
    {
        host.Out.WriteLine(FormattableString.Invariant($"{tally.Entered} entered, {tally.Changed} changed, {tally.Left} left as they were."));
        host.Out.WriteLine(tally.Entered + tally.Changed == 0
            ? "Nothing was entered; the file is as it was."
            : $"Next: {Messages.Program} check {path}, and then {Messages.Program} pack {path}");
    }
}
