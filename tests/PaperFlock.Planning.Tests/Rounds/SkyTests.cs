using CsCheck;
using NodaTime;
using PaperFlock.Planning.Rounds;

namespace PaperFlock.Planning.Tests.Rounds;

public class SkyTests
{
    /// <summary>
    /// London (51.473 N, 0.001 W), UTC, 2015: published by timeanddate.com, as kept in the test data of a public astronomy
    /// library; two printings of the table differ by a minute, so each entry is allowed a minute either way.
    /// </summary>
    [Theory]
    [InlineData("2015-01-01", "08:06", "16:01")]
    [InlineData("2015-12-01", "07:43", "15:55")]
    [InlineData("2015-12-02", "07:45", "15:54")]
    [InlineData("2015-12-03", "07:46", "15:54")]
    [InlineData("2015-12-12", "07:56", "15:51")]
    [InlineData("2015-12-25", "08:05", "15:55")]
    public void London_rises_and_sets_as_published(string date, string sunrise, string sunset) =>
        AgreesToTheMinute(new Sky(51.473, -0.001), date, sunrise, sunset);

    /// <summary>
    /// Another algorithm (Schlyter's, as printed in the tests of the Perl module Astro::Sunrise, standard altitude -0.833):
    /// it is good to a minute itself. Reykjavik's list is at UTC-1; an hour has been added here.
    /// </summary>
    [Theory]
    [InlineData(51.4667, 0, "2013-01-01", "08:05", "16:02")]
    [InlineData(51.4667, 0, "2013-03-21", "06:00", "18:15")]
    [InlineData(51.4667, 0, "2013-06-21", "03:43", "20:21")]
    [InlineData(64.0667, -21.9667, "2013-01-01", "11:18", "15:45")]
    [InlineData(64.0667, -21.9667, "2013-03-21", "07:24", "19:46")]
    [InlineData(64.0667, -21.9667, "2013-06-21", "02:57", "24:02")]
    public void Another_algorithm_says_the_same(double latitude, double longitude, string date, string sunrise, string sunset) =>
        AgreesToTheMinute(new Sky(latitude, longitude), date, sunrise, sunset);

    /// <summary>
    /// Every day of 2026 at six latitudes beyond and between the polar circles, against astronomy-engine: another theory of
    /// the sun (VSOP87), another search, the same zeniths. Meeus gives 0.01 degrees as the accuracy of the equations used here
    /// (Astronomical Algorithms, chapter 25), and the library alone allows for parallax, 0.0024 degrees. A quarter of a minute is
    /// asked, or the time the sun takes over those 0.0124 degrees where it grazes the horizon; only where it turns within
    /// them may one see an event that the other misses.
    /// </summary>
    [Fact]
    public void An_independent_library_sees_the_same_sun_all_year_from_circle_to_circle()
    {
        var compared = 0;
        foreach (var (sky, start, seconds) in Fixture())
        {
            var noon = sky.Noon(start + Duration.FromHours(12) - Duration.FromMinutes(4 * sky.Longitude));
            Assert.InRange((noon - start).TotalSeconds - seconds[2]!.Value, -15, 15);
            Compare(sky, start, noon, seconds[0], sky.Rising(noon, Sky.CivilTwilight), Sky.CivilTwilight, before: true);
            Compare(sky, start, noon, seconds[1], sky.Rising(noon, Sky.RiseAndSet), Sky.RiseAndSet, before: true);
            Compare(sky, start, noon, seconds[3], sky.Setting(noon, Sky.RiseAndSet), Sky.RiseAndSet, before: false);
            Compare(sky, start, noon, seconds[4], sky.Setting(noon, Sky.CivilTwilight), Sky.CivilTwilight, before: false);
            compared++;
        }

        Assert.Equal(6 * 365, compared);
    }

    [Theory]
    [InlineData("2026-06-21", true)]
    [InlineData("2026-12-21", false)]
    public void Beyond_the_circle_the_sun_does_not_set_in_summer_nor_rise_in_winter(string date, bool up)
    {
        var sky = new Sky(69.65, 18.96);
        var noon = sky.Noon(Sample.Day(date).AtMidnight().InUtc().ToInstant() + Duration.FromHours(11));

        Assert.Null(sky.Rising(noon, Sky.RiseAndSet));
        Assert.Null(sky.Setting(noon, Sky.RiseAndSet));
        Assert.Equal(up, sky.Altitude(noon) > 0);
    }

    /// <summary>By the definition of a crossing, wherever the sun climbs steeply or hardly at all, between the years the equations are for.</summary>
    [Fact]
    public void A_crossing_is_where_the_sun_passes_that_height() => Gen.Select(Gen.Double[-89, 89], Gen.Double[-180, 180], Gen.Int[0, 150 * 365], Gen.Bool).Sample((latitude, longitude, day, isTwilight) =>
    {
        var altitude = isTwilight ? Sky.CivilTwilight : Sky.RiseAndSet;
        var sky = new Sky(latitude, longitude);
        var noon = sky.Noon(Instant.FromUtc(1950, 1, 1, 12, 0) + Duration.FromDays(day) - Duration.FromMinutes(4 * longitude));
        var slip = Duration.FromSeconds(0.06);
        if (sky.Rising(noon, altitude) is { } rise)
        {
            Assert.InRange(altitude, sky.Altitude(rise - slip) - 1e-9, sky.Altitude(rise) + 1e-9);
        }

        if (sky.Setting(noon, altitude) is { } set)
        {
            Assert.InRange(altitude, sky.Altitude(set + slip) - 1e-9, sky.Altitude(set) + 1e-9);
        }
    });

    private static void Compare(Sky sky, Instant start, Instant noon, int? theirs, Instant? ours, double altitude, bool before)
    {
        const double sameSun = 0.0124;
        if (theirs is { } seconds && ours is { } time)
        {
            var there = start + Duration.FromSeconds(seconds);
            Assert.True(
                Math.Abs((time - there).TotalSeconds) <= 15 || Math.Abs(sky.Altitude(there) - altitude) <= sameSun,
                $"{sky} {altitude}: {time} against {there}, {sky.Altitude(there) - altitude:0.0000}");
            return;
        }

        if (theirs is not null || ours is not null)
        {
            var midnight = noon + Duration.FromHours(before ? -12 : 12);
            var grazes = new[] { noon, midnight }.Min(t => Math.Abs(sky.Altitude(t) - altitude));
            Assert.True(grazes <= sameSun, $"{sky} {altitude}: {ours} against {theirs} on {start}, {grazes:0.0000}");
        }
    }

    private static IEnumerable<(Sky Sky, Instant Start, int?[] Seconds)> Fixture()
    {
        Sky sky = default;
        foreach (var line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Rounds", "sun-2026.csv")).Where(l => l[0] != '#'))
        {
            if (line[0] == '@')
            {
                var place = line[2..].Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToList();
                sky = new Sky(place[0], place[1]);
                continue;
            }

            var fields = line.Split(',');
            yield return (
                sky,
                Sample.Day(fields[0]).AtMidnight().InUtc().ToInstant(),
                [.. fields[1..].Select(f => f.Length == 0 ? (int?)null : int.Parse(f, CultureInfo.InvariantCulture))]);
        }
    }

    private static void AgreesToTheMinute(Sky sky, string date, string sunrise, string sunset)
    {
        var midnight = Sample.Day(date).AtMidnight().InUtc().ToInstant();
        var noon = sky.Noon(midnight + Duration.FromHours(12));
        Within(60, sunrise, sky.Rising(noon, Sky.RiseAndSet)!.Value - midnight);
        Within(60, sunset, sky.Setting(noon, Sky.RiseAndSet)!.Value - midnight);
    }

    private static void Within(int seconds, string published, Duration found)
    {
        var parts = published.Split(':').Select(int.Parse).ToList();
        Assert.InRange(found.TotalSeconds - (((parts[0] * 60) + parts[1]) * 60), -seconds, seconds);
    }
}
