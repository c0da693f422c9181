using System.CommandLine;
using PaperFlock.Cli.Entering;
using PaperFlock.Cli.Entering.Sheets;
using PaperFlock.Flocks.Lists;
using PaperFlock.Planning;

namespace PaperFlock.Cli.Commands;

/// <summary>Takes what was written on a printed sheet into the flock file.</summary>
internal static class EnterCommand
{
    private static readonly PencilSheet[] Sheets = [new ScanResults(), new RaddleMarks(), new TeethToesTeats(), new LambingResults(), new Losses()];

    public static Command Describe(Argument<string> flock, Option<LocalDate?> asOf, Host host)
    {
        var from = new Option<string>("--from") { HelpName = "RESULTS.csv", Description = "the results as a spreadsheet saves them (CSV), instead of typing them" };
        var goodRows = new Option<bool>("--good-rows") { Description = "with --from: enter the good rows even if others are refused" };
        var tagColumn = new Option<string?>(ListTables.Option) { HelpName = "COLUMN", Description = $"with --from: {ListTables.About}" };
        var enter = new Command("enter", "take in what was written on a printed sheet: scan, marks, teeth-toes-teats or lambed; or losses");
        foreach (var sheet in Sheets)
        {
            var command = new Command(sheet.Word, sheet.About) { flock, from, goodRows, tagColumn, asOf };
            command.SetAction(typed => Run(
                sheet, typed.GetRequiredValue(flock), FlockLoader.Today(typed.GetValue(asOf), host), typed.GetValue(from), typed.GetValue(tagColumn), typed.GetValue(goodRows), host));
            enter.Add(command);
        }

        return enter;
    }

    /// <param name="path">Of the flock file, as typed.</param>
    /// <param name="results">A file of results, as typed; null to be asked.</param>
    /// <exception cref="UsageException">The flock has no such sheet, or a file cannot be read or written.</exception>
    private static int Run(PencilSheet sheet, string path, Func<DateTimeZone, LocalDate> today, string? results, string? tagColumn, bool goodRows, Host host)
    {
        if (results is null && (goodRows || tagColumn is not null))
        {
            throw new UsageException($"{(goodRows ? "--good-rows" : ListTables.Option)} goes with --from RESULTS.csv");
        }

        if (FlockLoader.Open(path, InputFile.Read(path, host), today, host) is not { } file)
        {
            return ExitStatus.FlockErrors;
        }

        var book = new AnswerBook(path, file, today, host);
        var plan = SeasonPlanner.Plan(book.Flock, today(book.Flock.Holding.TimeZone));
        if (sheet.Ewes(plan).IsEmpty)
        {
            throw new UsageException(sheet.NoEwes);
        }

        var changes = new Changes(sheet, book, plan.AsOf);
        try
        {
            return results is null
                ? Ask(sheet, book, plan, changes, path, host)
                : TakeIn(sheet, book, plan, changes, path, bag => ListTables.Open(results, tagColumn, heading => ResultsTable.IsKnown(sheet, heading), bag, host), goodRows, host);
        }
        finally
        {
            host.Out.WriteLine(changes.All.IsEmpty
                ? "Nothing was entered; the file is as it was."
                : $"{changes.Entered} entered, {changes.Changed} changed.\n{Messages.Next(Messages.Typed("check", path), Messages.Typed("pack", path))}");
        }
    }

    private static int Ask(PencilSheet sheet, AnswerBook book, SeasonPlan plan, Changes changes, string path, Host host)
    {
        var typing = Typing(host);
        host.Out.WriteLine(
            $"{sheet.Title}: {ScreenText.Count(sheet.Ewes(plan).Length, "ewe")} {sheet.Order}. Type an answer and press Enter: it goes into {path} at once. ? shows what to type, q leaves.");
        try
        {
            if (new EntrySession(sheet, book, plan, typing, changes, host).Run())
            {
                return ExitStatus.Clean;
            }

            new Review(changes, typing, host).Run(mayAsk: false);
            return ExitStatus.WrongUse;
        }
        catch (OperationCanceledException) when (host.Stop.IsCancellationRequested)
        {
            host.Out.WriteLine();
            new Review(changes, typing, host).Run(mayAsk: false);
            host.Error.WriteLine(Messages.Complaint("Stopped. What was read back to you is in the file."));
            return ExitStatus.Stopped;
        }
    }

    private static int TakeIn(
        PencilSheet sheet, AnswerBook book, SeasonPlan plan, Changes changes, string path, Func<DiagnosticBag, (CsvTable Csv, HeadedTable? Table)> open, bool goodRows, Host host)
    {
        var bag = new DiagnosticBag();
        var (csv, table) = open(bag);
        HeadedTable.SayWhatIsMissing(csv, table, bag);
        Ewe? Which(string typed, ImmutableArray<Ewe> ewes) => host.InIsTerminal ? WhichEwe.Ask(typed, ewes, host) : null;
        var rows = table is null ? [] : new ResultsTable(sheet, table, Which, bag).Read(book.Flock, sheet.Ewes(plan).Select(e => e.Ewe.Tag).ToHashSet(StringComparer.Ordinal), plan.AsOf);
        var isEntered = (goodRows || !bag.HasErrors) && new RowsTaken(book, changes, bag).Enter(rows, goodRows);
        DiagnosticsOut.Write(csv.Source, bag.ToSorted(), host);
        if (!isEntered)
        {
            host.Error.WriteLine(Messages.Complaint($"{path} is as it was: put the rows right, or enter only the good ones with --good-rows"));
            return ExitStatus.FlockErrors;
        }

        new Review(changes, Typing(host), host).Run(mayAsk: host.InIsTerminal);
        return bag.HasErrors ? ExitStatus.FlockErrors : ExitStatus.Clean;
    }

    private static ITyping Typing(Host host) => host.ReadKey is { } readKey ? new TypedKeys(readKey, host.Out, host.Stop) : new TypedLines(host);
}
