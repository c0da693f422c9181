using PaperFlock.Flocks.Places;

namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>Whether latitude and longitude, the time zone and the grid reference speak of one place.</summary>
internal static class PlaceCheck
{
    /// <summary>The widest zone with sheep: Kashgar keeps the time of Shanghai, 4,100 km away.</summary>
    private const double FurthestFromTown = 4500;

    /// <summary>A reference of two figures is of a square of 10 km; more than two of them apart is another valley.</summary>
    private const double FurthestFromSquare = 20;

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

        if (Doubt(place, zone) is { } doubt)
        {
            var (slip, meant) = Slips(place).FirstOrDefault(s => Doubt(s.Meant, zone) is null);
            bag.Add(FlockMessages.PlaceOutsideZone(at, doubt, slip, meant));
        }

        return true;
    }

    public static void GridReference(Place place, Field field, string text)
    {
        if (Places.GridReference.IsMeant(text)
            && Places.GridReference.Read(text).Place is { } square
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
