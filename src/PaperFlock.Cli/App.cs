using PaperFlock.Cli.Files;
using PaperFlock.Cli.Wiring;
using PaperFlock.Sheets;

namespace PaperFlock.Cli;

/// <summary>The whole program, without a process round it.</summary>
internal static class App
{
    /// <returns>One of <see cref="ExitStatus"/>; nothing is thrown.</returns>
    public static int Run(IReadOnlyList<string> args, Host host, ILine line)
    {
        var dropped = DroppedFiles.Are(args, host);
        var status = Guard(args, host, () => CommandLine.Run(args, dropped, host, line));
        if ((dropped || args.Count == 0) && host.WaitBeforeClosing is { } wait)
        {
            host.Error.WriteLine();
            host.Error.WriteLine(Messages.PressEnter);
            wait();
        }

        return status;
    }

    /// <summary>Does a piece of work, and tells the user of whatever it throws.</summary>
    /// <param name="args">What was asked for, for the details of a fault.</param>
    /// <returns>What the work returns, or the status that goes with what it threw.</returns>
    public static int Guard(IReadOnlyList<string> args, Host host, Func<int> work)
    {
        try
        {
            return work();
        }
        catch (UsageException e)
        {
            host.Error.WriteLine(Messages.Complaint(e.Message));
            return ExitStatus.WrongUse;
        }
        catch (OperationCanceledException) when (host.Stop.IsCancellationRequested)
        {
            host.Error.WriteLine(Messages.Complaint(Messages.Stopped));
            return ExitStatus.Stopped;
        }
        catch (SheetException e)
        {
            // The one fault a keeper can work round: the message names the sheet and the ewe whose words are too long.
            host.Error.WriteLine(Messages.Complaint(Messages.DoesNotFit(e.Message)));
            return Report(e, args, host.Error, host.TempFolder);
        }
        catch (Exception e)
        {
            return Report(e, args, host.Error, host.TempFolder);
        }
    }

    /// <summary>Tells of a fault of the program in one line, and puts its details where they can be sent from.</summary>
    /// <param name="tempFolder">Full path; nothing is lost where it cannot be written to.</param>
    public static int Report(Exception fault, IReadOnlyList<string> args, TextWriter error, string tempFolder)
    {
        var place = FaultReport.Save(fault, args, tempFolder);
        error.WriteLine(Messages.Complaint(place is null ? Messages.FaultUnsaved(fault) : Messages.Fault(place)));
        return ExitStatus.Fault;
    }
}
