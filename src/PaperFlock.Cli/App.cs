using PaperFlock.Cli.Files;
using PaperFlock.Cli.Wiring;
using PaperFlock.Sheets;

namespace PaperFlock.Cli;

/// <summary>The whole program, without a process round it.</summary>
internal static class App
{
    /// <returns>One of <see cref="ExitStatus"/>; nothing is thrown.</returns>
    public static int Run(IReadOnlyList<string> args, Surroundings surroundings, ILine line)
    {
        var dropped = DroppedFiles.Are(args, surroundings);
        var status = Guard(args, surroundings, () => CommandLine.Run(args, dropped, surroundings, line));
        if ((dropped || args.Count == 0) && surroundings.WaitBeforeClosing is { } wait)
        {
            surroundings.Error.WriteLine();
            surroundings.Error.WriteLine(Words.PressEnter);
            wait();
        }

        return status;
    }

    /// <summary>Does a piece of work, and tells the user of whatever it throws.</summary>
    /// <param name="args">What was asked for, for the details of a fault.</param>
    /// <returns>What the work returns, or the status that goes with what it threw.</returns>
    public static int Guard(IReadOnlyList<string> args, Surroundings surroundings, Func<int> work)
    {
        try
        {
            return work();
        }
        catch (UsageException e)
        {
            surroundings.Error.WriteLine(Words.Complaint(e.Message));
            return ExitStatus.WrongUse;
        }
        catch (OperationCanceledException) when (surroundings.Stop.IsCancellationRequested)
        {
            surroundings.Error.WriteLine(Words.Complaint(Words.Stopped));
            return ExitStatus.Stopped;
        }
        catch (SheetException e)
        {
            // The one fault a keeper can work round: the message names the sheet and the ewe whose words are too long.
            surroundings.Error.WriteLine(Words.Complaint(Words.DoesNotFit(e.Message)));
            return Report(e, args, surroundings.Error, surroundings.TempFolder);
        }
        catch (Exception e)
        {
            return Report(e, args, surroundings.Error, surroundings.TempFolder);
        }
    }

    /// <summary>Tells of a fault of the program in one line, and puts its details where they can be sent from.</summary>
    /// <param name="tempFolder">Full path; nothing is lost where it cannot be written to.</param>
    public static int Report(Exception fault, IReadOnlyList<string> args, TextWriter error, string tempFolder)
    {
        var place = FaultReport.Save(fault, args, tempFolder);
        error.WriteLine(Words.Complaint(place is null ? Words.FaultUnsaved(fault) : Words.Fault(place)));
        return ExitStatus.Fault;
    }
}
