using NodaTime;
using PaperFlock.Flocks.Places;

namespace PaperFlock.Flocks.Tests;

/// <summary>Where the sheep are, against what Ordnance Survey and the tz database publish.</summary>
public sealed class PlaceTests
{
    private const double Seconds = 3600;

    private static readonly LocalDate Today = new(2026, 11, 25);

    /// <summary>Ordnance Survey, "A guide to coordinate systems in Great Britain", annexe C.2: the worked example, to a hundredth of a second of a degree.</summary>
    [Fact]
    public void The_worked_example_of_the_grid_comes_out_on_the_old_figure_of_the_earth()
    {
        var (latitude, longitude) = NationalGrid.ToAiry(651_409.903, 313_177.270);
        Assert.Equal(52 + (39 / 60d) + (27.2531 / Seconds), latitude, 0.0001 / Seconds);
        Assert.Equal(1 + (43 / 60d) + (4.5177 / Seconds), longitude, 0.0001 / Seconds);
    }

    /// <summary>The same guide, annexe B.1: the same point in metres from the middle of the earth, 24.700 m up. Without the height it lies that much lower along its own plumb line.</summary>
    [Fact]
    public void The_worked_example_of_earth_centred_metres_comes_out()
    {
        var (latitude, longitude) = (double.DegreesToRadians(52.657570301), double.DegreesToRadians(1.717921583));
        var (x, y, z) = Ellipsoid.Airy1830.ToCartesian(latitude, longitude);
        Assert.Equal(3_874_938.849, x + (24.7 * Math.Cos(latitude) * Math.Cos(longitude)), 0.01);
        Assert.Equal(116_218.624, y + (24.7 * Math.Cos(latitude) * Math.Sin(longitude)), 0.01);
        Assert.Equal(5_047_168.208, z + (24.7 * Math.Sin(latitude)), 0.01);
    }

    /// <summary>
    /// Test points of the Ordnance Survey's OSTN15 developer pack: the definitive transformation, from which the seven-parameter
    /// shift used here may differ by about five metres (the guide, section 6.6). Contains OS data © Crown copyright 2016.
    /// </summary>
    [Theory]
    [InlineData("TP01", 91_492.146, 11_318.804, 49.92226393730, -6.29977752014)]
    [InlineData("TP02", 170_370.718, 11_572.405, 49.96006137820, -5.20304609998)]
    [InlineData("TP03", 250_359.811, 62_016.569, 50.43885825610, -4.10864563561)]
    [InlineData("TP05", 438_710.920, 114_792.250, 50.93127937910, -1.45051433700)]
    [InlineData("TP07", 639_821.835, 169_565.858, 51.37447025550, 1.44454730409)]
    [InlineData("TP10", 241_124.584, 220_332.641, 51.8589089640, -4.3085247696)]
    [InlineData("TP20", 422_242.186, 433_818.701, 53.8002151963, -1.66379168242)]
    [InlineData("TP30", 267_056.768, 846_176.972, 57.4862500072, -4.21926398555)]
    public void The_shift_is_within_five_metres_of_the_definitive_one(string point, double easting, double northing, double latitude, double longitude)
    {
        var (north, east) = NationalGrid.ToWgs84(easting, northing);
        var metresNorth = (north - latitude) * 111_200;
        var metresEast = (east - longitude) * 111_200 * Math.Cos(double.DegreesToRadians(latitude));
        Assert.True(Math.Sqrt((metresNorth * metresNorth) + (metresEast * metresEast)) < 5, $"{point}: {metresNorth:0.0} m north, {metresEast:0.0} m east");
    }

    /// <summary>The squares as they stand on any Ordnance Survey map's index: SV in the south-west, NY over Cumbria, TQ over London, HU over Shetland.</summary>
    [Theory]
    [InlineData("SV 91492 11319", 49.9223, -6.2998)]
    [InlineData("ny480046", 54.4347, -2.8027)]
    [InlineData("NY 480 046", 54.4347, -2.8027)]
    [InlineData("TQ 306 784", 51.4896, -0.1196)]
    [InlineData("HU 4080 3990", 60.1405, -1.2672)]
    [InlineData("TG 51409 13177", 52.6580, 1.7161)]
    [InlineData("NY 48 04", 54.434, -2.803)]
    public void A_grid_reference_is_the_middle_of_its_square(string text, double latitude, double longitude)
    {
        var (place, whyNot) = PlaceText.Read(text);
        Assert.Null(whyNot);
        // A square of 1 km, its middle half a kilometre off: the reference with the fewest figures here.
        Assert.Equal(latitude, (double)place!.Latitude, 0.008);
        Assert.Equal(longitude, (double)place.Longitude, 0.012);
        Assert.Equal(text.ToUpperInvariant().Replace(" ", "", StringComparison.Ordinal), place.GridReference!.Replace(" ", "", StringComparison.Ordinal));
    }

    /// <summary>A square of 100 m gives four decimals of a degree, about 11 m; more would be made up.</summary>
    [Theory]
    [InlineData("NY 48 04", 3)]
    [InlineData("NY 480 046", 4)]
    [InlineData("NY 4800 0460", 5)]
    [InlineData("NY 48000 04600", 5)]
    public void A_reference_gives_no_more_decimals_than_it_is_good_for(string text, int decimals)
    {
        var place = PlaceText.Read(text).Place!;
        Assert.Equal(place.Latitude, Math.Round(place.Latitude, decimals));
        Assert.InRange(place.Latitude.Scale, 1, decimals);
    }

    [Theory]
    [InlineData("54.46, -2.74", 54.46, -2.74)]
    [InlineData("54.46 -2.74", 54.46, -2.74)]
    [InlineData("-43.86,171.72", -43.86, 171.72)]
    [InlineData("\u221243.86, 171.72", -43.86, 171.72)]
    [InlineData("54.46N 2.74W", 54.46, -2.74)]
    [InlineData("43.86 S, 171.72 E", -43.86, 171.72)]
    [InlineData("N54.46 W2.74", 54.46, -2.74)]
    [InlineData("54°27'36\"N 2°44'24\"W", 54.46, -2.74)]
    [InlineData("54° 27′ 36″ N, 2° 44′ 24″ W", 54.46, -2.74)]
    [InlineData("54°27.6'N, 2°44.4'W", 54.46, -2.74)]
    [InlineData("0, 0", 0, 0)]
    [InlineData("54.123456789, -2", 54.12346, -2)]
    public void Latitude_and_longitude_are_read_as_maps_and_phones_show_them(string text, double latitude, double longitude)
    {
        var (place, whyNot) = PlaceText.Read(text);
        Assert.Null(whyNot);
        Assert.Equal(((decimal)latitude, (decimal)longitude), (place!.Latitude, place.Longitude));
        Assert.Null(place.GridReference);
    }

    [Theory]
    [InlineData("NY 4800 046", "as many figures for east as for north")]
    [InlineData("NY 480046 1", "as many figures")]
    [InlineData("NY 4 0", "as many figures")]
    [InlineData("NI 480 046", "no square NI")]
    [InlineData("AA 480 046", "no square AA")]
    [InlineData("WX 480 046", "no square WX")]
    [InlineData("O 15 34", "Irish grid")]
    [InlineData("Hollin Bank", "is no place")]
    [InlineData("54,46 -2,74", "a point for decimals")]
    [InlineData("54.46", "is no place")]
    [InlineData("171.72, -43.86", "latitude, which comes first")]
    [InlineData("54.46, 200", "longitude between")]
    [InlineData("-54.46S 2.74W", "is no place")]
    [InlineData("54°75'N 2°W", "is no place")]
    [InlineData("", "is no place")]
    public void What_is_no_place_is_refused_with_the_reason(string text, string reason)
    {
        var (place, whyNot) = PlaceText.Read(text);
        Assert.Null(place);
        Assert.Contains(reason, whyNot, StringComparison.Ordinal);
    }

    /// <summary>Towns near the middle of a zone and others near its edge; the zones are those of the tz database.</summary>
    [Theory]
    [InlineData(54.43, -2.80, "Europe/London", "GB")] // Kendal: nearer to Douglas and to Dublin than to London
    [InlineData(51.12, 1.31, "Europe/London", "GB")] // Dover
    [InlineData(51.88, -5.27, "Europe/London", "GB")] // St Davids
    [InlineData(60.15, -1.15, "Europe/London", "GB")] // Lerwick
    [InlineData(49.89, 2.30, "Europe/Paris", "FR")] // Amiens
    [InlineData(53.27, -9.05, "Europe/Dublin", "IE")] // Galway
    [InlineData(60.39, 5.32, "Europe/Oslo", "NO")] // Bergen
    [InlineData(-43.86, 171.72, "Pacific/Auckland", "NZ")]
    [InlineData(-37.56, 143.85, "Australia/Melbourne", "AU")] // Ballarat
    [InlineData(44.26, -72.58, "America/New_York", "US")] // Montpelier: nearer to Toronto than to New York, perhaps, but on its time
    public void The_zone_of_a_place_keeps_the_time_kept_there(double latitude, double longitude, string zone, string country)
    {
        var found = PlaceZones.Of(new Place((decimal)latitude, (decimal)longitude, null), Today);
        var (a, b) = (DateTimeZoneProviders.Tzdb[zone], DateTimeZoneProviders.Tzdb[found.Id]);
        Assert.All(Enumerable.Range(1, 12), month => Assert.Equal(
            a.GetUtcOffset(Instant.FromUtc(2027, month, 10, 12, 0)), b.GetUtcOffset(Instant.FromUtc(2027, month, 10, 12, 0))));
        if (country is "GB" or "NZ" or "NO")
        {
            Assert.Equal((zone, country), (found.Id, found.CountryCode));
        }
    }

    /// <summary>Badajoz is in Spain and nearer to Lisbon than to Madrid; Calais is in France and nearer to London than to Paris.</summary>
    [Theory]
    [InlineData(38.88, -6.97, "Europe/Lisbon", "Europe/Madrid")]
    [InlineData(50.95, 1.86, "Europe/London", "Europe/Paris")]
    public void Near_a_border_the_other_time_is_named(double latitude, double longitude, string nearest, string other)
    {
        var zone = PlaceZones.Of(new Place((decimal)latitude, (decimal)longitude, null), Today);
        Assert.Equal(nearest, zone.Id);
        Assert.Contains(other, zone.Others);
    }

    [Theory]
    [InlineData("Europe/London", "Europe/London")]
    [InlineData("pacific/auckland", "Pacific/Auckland")]
    [InlineData("Dublin", "Europe/Dublin")]
    [InlineData("New York", "America/New_York")]
    [InlineData("Ireland", "Europe/Dublin")]
    [InlineData("IE", "Europe/Dublin")]
    [InlineData("New Zealand", null)] // Auckland or Chatham
    [InlineData("Moon", null)]
    public void A_zone_is_known_by_its_name_its_town_or_a_country_with_no_other(string text, string? zone) =>
        Assert.Equal(zone, PlaceZones.Named(text));
}
