using System.Diagnostics;
using PaperFlock.Packs;
using PaperFlock.Planning;
using PaperFlock.Sheets;

namespace PaperFlock.Benchmarks.Beside;

/// <summary>The whole line as `paperflock pack` runs it: the bytes of a flock file in, finished PDFs and the record of the issue out.</summary>
internal static class OurLine
{
    /// <returns>Bytes of all PDFs.</returns>
    public static long Run(byte[] file)
    {
        var plan = SeasonPlanner.Plan(BenchFlock.Read(file), BenchFlock.AsOf);
        return PackMaker.Make(plan, PackRequest.Everything, before: null).Documents.Sum(d => (long)d.ToPdf().Length);
    }

    /// <summary>A line for each run.</summary>
    public static void Show(byte[] file, int runs)
    {
        for (var i = 0; i < runs; i++)
        {
            var steps = Steps(file);
            Console.WriteLine($"{string.Join("  ", steps.Select(s => $"{s.Step} {s.Milliseconds:0} ms {s.Megabytes:0.0} MB"))}  together {steps.Sum(s => s.Milliseconds):0} ms {steps.Sum(s => s.Megabytes):0.0} MB");
        }
    }

    /// <summary>Milliseconds of each step, one after another, and megabytes of memory it asked for.</summary>
    private static List<(string Step, double Milliseconds, double Megabytes)> Steps(byte[] file)
    {
        var steps = new List<(string, double, double)>();
        var flock = Timed("read", () => BenchFlock.Read(file));
        var plan = Timed("plan", () => SeasonPlanner.Plan(flock, BenchFlock.AsOf));
        var pack = Timed("compose", () => PackMaker.Make(plan, PackRequest.Everything, before: null));
        Timed("print", () => pack.Documents.Sum(d => d.ToPdf().Length));
        return steps;

        T Timed<T>(string step, Func<T> work)
        {
            var before = GC.GetTotalAllocatedBytes(precise: true);
            var watch = Stopwatch.StartNew();
            var made = work();
            var elapsed = watch.Elapsed.TotalMilliseconds;
            steps.Add((step, elapsed, (GC.GetTotalAllocatedBytes(precise: true) - before) / 1e6));
            return made;
        }
    }
}
