using NodaTime;
using PaperFlock.Planning.Rounds;

namespace PaperFlock.Planning.Tests.Rounds;

/// <summary>Local time, clock changes and dates, with the sun itself proven elsewhere.</summary>
public class SunDayTests
{
    [Theory]
    // London: clocks on at 01:00 on 29 March 2026, back at 02:00 on 25 October 2026.
    [InlineData(51.473, -0.001, "Europe/London", "2026-03-28", 60)]
    [InlineData(51.473, -0.001, "Europe/London", "2026-10-24", -60)]
    // Auckland: back at 03:00 on 5 April 2026, on at 02:00 on 27 September 2026.
    [InlineData(-36.85, 174.76, "Pacific/Auckland", "2026-04-04", -60)]
    [InlineData(-36.85, 174.76, "Pacific/Auckland", "2026-09-26", 60)]
    public void Sunrise_jumps_with_the_clocks(double latitude, double longitude, string zone, string eve, int minutes)
    {
        var holding = Sample.Holding((decimal)latitude, (decimal)longitude, zone);
        var day = Sample.Day(eve);

        var before = SunDay.At(holding, day);
        var after = SunDay.At(holding, day.PlusDays(1));

        // The sun itself moves by less than three minutes from one day to the next.
        Assert.InRange(MinuteOfDay(after.Sunrise) - MinuteOfDay(before.Sunrise) - minutes, -3, 3);
        Assert.InRange(MinuteOfDay(after.Dusk) - MinuteOfDay(before.Dusk) - minutes, -3, 3);
    }

    [Theory]
    // Lines of longitude and zones that put local noon on another day of universal time.
    [InlineData(1.87, -157.4, "Pacific/Kiritimati")]
    [InlineData(-13.8, -171.8, "Pacific/Apia")]
    [InlineData(-45.87, 170.5, "Pacific/Auckland")]
    [InlineData(43.8, 87.6, "Asia/Shanghai")]
    public void The_suns_day_is_the_one_whose_noon_falls_on_the_date(double latitude, double longitude, string zone)
    {
        var date = Sample.Day("2026-09-01");

        var sun = SunDay.At(Sample.Holding((decimal)latitude, (decimal)longitude, zone), date);

        Assert.Equal(date, sun.Noon.Date);
        Assert.True(sun.Dawn < sun.Sunrise && sun.Sunrise < sun.Noon && sun.Noon < sun.Sunset && sun.Sunset < sun.Dusk);
    }

    [Fact]
    public void A_dusk_after_midnight_belongs_to_the_day_before()
    {
        // Reykjavik on 21 June: the sun sets at 00:02 on the next calendar day (see the sky's own tests).
        var sun = SunDay.At(Sample.Holding(64.0667m, -21.9667m, "Atlantic/Reykjavik"), Sample.Day("2013-06-21"));

        Assert.Equal(Sample.Day("2013-06-22").At(new LocalTime(0, 2)), sun.Sunset);
        Assert.Null(sun.Dusk);
        Assert.False(sun.DarkAllDay);
    }

    [Fact]
    public void Times_are_whole_minutes_to_the_nearest()
    {
        // London, 12 December 2015: the equations give 07:55:57 and 15:51:03.
        var sun = SunDay.At(Sample.Holding(51.473m, -0.001m), Sample.Day("2015-12-12"));

        Assert.Equal(new LocalTime(7, 56), sun.Sunrise!.Value.TimeOfDay);
        Assert.Equal(new LocalTime(15, 51), sun.Sunset!.Value.TimeOfDay);
    }

    private static int MinuteOfDay(LocalDateTime? time) => (time!.Value.Hour * 60) + time.Value.Minute;
}
