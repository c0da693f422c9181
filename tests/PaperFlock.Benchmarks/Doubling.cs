namespace PaperFlock.Benchmarks;

/// <summary>Whether twice the ewes take twice as long, by the published program as it is started by hand.</summary>
/// <remarks>A process for each pack: within one, a flock has its memory from the larger one before it, and a larger one has to ask the system for more.</remarks>
internal static class Doubling
{
    private static readonly int[] Ewes = [500, 1000, 2000, 4000];

    /// <param name="program">A file that can be started.</param>
    public static void Run(string program, int runs)
    {
        var work = Directory.CreateTempSubdirectory("paperflock-doubling-").FullName;
        try
        {
            var flocks = Ewes.Select(ewes => Path.Combine(work, $"{ewes}.yaml")).ToArray();
            var times = Ewes.Select(_ => new List<double>()).ToArray();
            foreach (var (flock, ewes) in flocks.Zip(Ewes))
            {
                File.WriteAllBytes(flock, BenchFlock.File(ewes));
                // Once for the disk's cache.
                FreshPack.Run(program, flock, watched: false);
            }

            for (var i = 0; i < runs; i++)
            {
                foreach (var (flock, taken) in flocks.Zip(times))
                {
                    taken.Add(FreshPack.Run(program, flock, watched: false).Milliseconds);
                }
            }

            Show(times);
        }
        finally
        {
            Directory.Delete(work, recursive: true);
        }
    }

    private static void Show(List<double>[] times)
    {
        for (var at = 0; at < Ewes.Length; at++)
        {
            var ratios = at == 0 ? [] : times[at].Zip(times[at - 1], (twice, once) => twice / once).ToArray();
            Console.WriteLine($"{Ewes[at],5} ewes {Median.Of(times[at]),7:0} ms{(at == 0 ? "" : $", {Median.Of(ratios):0.00} times the half of them, from {ratios.Min():0.00} to {ratios.Max():0.00}")}");
        }
    }
}
