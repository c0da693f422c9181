namespace PaperFlock.Planning.Feeding;

/// <summary>How many feeds a ration is given in, and at which rounds.</summary>
internal static class FeedTimes
{
    /// <summary>The fewest that keep each within the largest; at least two where two are asked for and each is still enough to weigh.</summary>
    /// <param name="ration">Concentrate a ewe a day, kg; no more than four of the largest.</param>
    /// <param name="largest">Most at one time, kg; above zero.</param>
    /// <param name="fewest">Feeds asked for.</param>
    public static ImmutableArray<FeedTime> For(decimal ration, decimal largest, int fewest)
    {
        if (ration == 0)
        {
            return [];
        }

        var needed = (int)Math.Ceiling((ration / largest) - 0.000001m);
        var feeds = Math.Max(needed, Math.Min(fewest, (int)(ration / FeedCaps.Grain)));
        return feeds switch
        {
            <= 1 => [FeedTime.FirstLight],
            2 => [FeedTime.FirstLight, FeedTime.Dusk],
            3 => [FeedTime.FirstLight, FeedTime.Midday, FeedTime.Dusk],
            _ => [FeedTime.FirstLight, FeedTime.Midday, FeedTime.Dusk, FeedTime.Late],
        };
    }
}
