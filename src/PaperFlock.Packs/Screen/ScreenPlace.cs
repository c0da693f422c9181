using PaperFlock.Flocks.Places;

namespace PaperFlock.Packs.Screen;

/// <summary>A place as somebody typed it into one field: a grid reference, or what a map on a telephone shows.</summary>
public static class ScreenPlace
{
    /// <returns>
    /// <c>latitude</c> and <c>longitude</c>, <c>grid</c>, the reference to be printed, null where none was typed, <c>zone</c>, the time kept there, and all of it in <c>words</c>; or <c>wrong</c>, why it is no place.
    /// </returns>
    public static JsonObject Read(string typed, string today)
    {
        var (place, whyNot) = PlaceText.Read(typed.Trim());
        if (place is null)
        {
            return new JsonObject { ["wrong"] = whyNot };
        }

        var zone = PlaceZones.Of(place, ScreenDay.Day(today));
        var others = zone.Others.IsEmpty ? "" : $"; the border of {ScreenText.List(zone.Others, "or")} is near, so look at the time zone";
        return new JsonObject
        {
            ["latitude"] = Degrees(place.Latitude),
            ["longitude"] = Degrees(place.Longitude),
            ["grid"] = place.GridReference,
            ["zone"] = zone.Id,
            ["words"] = $"{Degrees(Math.Abs(place.Latitude))} {(place.IsSouthern ? "south" : "north")}, {Degrees(Math.Abs(place.Longitude))} {(place.Longitude < 0 ? "west" : "east")}, clocks of {zone.Id}{others}",
        };
    }

    private static string Degrees(decimal degrees) => degrees.ToString(CultureInfo.InvariantCulture);
}
