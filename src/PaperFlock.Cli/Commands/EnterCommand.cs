using NodaTime;
using PaperFlock.Cli.Csv;
using PaperFlock.Cli.Entering;
using PaperFlock.Cli.Files;
using PaperFlock.Cli.Wiring;
using PaperFlock.Diagnostics;
using PaperFlock.Planning;

namespace PaperFlock.Cli.Commands;

/// <param name="Path">Of the flock file, as typed.</param>
/// <param name="AsOf">Null for today at the holding.</param>
/// <param name="From">A file of results, as typed; null to be asked.</param>
/// <param name="GoodRows">Rows that are refused do not keep the others out.</param>
internal sealed record EnterWishes(string Path, LocalDate? AsOf, string? From, bool GoodRows);

/// <summary>Takes what was written on a printed sheet into the flock file.</summary>
internal static class EnterCommand
{
    /// <exception cref="UsageException">The flock has no such sheet, or a file cannot be read or written.</exception>
    public static int Run(IPencilSheet sheet, EnterWishes options, Host host, ILine line)
    {
        if (options is { GoodRows: true, From: null })
        {
            throw new UsageException(EnterMessages.GoodRowsAlone);
        }

        if (AnswerBook.Open(options.Path, host) is not { } book)
        {
            return ExitStatus.FlockErrors;
        }

        var today = options.AsOf ?? host.Clock.GetCurrentInstant().InZone(book.Flock.Holding.TimeZone).Date;
        var plan = line.Plan(book.Flock, today);
        if (sheet.Ewes(plan).IsEmpty)
        {
            throw new UsageException(sheet.NoEwes);
        }

        return options.From is { } results ? TakeIn(sheet, book, plan, options, results, host) : Ask(sheet, book, plan, options.Path, host);
    }

    private static int Ask(IPencilSheet sheet, AnswerBook book, SeasonPlan plan, string path, Host host)
    {
        ITyping typing = host.Keyboard is { } keyboard
            ? new TypedKeys(keyboard, host.Out, host.Stop)
            : new TypedLines(host);
        host.Out.WriteLine(EnterMessages.Opening(sheet, path, sheet.Ewes(plan).Length));
        var session = new EntrySession(sheet, book, plan, typing, host);
        try
        {
            return session.Run() ? ExitStatus.Clean : ExitStatus.WrongUse;
        }
        catch (OperationCanceledException) when (host.Stop.IsCancellationRequested)
        {
            host.Out.WriteLine();
            host.Error.WriteLine(Messages.Complaint(EnterMessages.Interrupted));
            return ExitStatus.Stopped;
        }
        finally
        {
            Close(session.Tally, path, host);
        }
    }

    private static int TakeIn(IPencilSheet sheet, AnswerBook book, SeasonPlan plan, EnterWishes options, string results, Host host)
    {
        var bag = new DiagnosticBag();
        var table = CsvTable.Read(results, FlockBytes.Read(results, host), bag);
        var rows = new ResultsTable(sheet, table, bag).Read(book.Flock, sheet.Ewes(plan).Select(e => e.Ewe.Tag).ToHashSet(StringComparer.Ordinal), plan.AsOf);
        DiagnosticsOut.Write(table.Source, bag.ToSorted(), host);
        if (bag.HasErrors && !options.GoodRows)
        {
            host.Error.WriteLine(Messages.Complaint(EnterMessages.NothingTaken(options.Path)));
            return ExitStatus.FlockErrors;
        }

        var taken = new RowsTaken(sheet, book, plan.AsOf);
        var isWhole = options.GoodRows ? taken.EachAlone(rows) : taken.Together(rows);
        if (!isWhole && !options.GoodRows)
        {
            host.Error.WriteLine(Messages.Complaint(EnterMessages.NothingTaken(options.Path)));
            return ExitStatus.FlockErrors;
        }

        foreach (var words in taken.ReadBack)
        {
            host.Out.WriteLine(words);
        }

        foreach (var who in taken.Refused)
        {
            host.Error.WriteLine(Messages.Complaint(EnterMessages.RowRefused(who)));
        }

        Close(taken.Tally, options.Path, host);
        return isWhole && !bag.HasErrors ? ExitStatus.Clean : ExitStatus.FlockErrors;
    }

    private static void Close(Tally tally, string path, Host host)
    {
        host.Out.WriteLine(EnterMessages.Summary(tally.Entered, tally.Changed, tally.Left));
        host.Out.WriteLine(tally.Entered + tally.Changed == 0 ? EnterMessages.NothingEntered : EnterMessages.Next(path));
    }
}
