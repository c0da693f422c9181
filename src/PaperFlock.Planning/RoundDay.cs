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
}

public enum RoundReason
{
    NoneInLamb,
    OutsideHeavyWeeks,
    HeavyWeeks,
}
