using PaperFlock.Sheets;

namespace PaperFlock.Cli;

/// <summary>The whole program, without a process round it.</summary>
internal static class App
{
    /// <returns>One of <see cref="ExitStatus"/>; nothing is thrown.</returns>
    public static int Run(IReadOnlyList<string> args, Host host)
    {
        var dropped = AreDropped(args, host);
        int status;
        try
        {
            if (args.Count == 0 && host.WaitBeforeClosing is not null)
            {
                return Menu.Run(host);
            }

            status = Guard(args, host, () => CommandLine.Run(args, dropped, host));
        }
        catch (OperationCanceledException) when (host.Stop.IsCancellationRequested)
        {
            host.Error.WriteLine(Messages.Complaint("stopped; nothing was written"));
            status = ExitStatus.Stopped;
        }

        if (dropped && host.WaitBeforeClosing is { } wait)
        {
            host.Error.WriteLine();
            host.Error.WriteLine("Press Enter to close this window.");
            wait();
        }

        return status;
    }

    /// <summary>
    /// Flock files with no command before them, as when they are dropped on the program: their packs are made beside them. One that is not there is complained
    /// of later. A command wins over a file or folder that happens to be called like it: those have an ending or a path.
    /// </summary>
    private static bool AreDropped(IReadOnlyList<string> args, Host host) =>
        args is [var first, ..]
        && (Path.GetExtension(first).ToUpperInvariant() is ".YAML" or ".YML"
            || (!first.StartsWith('-') && first.AsSpan().ContainsAny('.', '/', '\\') && Path.Exists(host.FullPath(first))));

    /// <summary>Does a piece of work, and tells the user of whatever it throws.</summary>
    /// <param name="args">What was asked for, for the details of a fault.</param>
    /// <returns>What the work returns, or the status that goes with what it threw.</returns>
    /// <exception cref="OperationCanceledException">The user stopped it.</exception>
    public static int Guard(IReadOnlyList<string> args, Host host, Func<int> work)
    {
        try
        {
            return work();
        }
        catch (Exception e) when (e is UsageException or PackRequestException)
        {
            foreach (var complaint in e.Message.Split('\n'))
            {
                host.Error.WriteLine(Messages.Complaint(complaint));
            }

            return ExitStatus.WrongUse;
        }
        catch (Exception e) when (e is not OperationCanceledException || !host.Stop.IsCancellationRequested)
        {
            if (e is SheetException)
            {
                // The one fault a keeper can work round: the message names the sheet and the ewe whose words are too long.
                host.Error.WriteLine(Messages.Complaint($"something is too long for its place on the paper: {e.Message}"));
            }

            return Report(e, args, host.Error, host.TempFolder);
        }
    }

    /// <summary>Tells of a fault of the program in one line, and puts its details where they can be sent from.</summary>
    /// <param name="tempFolder">Full path; nothing is lost where it cannot be written to.</param>
    public static int Report(Exception fault, IReadOnlyList<string> args, TextWriter error, string tempFolder)
    {
        var details = FaultReport.Save(fault, args, tempFolder) is { } place
            ? $" with the details in {place}"
            : $": {fault.GetType().Name}, {fault.Message.ReplaceLineEndings(" ")}";
        error.WriteLine(Messages.Complaint("this is a fault of the program, not of your flock file; please report it" + details));
        return ExitStatus.Fault;
    }
}
