namespace PaperFlock.Planning.Feeding;

internal static class Scoops
{
    /// <summary>A scoop is a scoop so long as it is within a tenth; feed itself varies as much by volume.</summary>
    private const decimal Tolerance = 0.10m;

    private static readonly decimal[] Fractions = [0.5m, 0.25m];

    /// <summary>Level scoops for a feed: to the half, else to the quarter, else null and the feed is weighed.</summary>
    /// <param name="kilograms">The feed for the whole group.</param>
    /// <param name="scoop">What one level scoop holds, kg; null where there is none.</param>
    public static decimal? PerFeed(decimal kilograms, decimal? scoop)
    {
        if (scoop is not > 0)
        {
            return null;
        }

        foreach (var fraction in Fractions)
        {
            var scoops = Math.Round(kilograms / scoop.Value / fraction, MidpointRounding.AwayFromZero) * fraction;
            if (Math.Abs((scoops * scoop.Value) - kilograms) <= Tolerance * kilograms)
            {
                return scoops;
            }
        }

        return null;
    }
}
