using System.Text.RegularExpressions;

namespace PaperFlock.Benchmarks;

/// <summary>The published program and flocks of every size, as the table in DEVELOPERS.md shows them.</summary>
internal static partial class Sizes
{
    private static readonly (int Ewes, int Groups, int Jobs)[] Shapes = [(1, 1, 0), (24, 2, 4), (300, 4, 10), (1000, 10, 50), (2000, 20, 100), (3000, 40, 200)];

    /// <param name="program">A file that can be started.</param>
    public static void Run(string program)
    {
        Console.WriteLine("| ewes | groups | own jobs | pages | seconds | MB at most |\n|---|---|---|---|---|---|");
        var work = Directory.CreateTempSubdirectory("paperflock-sizes-").FullName;
        try
        {
            foreach (var (ewes, groups, jobs) in Shapes)
            {
                var file = Path.Combine(work, $"{ewes}.yaml");
                File.WriteAllBytes(file, BenchFlock.File(ewes, groups, jobs));
                var timed = FreshPack.Run(program, file, watched: false);
                var pages = Pages().Matches(timed.Output).Sum(m => int.Parse(m.Groups[1].ValueSpan, CultureInfo.InvariantCulture));
                var peak = FreshPack.Run(program, file, watched: true).PeakMegabytes;
                Console.WriteLine($"| {ewes:#,0} | {groups} | {jobs} | {pages:#,0} | {timed.Milliseconds / 1000:0.0} | {peak:0} |");
            }
        }
        finally
        {
            Directory.Delete(work, recursive: true);
        }
    }

    [GeneratedRegex(@"(\d+) pages? on")]
    private static partial Regex Pages();
}
