namespace PaperFlock.Planning;

/// <summary>One day's rounds, in the holding's local time.</summary>
/// <param name="Dawn">Start of civil twilight; null where the sun gives none that day.</param>
/// <param name="Sunrise">Null on a day the sun does not rise, or does not set.</param>
/// <param name="Times">At least one, ascending.</param>
public sealed record RoundDay(
    LocalDate Date,
    LocalTime? Dawn,
    LocalTime? Sunrise,
    LocalTime? Sunset,
    LocalTime? Dusk,
    ImmutableArray<Round> Times)
{
    /// <summary>Why there are so many.</summary>
    public RoundReason Why { get; init; }

    /// <summary>The place is not known, and nothing of the sun with it: the rounds keep fixed times.</summary>
    public bool IsByClock { get; init; }

    /// <summary>The longest that nobody looks, where the next day has the same rounds.</summary>
    public (LocalTime From, LocalTime To, int Minutes) LongestGap => Times
        .Zip([.. Times.Skip(1), Times[0]], (a, b) => (a.At, b.At, Minutes: Minutes(a.At, b.At)))
        .MaxBy(gap => gap.Minutes);

    /// <summary>The round at which such a feed is given.</summary>
    /// <returns>Null where nobody is fed then on that day, and nobody walks.</returns>
    public Round? At(FeedTime feed)
    {
        var part = IsByClock && feed == FeedTime.FirstLight ? PartOfDay.Morning : PartOf(feed);
        return Times.Where(round => round.Part == part).Cast<Round?>().FirstOrDefault();
    }

    internal static PartOfDay PartOf(FeedTime feed) => feed switch
    {
        FeedTime.FirstLight => PartOfDay.FirstLight,
        FeedTime.Midday => PartOfDay.Midday,
        FeedTime.Dusk => PartOfDay.Dusk,
        _ => PartOfDay.Late,
    };

    private static int Minutes(LocalTime from, LocalTime to)
    {
        var minutes = (int)((to.TickOfDay - from.TickOfDay) / NodaConstants.TicksPerMinute);
        return minutes > 0 ? minutes : minutes + NodaConstants.MinutesPerDay;
    }
}

public enum RoundReason
{
    NoneInLamb,
    OutsideHeavyWeeks,
    HeavyWeeks,

    /// <summary>Any ewe may lamb.</summary>
    Lambing,
}
