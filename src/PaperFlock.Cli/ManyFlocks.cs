namespace PaperFlock.Cli;

/// <summary>One piece of work for many flocks, one after another: one that fails does not stop the rest, and a summary comes last.</summary>
internal static class ManyFlocks
{
    /// <param name="command">For the details of a fault.</param>
    /// <param name="files">As they are to be shown. A single one has no summary.</param>
    /// <param name="noun">What one of them comes to, such as "pack".</param>
    /// <param name="done">What has been done to those that came to it, such as "made".</param>
    /// <param name="work">Done for each file; returns one of <see cref="ExitStatus"/>, and may throw as a command may.</param>
    /// <returns>The highest status of any.</returns>
    public static int Run(string command, ImmutableArray<string> files, Host host, string noun, string done, Func<string, int> work)
    {
        if (files.Length == 1)
        {
            return work(files[0]);
        }

        var statuses = new List<int>();
        try
        {
            foreach (var file in files)
            {
                host.Stop.ThrowIfCancellationRequested();
                statuses.Add(App.Guard([command, file], host, () => work(file)));
            }
        }
        catch (OperationCanceledException) when (host.Stop.IsCancellationRequested)
        {
            host.Error.WriteLine(Messages.Complaint(
                $"stopped: {statuses.Count(s => s == ExitStatus.Clean)} of {ScreenText.Count(files.Length, "flock")} done, and what was written for them stays"));
            return ExitStatus.Stopped;
        }

        var good = statuses.Count(s => s == ExitStatus.Clean);
        host.Out.WriteLine();
        host.Out.WriteLine($"{ScreenText.Count(good, noun)} {done}, {files.Length - good} failed");
        foreach (var (file, status) in files.Zip(statuses))
        {
            host.Out.WriteLine($"  {file}: " + status switch
            {
                ExitStatus.Clean => "done",
                ExitStatus.FlockErrors => "there are errors in it",
                ExitStatus.WrongUse => "could not be read or written",
                _ => "failed by a fault of the program",
            });
        }

        return statuses.Max();
    }
}
