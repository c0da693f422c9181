namespace PaperFlock.Planning.Rounds;

/// <summary>
/// The sun's day at one place, to the nearest minute of local time. It is the day of the noon that falls on the date: in a
/// northern June the dusk that ends it may come after midnight, on the calendar day that follows.
/// </summary>
/// <param name="Dawn">Null, as each of the others, when the sun does not pass that height on that half of the day.</param>
/// <param name="DarkAllDay">Not even civil twilight at noon.</param>
internal sealed record SunDay(
    LocalDateTime? Dawn,
    LocalDateTime? Sunrise,
    LocalDateTime Noon,
    LocalDateTime? Sunset,
    LocalDateTime? Dusk,
    bool DarkAllDay)
{
    /// <param name="holding">Of which the place is known.</param>
    public static SunDay At(Holding holding, LocalDate date)
    {
        var (place, zone) = (holding.Location!, holding.TimeZone);
        var sky = new Sky((double)place.Latitude, (double)place.Longitude);
        var noon = sky.Noon(date.At(LocalTime.Noon).InZoneLeniently(zone).ToInstant());
        return new(
            Maybe(sky.Rising(noon, Sky.CivilTwilight)),
            Maybe(sky.Rising(noon, Sky.RiseAndSet)),
            Local(noon),
            Maybe(sky.Setting(noon, Sky.RiseAndSet)),
            Maybe(sky.Setting(noon, Sky.CivilTwilight)),
            sky.Altitude(noon) < Sky.CivilTwilight);

        LocalDateTime? Maybe(Instant? time) => time is { } known ? Local(known) : null;

        LocalDateTime Local(Instant time) =>
            time.Plus(Duration.FromSeconds(30)).InZone(zone).LocalDateTime.With(TimeAdjusters.TruncateToMinute);
    }
}
