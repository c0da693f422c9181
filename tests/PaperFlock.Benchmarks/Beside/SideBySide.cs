using System.Diagnostics;

namespace PaperFlock.Benchmarks.Beside;

/// <summary>Prints the same pages by all ways in turn, round by round, so that whatever else the machine does falls on all of them alike.</summary>
internal static class SideBySide
{
    private static readonly TimeSpan WarmingUp = TimeSpan.FromSeconds(8);

    /// <param name="others">Folder of the Typst compiler; null leaves Typst and Chromium out.</param>
    /// <param name="keep">Folder for the files the others were given and made; null to drop them.</param>
    public static void Run(int ewes, int runs, string? others, string? keep)
    {
        var file = BenchFlock.File(ewes);
        var pages = PackPages.Of(ewes, BenchFlock.AsOf);
        var table = new Figures();
        using var floor = new Floor();
        using var rest = others is null ? null : new Others(others, pages);
        rest?.Prepare();

        // Compiled, loaded and warm before anything counts; the runtime compiles anew what has run often, as long as anything is new to it.
        var warm = Stopwatch.StartNew();
        do
        {
            OurLine.Run(file);
            floor.Run(pages);
        }
        while (warm.Elapsed < WarmingUp);

        for (var i = 0; i < runs; i++)
        {
            Timed("whole line, YAML to PDF", () => OurLine.Run(file));
            Timed("floor: SkiaSharp alone", () => floor.Run(pages));
            if (rest is null)
            {
                continue;
            }

            // Looking at memory costs time, so the first round is for memory alone.
            if (i == 0)
            {
                table.AddPeak("Typst, whole process", rest.Typst(watched: true).Process.PeakMegabytes);
                table.AddPeak("Chromium, whole process", rest.Chromium("pages", watched: true).PeakMegabytes);
            }

            var typst = rest.Typst(watched: false);
            table.Add("Typst, compiling alone", typst.Compiling, rest.Size("typst"));
            table.Add("Typst, whole process", typst.Process.Milliseconds, rest.Size("typst"));
            var empty = rest.Chromium("empty", watched: false).Milliseconds;
            var chromium = rest.Chromium("pages", watched: false).Milliseconds;
            table.Add("Chromium, less an empty page", chromium - empty, rest.Size("chromium-pages"));
            table.Add("Chromium, whole process", chromium, rest.Size("chromium-pages"));
        }

        Console.WriteLine($"{ewes} ewes, {pages.Count} pages, {pages.Items} items, {runs} runs in turn, {Environment.ProcessorCount} cores");
        table.Write("whole line, YAML to PDF", pages.Count);
        if (keep is not null)
        {
            rest?.Keep(keep);
        }

        void Timed(string way, Func<long> work)
        {
            GC.Collect();
            var watch = Stopwatch.StartNew();
            var bytes = work();
            table.Add(way, watch.Elapsed.TotalMilliseconds, bytes);
        }
    }
}
