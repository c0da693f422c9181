namespace PaperFlock.Benchmarks;

/// <summary>The published program as it is started by hand, in turn with an empty .NET program started in the usual way.</summary>
internal static class WholeProgram
{
    private const string Unit = "empty .NET program";

    /// <summary>The program in a folder.</summary>
    public static string In(string folder) => Path.Combine(folder, OperatingSystem.IsWindows() ? "paperflock.exe" : "paperflock");

    /// <param name="folder">Where `dotnet publish` put the program.</param>
    public static void Run(string folder, int runs)
    {
        var work = Directory.CreateTempSubdirectory("paperflock-program-").FullName;
        var (small, large) = (Path.Combine(work, "24.yaml"), Path.Combine(work, "2000.yaml"));
        File.WriteAllBytes(small, BenchFlock.File(24));
        File.WriteAllBytes(large, BenchFlock.File(2000));
        var figures = new Figures();
        try
        {
            // Once for the disk's cache, and for memory, which costs time to look at.
            Pack(large, watched: true);
            for (var i = 0; i < runs; i++)
            {
                figures.Add(Unit, ChildProcess.Run("dotnet", [Path.Combine(AppContext.BaseDirectory, "PaperFlock.Empty.dll")], watched: false).Milliseconds);
                Add("check, 24 ewes", "check", small);
                Add("dates, 24 ewes", "dates", small);
                figures.Add("pack, 24 ewes", Pack(small, watched: false).Milliseconds);
                figures.Add("pack, 2,000 ewes", Pack(large, watched: false).Milliseconds);
                figures.AddPeak("pack, 2,000 ewes", Pack(large, watched: true).PeakMegabytes);
                figures.AddPeak("pack, 24 ewes", Pack(small, watched: true).PeakMegabytes);
            }
        }
        finally
        {
            Directory.Delete(work, recursive: true);
        }

        figures.Write(Unit);

        void Add(string name, string command, string file) => figures.Add(name, Program([command, file], watched: false).Milliseconds);

        Measured Pack(string file, bool watched) => FreshPack.Run(In(folder), file, watched);

        Measured Program(string[] arguments, bool watched) => ChildProcess.Run(
            In(folder), [.. arguments, "--as-of", $"{BenchFlock.AsOf:uuuu-MM-dd}"], watched);
    }
}
