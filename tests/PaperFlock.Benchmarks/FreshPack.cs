namespace PaperFlock.Benchmarks;

/// <summary>The published program making a pack where there is none: over an earlier one it would read that back and hold the two against each other.</summary>
internal static class FreshPack
{
    /// <param name="program">A file that can be started.</param>
    /// <param name="flock">A flock file; the folder it is in may be written to.</param>
    /// <param name="watched">See <see cref="ChildProcess"/>.</param>
    public static Measured Run(string program, string flock, bool watched)
    {
        var packs = Path.Combine(Path.GetDirectoryName(flock)!, "packs");
        var run = ChildProcess.Run(program, ["pack", flock, "--as-of", $"{BenchFlock.AsOf:uuuu-MM-dd}", "--out", packs], watched);
        Directory.Delete(packs, recursive: true);
        return run;
    }
}
