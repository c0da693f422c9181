using System.Diagnostics;
using PaperFlock.Cli.Wiring;
using PaperFlock.Languages;
using PaperFlock.Sheets;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Benchmarks.Beside;

/// <summary>The whole line as `paperflock pack` runs it: the bytes of a flock file in, finished PDFs and the record of the issue out.</summary>
internal static class OurLine
{
    /// <returns>Bytes of all PDFs.</returns>
    public static long Run(byte[] file)
    {
        var line = new Line();
        var plan = line.Plan(BenchFlock.Read(file), BenchFlock.AsOf, Language.English);
        var issue = line.Compose(plan, PackRequest.Everything, null);
        var bytes = issue.Pack.Documents.Sum(Print);
        using var record = new MemoryStream();
        IssueRecordText.Write(issue.Composed.Record!, record);
        return bytes;

        long Print(PackDocument document)
        {
            using var output = new MemoryStream();
            line.Print(document, output);
            return output.Length;
        }
    }

    /// <summary>A line for each run.</summary>
    public static void Show(byte[] file, int runs)
    {
        for (var i = 0; i < runs; i++)
        {
            var steps = Steps(file);
            Console.WriteLine($"{string.Join("  ", steps.Select(s => $"{s.Step} {s.Milliseconds:0}"))}  together {steps.Sum(s => s.Milliseconds):0} ms");
        }
    }

    /// <summary>Milliseconds of each step, one after another.</summary>
    private static List<(string Step, double Milliseconds)> Steps(byte[] file)
    {
        var line = new Line();
        var steps = new List<(string, double)>();
        var flock = Timed("read", () => BenchFlock.Read(file));
        var plan = Timed("plan", () => line.Plan(flock, BenchFlock.AsOf, Language.English));
        var issue = Timed("compose", () => line.Compose(plan, PackRequest.Everything, null));
        Timed("print", () =>
        {
            foreach (var document in issue.Pack.Documents)
            {
                using var output = new MemoryStream();
                line.Print(document, output);
            }

            return true;
        });
        Timed("record", () =>
        {
            using var output = new MemoryStream();
            IssueRecordText.Write(issue.Composed.Record!, output);
            return true;
        });
        return steps;

        T Timed<T>(string step, Func<T> work)
        {
            var watch = Stopwatch.StartNew();
            var made = work();
            steps.Add((step, watch.Elapsed.TotalMilliseconds));
            return made;
        }
    }
}
