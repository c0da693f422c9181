namespace PaperFlock.Benchmarks;

/// <summary>Times of several ways of doing a thing, and how many times one of them the others take.</summary>
internal sealed class Figures
{
    private readonly List<string> _ways = [];
    private readonly Dictionary<string, List<double>> _times = [];
    private readonly Dictionary<string, double> _peaks = [];
    private readonly Dictionary<string, long> _bytes = [];

    public void Add(string way, double milliseconds, long bytes = 0)
    {
        if (!_times.TryGetValue(way, out var times))
        {
            _times.Add(way, times = []);
            _ways.Add(way);
        }

        times.Add(milliseconds);
        _bytes[way] = bytes;
    }

    public void AddPeak(string way, double megabytes) => _peaks[way] = Math.Max(_peaks.GetValueOrDefault(way), megabytes);

    /// <summary>
    /// A line a way. The ratio is the median of the ratios within each round, with the least and the greatest: what slows a round down slows both.
    /// </summary>
    /// <param name="unit">The way that counts as one.</param>
    /// <param name="pages">For the size of a page; 0 for none.</param>
    public void Write(string unit, int pages = 0)
    {
        Console.WriteLine($"{"",-30} {"ms",8} {"least",8} {"times",7}   {"from",6} {"to",6} {"peak MB",8} {"kB a page",10}");
        foreach (var way in _ways)
        {
            var ratios = _times[way].Zip(_times[unit], (mine, one) => mine / one).ToArray();
            var peak = _peaks.TryGetValue(way, out var megabytes) ? $"{megabytes:0}" : "";
            var page = pages > 0 && _bytes[way] > 0 ? $"{_bytes[way] / 1000.0 / pages:0.0}" : "";
            Console.WriteLine(
                $"{way,-30} {Median.Of(_times[way]),8:0} {_times[way].Min(),8:0} {Median.Of(ratios),7:0.00}   {ratios.Min(),6:0.00} {ratios.Max(),6:0.00} {peak,8} {page,10}");
        }
    }
}
