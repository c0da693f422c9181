using PaperFlock.Flocks.Places;

namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>Whether latitude and longitude, the time zone and the grid reference speak of one place.</summary>
internal static class PlaceCheck
{
    /// <summary>The widest zone with sheep: Kashgar keeps the time of Shanghai, 4,100 km away.</summary>
    private const double FurthestFromTown = 4500;

    /// <summary>A location of one decimal may be 6.5 km out, and the coarsest reference is of a square of 1 km: further apart is another valley.</summary>
    private const double FurthestFromSquare = 8;

    /// <summary>Sheep are kept in Finnmark, 71° north, and in Tierra del Fuego, 55° south: common knowledge, no source.</summary>
    private const decimal Northernmost = 72;

    private const decimal Southernmost = -57;

    private static readonly LocalTime EarliestNoon = new(10, 0);

    private static readonly LocalTime LatestNoon = new(15, 0);

    /// <summary>Winter and summer. Over the years zones have moved by an hour or so, and what is asked here is of several hours.</summary>
    private static readonly Instant[] Days = [Instant.FromUtc(2026, 1, 15, 12, 0), Instant.FromUtc(2026, 7, 15, 12, 0)];

    /// <param name="at">The latitude in the file.</param>
    /// <returns>False for a place that cannot be.</returns>
    public static bool IsPossible(Place place, DateTimeZone zone, SourceSpan at, DiagnosticBag bag)
    {
        if (place is { Latitude: 0, Longitude: 0 })
        {
            bag.Add(FlockMessages.NoLandThere(at));
            return false;
        }

        if (place.Latitude is > Northernmost or < Southernmost)
        {
            bag.Add(FlockMessages.NearAPole(at, place.Latitude));
        }
        else if (Doubt(place, zone) is { } doubt)
        {
            var (slip, meant) = Slips(place).FirstOrDefault(s => Doubt(s.Meant, zone) is null);
            bag.Add(FlockMessages.PlaceOutsideZone(at, doubt, slip, meant));
        }

        return true;
    }

    /// <param name="place">Null where it is not given.</param>
    /// <param name="zone">Only in Britain is a reference one of its own grid.</param>
    public static void GridReference(Place? place, DateTimeZone? zone, Field field, string text)
    {
        var (square, whyNot) = Places.GridReference.IsMeant(text) ? Places.GridReference.Read(text) : (null, null);
        if (zone?.Id == "Europe/London" && (whyNot is not null || !text.Any(char.IsDigit)))
        {
            field.Bag.Add(FlockMessages.NoGridReference(field.Span, text));
        }
        else if (square is not null && place is not null
            && place.KilometresTo((double)square.Latitude, (double)square.Longitude) is > FurthestFromSquare and var away)
        {
            field.Bag.Add(FlockMessages.GridReferenceElsewhere(field.Span, text, away, square));
        }
    }

    /// <summary>Why the place does not look as if it kept this time; null where it does.</summary>
    private static string? Doubt(Place place, DateTimeZone zone)
    {
        var odd = Days.Select(day => (LocalTime?)Noon(place, zone.GetUtcOffset(day))).FirstOrDefault(noon => noon < EarliestNoon || noon > LatestNoon);
        return odd is { } noon ? FlockMessages.NoonAt(noon, zone.Id)
            : PlaceZones.MiddleOf(zone.Id) is { } town && place.KilometresTo((double)town.Latitude, (double)town.Longitude) is > FurthestFromTown and var away
            ? FlockMessages.FarFromTown(away, zone.Id)
            : null;
    }

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
