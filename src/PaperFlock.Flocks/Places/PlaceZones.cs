using NodaTime.TimeZones;

namespace PaperFlock.Flocks.Places;

/// <summary>The time zone of a place, as well as it can be told from the one town that the tz database places for each zone.</summary>
/// <param name="Id">The likeliest.</param>
/// <param name="CountryCode">ISO 3166 code of the country that zone is listed under.</param>
/// <param name="Others">Zones nearly as near that keep another time: a border may run between.</param>
public sealed record PlaceZone(string Id, string CountryCode, ImmutableArray<string> Others);

public static class PlaceZones
{
    private static readonly TzdbDateTimeZoneSource Source = TzdbDateTimeZoneSource.Default;

    /// <param name="season">A day of the year the flock file is for: zones change over the years.</param>
    public static PlaceZone Of(Place place, LocalDate season)
    {
        if (IsInGreatBritain(place))
        {
            return new PlaceZone("Europe/London", "GB", []);
        }

        var towns = Source.ZoneLocations!
            .Where(t => !t.ZoneId.StartsWith("Antarctica/", StringComparison.Ordinal))
            .Select(t => (Town: t, Away: place.KilometresTo(t.Latitude, t.Longitude)))
            .OrderBy(t => t.Away)
            .ToArray();
        var (nearest, away) = towns[0];
        var others = towns.TakeWhile(t => t.Away <= away * 2)
            .Where(t => !KeepsTheSameTime(t.Town.ZoneId, nearest.ZoneId, season))
            .Select(t => t.Town.ZoneId)
            .Take(3);
        return new PlaceZone(nearest.ZoneId, nearest.CountryCode, [.. others]);
    }

    /// <returns>As <see cref="Named"/>, or else why there is none.</returns>
    public static (string? Zone, string? WhyNot) Read(string text) => Named(text) is { } zone
        ? (zone, null)
        : (null, $"'{text}' is no time zone: write a name such as Europe/London or Pacific/Auckland");

    /// <summary>The zone a person names: its own name, its town, or a country that has but one.</summary>
    public static string? Named(string text)
    {
        var wanted = text.Trim().Replace(' ', '_');
        return DateTimeZoneProviders.Tzdb.Ids.FirstOrDefault(id => Is(id, wanted))
            ?? Source.ZoneLocations!.FirstOrDefault(t => Is(t.ZoneId[(t.ZoneId.LastIndexOf('/') + 1)..], wanted))?.ZoneId
            ?? OnlyOne(Source.ZoneLocations!.Where(t => Is(t.CountryCode, wanted) || Is(t.CountryName.Replace(' ', '_'), wanted)));
    }

    public static string? CountryOf(string zone) => TownOf(zone)?.CountryCode;

    /// <summary>The town of a zone: somewhere in it, which is better than nowhere.</summary>
    public static Place? MiddleOf(string zone) =>
        (TownOf(zone) ?? (Source.CanonicalIdMap.TryGetValue(zone, out var canonical) ? TownOf(canonical) : null)) is { } town
            ? new Place(Math.Round((decimal)town.Latitude, 2), Math.Round((decimal)town.Longitude, 2), null)
            : null;

    private static TzdbZoneLocation? TownOf(string zone) => Source.ZoneLocations!.FirstOrDefault(t => Is(t.ZoneId, zone));

    private static string? OnlyOne(IEnumerable<TzdbZoneLocation> towns) => towns.Take(2).ToArray() is [var only] ? only.ZoneId : null;

    /// <summary>
    /// The towns alone would give Kendal to the Isle of Man and Dover to Paris. A box drawn by eye on a map: from the Lizard
    /// to Shetland, from the eastern end of Ireland (5° 26′ W at Burr Point) to Lowestoft, less Man and the coast of France.
    /// </summary>
    public static bool IsInGreatBritain(Place place)
    {
        var (north, east) = (place.Latitude, place.Longitude);
        var isBox = north is >= 49.8m and <= 61m && east is >= -8.7m and <= 1.8m;
        var isIreland = north is >= 51.3m and <= 55.45m && east < -5.42m;
        var isMan = north is >= 54.0m and <= 54.45m && east is >= -4.9m and <= -4.3m;
        var isFrance = (north < 50.6m && east > 0m) || (north < 51m && east > 1.45m);
        return isBox && !isIreland && !isMan && !isFrance;
    }

    /// <summary>In winter and in summer; how they did it in other years is no matter.</summary>
    public static bool KeepsTheSameTime(string one, string other, LocalDate season)
    {
        Instant[] days =
        [
            Instant.FromUtc(season.Year, 1, 15, 12, 0), Instant.FromUtc(season.Year, 4, 5, 12, 0),
            Instant.FromUtc(season.Year, 7, 15, 12, 0), Instant.FromUtc(season.Year, 10, 5, 12, 0),
        ];
        var (a, b) = (DateTimeZoneProviders.Tzdb[one], DateTimeZoneProviders.Tzdb[other]);
        return days.All(day => a.GetUtcOffset(day) == b.GetUtcOffset(day));
    }

    private static bool Is(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
