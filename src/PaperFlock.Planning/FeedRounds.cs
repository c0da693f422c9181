namespace PaperFlock.Planning;

/// <summary>On which rounds of a day ewes are fed: a feed is always given on a round.</summary>
public static class FeedRounds
{
    private static readonly LocalTime Noon = new(12, 0);

    /// <summary>Where no sun sets.</summary>
    private static readonly LocalTime UsualDusk = new(17, 0);

    /// <param name="fedAt">In the order of the day.</param>
    /// <returns>A round for each feed, ascending; fewer where the day has fewer.</returns>
    public static ImmutableArray<Round> On(RoundDay day, ImmutableArray<FeedTime> fedAt)
    {
        var rounds = ImmutableArray.CreateBuilder<Round>();
        var first = 0;
        for (var feed = 0; feed < fedAt.Length && first < day.Times.Length; feed++)
        {
            // One is left for each feed still to come.
            var last = Math.Max(first, day.Times.Length - (fedAt.Length - feed));
            var wanted = Wanted(day, fedAt[feed]);
            var nearest = Enumerable.Range(first, last - first + 1).MinBy(i => Math.Abs(Minutes(day.Times[i].At) - Minutes(wanted)));
            rounds.Add(day.Times[nearest]);
            first = nearest + 1;
        }

        return rounds.ToImmutable();
    }

    private static LocalTime Wanted(RoundDay day, FeedTime time) => time switch
    {
        FeedTime.FirstLight => day.Times[0].At,
        FeedTime.Midday => Noon,
        FeedTime.Dusk => day.Sunset ?? UsualDusk,
        _ => day.Times[^1].At,
    };

    private static int Minutes(LocalTime time) => (time.Hour * 60) + time.Minute;
}
