using PaperFlock.Flocks.Places;

namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>Whether latitude and longitude, the time zone and the grid reference speak of one place.</summary>
internal static class PlaceCheck
{
    /// <summary>The widest zone with sheep: Kashgar keeps the time of Shanghai, 4,100 km away.</summary>
    private const double FurthestFromTown = 4500;

    /// <summary>Kilometres; beyond is another valley.</summary>
    private const double FurthestFromSquare = 2;

    /// <summary>Kilometres between the gate and whole degrees at most, in Great Britain: half a degree north and half a degree east. With each decimal it is a tenth.</summary>
    private const double HalfADegree = 65;

    /// <summary>Beyond the farms of Finnmark in the north and those of Tierra del Fuego in the south nobody keeps sheep; from memory.</summary>
    private const decimal FurthestNorth = 72;

    private const decimal FurthestSouth = -56;

    private const string British = "Europe/London";

    private static readonly LocalTime EarliestNoon = new(10, 0);

    private static readonly LocalTime LatestNoon = new(15, 0);

    /// <summary>In winter time a place that is surely in its zone has noon by then, China and the west of Spain apart.</summary>
    private static readonly LocalTime LatestLikelyNoon = new(13, 30);

    private static readonly LocalTime EarliestLikelyNoon = new(11, 0);

    private const double LikelyFromTown = 2500;

    /// <summary>Winter and summer. Over the years zones have moved by an hour or so, and what is asked here is of several hours.</summary>
    private static readonly Instant[] Days = [Instant.FromUtc(2026, 1, 15, 12, 0), Instant.FromUtc(2026, 7, 15, 12, 0)];

    private static readonly LocalDate Season = new(2026, 1, 15);

    /// <param name="at">The latitude in the file.</param>
    /// <returns>False for a place that cannot be.</returns>
    public static bool IsPossible(Place place, DateTimeZone zone, SourceSpan at, DiagnosticBag bag)
    {
        if (place is { Latitude: 0, Longitude: 0 })
        {
            bag.Add(FlockMessages.NoLandThere(at));
            return false;
        }

        if (Doubt(place, zone) is { } doubt)
        {
            // A zone of no town, such as GMT, says nothing of where; there the place is believed.
            var isZoneAlone = PlaceZones.IsInGreatBritain(place) && PlaceZones.MiddleOf(zone.Id) is null;
            var (slip, meant) = isZoneAlone ? default : Slips(place).FirstOrDefault(s => IsLikely(s.Meant, zone));
            var likely = meant is null && !IsBeyondSheep(place) ? PlaceZones.Of(place, Season).Id : null;
            bag.Add(FlockMessages.PlaceOutsideZone(at, doubt, slip, meant, likely));
        }

        return true;
    }

    /// <param name="place">Null where it is not said, or wrong.</param>
    /// <param name="zone">Null where it is wrong.</param>
    public static void GridReference(Place? place, DateTimeZone? zone, Field field, string text)
    {
        var isBritish = place is null ? zone?.Id == British && Places.GridReference.IsMeant(text) : PlaceZones.IsInGreatBritain(place);
        var (square, whyNot) = Places.GridReference.Read(text);
        var furthest = place is null ? 0 : Math.Max(FurthestFromSquare, HalfADegree / Math.Pow(10, Math.Min(place.Latitude.Scale, place.Longitude.Scale)));
        field.Bag.Add(
            // Elsewhere it may be a reference of another grid, of which nothing is known here.
            square is null ? isBritish ? FlockMessages.NoGridReference(field.Span, text, whyNot!) : null
            : place?.KilometresTo((double)square.Latitude, (double)square.Longitude) is { } away && away > furthest ? FlockMessages.GridReferenceElsewhere(field.Span, text, away, square)
            : null);
    }

    /// <summary>Why the place does not look as if it kept this time; null where it does.</summary>
    private static string? Doubt(Place place, DateTimeZone zone)
    {
        var odd = Days.Select(day => (LocalTime?)Noon(place, zone.GetUtcOffset(day))).FirstOrDefault(noon => noon < EarliestNoon || noon > LatestNoon);
        return IsBeyondSheep(place) ? FlockMessages.BeyondSheep(place.Latitude)
            : odd is { } noon ? FlockMessages.NoonAt(noon, zone.Id)
            : KilometresToTown(place, zone) is > FurthestFromTown and var away ? FlockMessages.FarFromTown(away, zone.Id)
            : PlaceZones.IsInGreatBritain(place) && !PlaceZones.KeepsTheSameTime(zone.Id, British, Season) ? FlockMessages.OtherThanBritish(zone.Id)
            : null;
    }

    /// <summary>Not only possible: a slip is named where the place without it would be a plain one.</summary>
    private static bool IsLikely(Place place, DateTimeZone zone) =>
        Doubt(place, zone) is null
        && Days.Min(day => Noon(place, zone.GetUtcOffset(day))) is var noon && noon >= EarliestLikelyNoon && noon <= LatestLikelyNoon
        && KilometresToTown(place, zone) is null or <= LikelyFromTown;

    private static bool IsBeyondSheep(Place place) => place.Latitude is > FurthestNorth or < FurthestSouth;

    private static double? KilometresToTown(Place place, DateTimeZone zone) =>
        PlaceZones.MiddleOf(zone.Id) is { } town ? place.KilometresTo((double)town.Latitude, (double)town.Longitude) : null;

    /// <summary>By the mean sun, which crosses 15 degrees an hour; the true one is never more than 17 minutes from it.</summary>
    private static LocalTime Noon(Place place, Offset offset) =>
        LocalTime.Noon.PlusSeconds(offset.Seconds - (long)(place.Longitude * 240));

    private static IEnumerable<(string Slip, Place Meant)> Slips(Place place)
    {
        if (Math.Abs(place.Longitude) <= 90)
        {
            yield return ("latitude and longitude look swapped", place with { Latitude = place.Longitude, Longitude = place.Latitude });
        }

        yield return ("the sign of the longitude looks wrong", place with { Longitude = -place.Longitude });
        yield return ("the sign of the latitude looks wrong", place with { Latitude = -place.Latitude });
    }
}
