using NodaTime;
using PaperFlock.Cli.Entering;
using PaperFlock.Cli.Wiring;

namespace PaperFlock.Cli.Commands;

/// <summary>Takes what was written on a printed sheet into the flock file.</summary>
internal static class EnterCommand
{
    /// <param name="path">Of the flock file, as typed.</param>
    /// <param name="asOf">Null for today at the holding.</param>
    public static int Run(IPencilSheet sheet, string path, LocalDate? asOf, Surroundings surroundings, ILine line)
    {
        if (AnswerBook.Open(path, surroundings) is not { } book)
        {
            return ExitStatus.FlockErrors;
        }

        var today = asOf ?? surroundings.Clock.GetCurrentInstant().InZone(book.Flock.Holding.TimeZone).Date;
        var plan = line.Plan(book.Flock, today);
        var ewes = sheet.Ewes(plan);
        if (ewes.IsEmpty)
        {
            throw new UsageException(sheet.NoEwes);
        }

        ITyping typing = surroundings.Keyboard is { } keyboard
            ? new TypedKeys(keyboard, surroundings.Out, surroundings.Stop)
            : new TypedLines(surroundings);
        surroundings.Out.WriteLine(EnterWords.Opening(sheet, path, ewes.Length));
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
            var tally = sitting.Tally;
            surroundings.Out.WriteLine(EnterWords.Summary(tally.Entered, tally.Changed, tally.Left));
            surroundings.Out.WriteLine(tally.Entered + tally.Changed == 0 ? EnterWords.NothingEntered : EnterWords.Next(path));
        }
    }
}
