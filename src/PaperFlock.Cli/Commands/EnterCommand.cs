using NodaTime;
using PaperFlock.Cli.Csv;
using PaperFlock.Cli.Entering;
using PaperFlock.Cli.Files;
using PaperFlock.Cli.Wiring;
using PaperFlock.Diagnostics;
using PaperFlock.Languages;
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
    public static int Run(IPencilSheet sheet, EnterWishes wishes, Surroundings surroundings, ILine line)
    {
        if (wishes is { GoodRows: true, From: null })
        {
            throw new UsageException(EnterWords.GoodRowsAlone);
        }

        if (AnswerBook.Open(wishes.Path, surroundings) is not { } book)
        {
            return ExitStatus.FlockErrors;
        }

        var today = wishes.AsOf ?? surroundings.Clock.GetCurrentInstant().InZone(book.Flock.Holding.TimeZone).Date;
        var plan = line.Plan(book.Flock, today, Language.English);
        if (sheet.Ewes(plan).IsEmpty)
        {
            throw new UsageException(sheet.NoEwes);
        }

        return wishes.From is { } results ? TakeIn(sheet, book, plan, wishes, results, surroundings) : Ask(sheet, book, plan, wishes.Path, surroundings);
    }

    private static int Ask(IPencilSheet sheet, AnswerBook book, SeasonPlan plan, string path, Surroundings surroundings)
    {
        ITyping typing = surroundings.Keyboard is { } keyboard
            ? new TypedKeys(keyboard, surroundings.Out, surroundings.Stop)
            : new TypedLines(surroundings);
        surroundings.Out.WriteLine(EnterWords.Opening(sheet, path, sheet.Ewes(plan).Length));
        var sitting = new Sitting(sheet, book, plan, typing, surroundings);
        try
        {
            return sitting.Run() ? ExitStatus.Clean : ExitStatus.WrongUse;
        }
        catch (OperationCanceledException) when (surroundings.Stop.IsCancellationRequested)
        {
            surroundings.Out.WriteLine();
            surroundings.Error.WriteLine(Words.Complaint(EnterWords.Interrupted));
            return ExitStatus.Stopped;
        }
        finally
        {
            Close(sitting.Tally, path, surroundings);
        }
    }

    private static int TakeIn(IPencilSheet sheet, AnswerBook book, SeasonPlan plan, EnterWishes wishes, string results, Surroundings surroundings)
    {
        var bag = new DiagnosticBag();
        var table = CsvTable.Read(results, FlockBytes.Read(results, surroundings), bag);
        var rows = new ResultsTable(sheet, table, bag).Read(book.Flock, sheet.Ewes(plan).Select(e => e.Ewe.Tag).ToHashSet(StringComparer.Ordinal), plan.AsOf);
        DiagnosticsOut.Write(table.Source, bag.ToSorted(), surroundings);
        if (bag.HasErrors && !wishes.GoodRows)
        {
            surroundings.Error.WriteLine(Words.Complaint(EnterWords.NothingTaken(wishes.Path)));
            return ExitStatus.FlockErrors;
        }

        var taken = new RowsTaken(sheet, book, plan.AsOf);
        var isWhole = wishes.GoodRows ? taken.EachAlone(rows) : taken.Together(rows);
        if (!isWhole && !wishes.GoodRows)
        {
            surroundings.Error.WriteLine(Words.Complaint(EnterWords.NothingTaken(wishes.Path)));
            return ExitStatus.FlockErrors;
        }

        foreach (var words in taken.ReadBack)
        {
            surroundings.Out.WriteLine(words);
        }

        foreach (var who in taken.Refused)
        {
            surroundings.Error.WriteLine(Words.Complaint(EnterWords.RowRefused(who)));
        }

        Close(taken.Tally, wishes.Path, surroundings);
        return isWhole && !bag.HasErrors ? ExitStatus.Clean : ExitStatus.FlockErrors;
    }

    private static void Close(Tally tally, string path, Surroundings surroundings)
    {
        surroundings.Out.WriteLine(EnterWords.Summary(tally.Entered, tally.Changed, tally.Left));
        surroundings.Out.WriteLine(tally.Entered + tally.Changed == 0 ? EnterWords.NothingEntered : EnterWords.Next(path));
    }
}
