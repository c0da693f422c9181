namespace PaperFlock.Benchmarks;

/// <summary>One run of something.</summary>
/// <param name="Milliseconds">From start to end by the clock.</param>
/// <param name="PeakMegabytes">Most memory held at once, shared pages counted once; 0 where it was not looked at.</param>
/// <param name="Output">What it wrote to standard output.</param>
internal sealed record Measured(double Milliseconds, double PeakMegabytes, string Output);

internal static class Median
{
    /// <summary>The middle of the values; of an even number, the mean of the two in the middle.</summary>
    public static double Of(IEnumerable<double> values)
    {
        var sorted = values.Order().ToArray();
        var half = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
