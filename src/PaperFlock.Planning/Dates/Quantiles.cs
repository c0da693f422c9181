namespace PaperFlock.Planning.Dates;

internal static class Quantiles
{
    // Sums of thousands of rounded terms may fall short of a round share by this much.
    private const double Rounding = 1e-12;

    /// <summary>The first index by which at least <paramref name="share"/> of the chance has passed; the last where rounding leaves it short.</summary>
    /// <param name="chances">In order; they sum to 1.</param>
    /// <param name="share">0 to 1.</param>
    public static int Of(ReadOnlySpan<double> chances, double share)
    {
        var sum = 0.0;
        for (var i = 0; i < chances.Length; i++)
        {
            sum += chances[i];
            if (sum >= share - Rounding)
            {
                return i;
            }
        }

        return chances.Length - 1;
    }
}
