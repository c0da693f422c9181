namespace PaperFlock.Cli;

/// <summary>What one flock of many came to.</summary>
/// <param name="Status">One of <see cref="ExitStatus"/>.</param>
/// <param name="Plan">Null when the file has errors or could not be read.</param>
/// <param name="Sheets">Of paper; null where none was to be printed.</param>
internal sealed record FlockResult(int Status, Planning.SeasonPlan? Plan = null, int Warnings = 0, int? Sheets = null);

/// <summary>One piece of work for many flocks, one after another: one that fails does not stop the rest, and a summary comes last.</summary>
internal static class ManyFlocks
{
    /// <param name="command">For the details of a fault.</param>
    /// <param name="files">As they are to be shown. A single one has no summary.</param>
    /// <param name="noun">What one of them comes to, such as "pack".</param>
    /// <param name="done">What has been done to those that came to it, such as "made".</param>
    /// <param name="work">Done for each file; may throw as a command may.</param>
    /// <returns>The highest status of any.</returns>
    public static int Run(string command, ImmutableArray<string> files, Host host, string noun, string done, Func<string, FlockResult> work)
    {
        if (files.Length == 1)
        {
            return work(files[0]).Status;
        }

        var results = new List<FlockResult>();
        try
        {
            foreach (var file in files)
            {
                host.Stop.ThrowIfCancellationRequested();
                FlockResult? result = null;
                var status = App.Guard([command, file], host, () => (result = work(file)).Status);
                results.Add((result ?? new FlockResult(status)) with { Status = status });
            }
        }
        catch (OperationCanceledException) when (host.Stop.IsCancellationRequested)
        {
            host.Error.WriteLine(Messages.Complaint(
                $"stopped: {results.Count(r => r.Status == ExitStatus.Clean)} of {ScreenText.Count(files.Length, "flock")} done, and what was written for them stays"));
            return ExitStatus.Stopped;
        }

        var good = results.Count(r => r.Status == ExitStatus.Clean);
        host.Out.WriteLine();
        host.Out.WriteLine($"{ScreenText.Count(good, noun)} {done}, {files.Length - good} failed");
        new ReportWriter(host).Table(["flock", "came to", "pack", "sheets", "warnings", "first due"], files.Zip(results, Row));
        return results.Max(r => r.Status);
    }

    private static string[] Row(string file, FlockResult result) =>
    [
        file,
        result.Status switch
        {
            ExitStatus.Clean => "done",
            ExitStatus.FlockErrors => "there are errors in it",
            ExitStatus.WrongUse => "could not be read or written",
            _ => "failed by a fault of the program",
        },
        result.Plan is { } plan ? PackMaker.IdOf(plan) : "",
        result.Sheets?.ToString(CultureInfo.InvariantCulture) ?? "",
        result.Plan is null ? "" : result.Warnings.ToString(CultureInfo.InvariantCulture),
        result.Plan is null ? "" : result.Plan.Dates.FirstDue is { } due ? ScreenText.Day(due) : "none",
    ];
}
