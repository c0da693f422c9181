using System.Diagnostics;
using PaperFlock.Benchmarks.Beside;

namespace PaperFlock.Benchmarks;

/// <summary>Whether twice the ewes take twice the time.</summary>
internal static class Doubling
{
    private static readonly int[] Ewes = [500, 1000, 2000, 4000];

    public static void Run(int runs)
    {
        var files = Ewes.Select(ewes => BenchFlock.File(ewes)).ToArray();
        var times = Ewes.Select(_ => new List<double>()).ToArray();

        // The first rounds are for the compiler.
        for (var i = -2; i < runs; i++)
        {
            for (var at = 0; at < Ewes.Length; at++)
            {
                GC.Collect();
                var watch = Stopwatch.StartNew();
                OurLine.Run(files[at]);
                if (i >= 0)
                {
                    times[at].Add(watch.Elapsed.TotalMilliseconds);
                }
            }
        }

        for (var at = 0; at < Ewes.Length; at++)
        {
            var ratios = at == 0 ? [] : times[at].Zip(times[at - 1], (twice, once) => twice / once).ToArray();
            Console.WriteLine($"{Ewes[at],5} ewes {Median.Of(times[at]),7:0} ms{(at == 0 ? "" : $", {Median.Of(ratios):0.00} times the half of them, from {ratios.Min():0.00} to {ratios.Max():0.00}")}");
        }
    }
}
