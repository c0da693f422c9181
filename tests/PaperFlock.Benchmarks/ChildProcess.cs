using System.Diagnostics;

namespace PaperFlock.Benchmarks;

/// <summary>Programs started, timed and watched. Memory is read from /proc, so it is known on Linux only.</summary>
internal static class ChildProcess
{
    private const int MillisecondsBetweenLooks = 20;

    /// <param name="watched">Memory is read while it runs, which costs it a little time.</param>
    /// <exception cref="InvalidOperationException">It ended badly.</exception>
    public static Measured Run(string program, IEnumerable<string> arguments, bool watched)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        var watch = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        var peak = 0.0;
        while (watched && !process.WaitForExit(MillisecondsBetweenLooks))
        {
            peak = Math.Max(peak, Family(process.Id).Sum(Megabytes));
        }

        process.WaitForExit();
        var milliseconds = watch.Elapsed.TotalMilliseconds;
        return process.ExitCode == 0
            ? new Measured(milliseconds, peak, output.Result)
            : throw new InvalidOperationException($"{program} ended with {process.ExitCode}: {error.Result}");
    }

    /// <summary>A process and all that it started.</summary>
    private static IEnumerable<int> Family(int process)
    {
        yield return process;
        foreach (var child in Words($"/proc/{process}/task/{process}/children").SelectMany(id => Family(int.Parse(id, CultureInfo.InvariantCulture))))
        {
            yield return child;
        }
    }

    /// <summary>Its proportional set: a page shared by several counts in parts, so that a browser's many processes are not counted many times.</summary>
    private static double Megabytes(int process)
    {
        var words = Words($"/proc/{process}/smaps_rollup");
        var at = Array.IndexOf(words, "Pss:");
        return at < 0 ? 0 : double.Parse(words[at + 1], CultureInfo.InvariantCulture) / 1024;
    }

    /// <returns>None where the process is gone.</returns>
    private static string[] Words(string file)
    {
        try
        {
            return File.ReadAllText(file).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        }
        catch (IOException)
        {
            return [];
        }
    }
}
