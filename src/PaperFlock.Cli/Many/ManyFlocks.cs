using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.ExceptionServices;

namespace PaperFlock.Cli.Many;

/// <summary>
/// One piece of work done for many flocks on all cores. What each has to say is kept together and said in the order given;
/// one that fails does not stop the rest; a summary comes last.
/// </summary>
/// <remarks>No more flocks are in hand at once than there are cores, and of one that is done only its words are kept.</remarks>
internal static class ManyFlocks
{
    /// <param name="command">For the details of a fault.</param>
    /// <param name="files">As they are to be shown.</param>
    /// <param name="summary">Says how many were done and how many were not.</param>
    /// <param name="work">Done for each file, in surroundings of its own; returns one of <see cref="ExitStatus"/>, and may throw as a command may.</param>
    /// <returns>The gravest status of any: a fault before a file that cannot be read or written before errors in a flock file.</returns>
    public static int Run(
        string command, ImmutableArray<string> files, Host host, Func<int, int, string> summary, Func<string, Host, int> work)
    {
        var told = new OutcomesInOrder(files.Length, host);
        // One by one and in order: with a range for each thread the first files would be done last.
        var inOrder = Partitioner.Create(Enumerable.Range(0, files.Length), EnumerablePartitionerOptions.NoBuffering);
        try
        {
            Parallel.ForEach(inOrder, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, i =>
            {
                if (!host.Stop.IsCancellationRequested)
                {
                    told.Add(i, Do(command, files[i], host, work));
                }
            });
        }
        catch (AggregateException several)
        {
            // Only telling can fail here, and it fails alike for all.
            ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }

        if (host.Stop.IsCancellationRequested)
        {
            host.Error.WriteLine(Messages.Complaint(Messages.StoppedEarly(told.Statuses.Count(s => s == ExitStatus.Clean), files.Length)));
            return ExitStatus.Stopped;
        }

        Summarise(files, told.Statuses, summary, host.Out);
        return told.Statuses.Max();
    }

    private static Outcome Do(string command, string file, Host host, Func<string, Host, int> work)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var own = host with { Out = output, Error = error, OutIsTerminal = false, ErrorIsTerminal = false, ShowsProgress = false };
        var status = App.Guard([command, file], own, () => work(file, own));
        // That it was stopped is said once, for all of them.
        return status == ExitStatus.Stopped ? new Outcome(status, string.Empty, string.Empty) : new Outcome(status, output.ToString(), error.ToString());
    }

    private static void Summarise(ImmutableArray<string> files, ImmutableArray<int> statuses, Func<int, int, string> summary, TextWriter output)
    {
        var done = statuses.Count(s => s == ExitStatus.Clean);
        output.WriteLine();
        output.WriteLine(summary(done, files.Length - done));
        foreach (var (file, status) in files.Zip(statuses))
        {
            output.WriteLine(Messages.Outcome(file, status));
        }
    }
}
