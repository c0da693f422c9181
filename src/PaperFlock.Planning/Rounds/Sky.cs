using NodaTime;

namespace PaperFlock.Planning.Rounds;

/// <summary>The sun as seen from one place.</summary>
/// <param name="Latitude">Degrees, north positive.</param>
/// <param name="Longitude">Degrees, east positive.</param>
internal readonly record struct Sky(double Latitude, double Longitude)
{
    /// <summary>Degrees of the sun's centre below the horizon at sunrise and sunset: 34 minutes of refraction and 16 of its half width (NOAA Solar Calculator: zenith 90.833).</summary>
    public const double RiseAndSet = -0.833;

    /// <summary>Where civil twilight begins and ends: zenith 96 degrees.</summary>
    public const double CivilTwilight = -6;

    private static readonly Duration HalfDay = Duration.FromHours(12);

    /// <summary>Height of the sun's centre over a horizon without air, in degrees.</summary>
    public double Altitude(Instant time)
    {
        var sun = SolarPosition.At(time);
        var hourAngle = SolarPosition.Radians(HourAngle(time, sun));
        var latitude = SolarPosition.Radians(Latitude);
        var sine = (Math.Sin(latitude) * Math.Sin(sun.Declination))
            + (Math.Cos(latitude) * Math.Cos(sun.Declination) * Math.Cos(hourAngle));
        return SolarPosition.Degrees(Math.Asin(Math.Clamp(sine, -1, 1)));
    }

    /// <summary>When the sun crosses the meridian, within half a day of <paramref name="near"/>.</summary>
    public Instant Noon(Instant near)
    {
        var noon = near;
        for (var i = 0; i < 3; i++)
        {
            noon -= Duration.FromMinutes(4 * HourAngle(noon, SolarPosition.At(noon)));
        }

        return noon;
    }

    /// <summary>When it climbs through <paramref name="altitude"/> in the half day up to noon; null when it does not.</summary>
    public Instant? Rising(Instant noon, double altitude) => Crossing(noon - HalfDay, noon, altitude);

    /// <summary>When it sinks through <paramref name="altitude"/> in the half day from noon; null when it does not.</summary>
    public Instant? Setting(Instant noon, double altitude) => Crossing(noon + HalfDay, noon, altitude);

    /// <summary>The sun climbs without a turn from midnight to noon, so halving finds the one crossing there is, with the sun's place taken at that very moment.</summary>
    private Instant? Crossing(Instant low, Instant high, double altitude)
    {
        if (Altitude(low) > altitude || Altitude(high) < altitude)
        {
            return null;
        }

        while (Math.Abs((high - low).TotalSeconds) > 0.5)
        {
            var middle = low + ((high - low) / 2);
            if (Altitude(middle) < altitude)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return high;
    }

    /// <summary>Degrees past noon, -180 to 180.</summary>
    private double HourAngle(Instant time, SolarPosition sun)
    {
        var minutes = time.InUtc().TimeOfDay.NanosecondOfDay / (double)NodaConstants.NanosecondsPerMinute;
        var angle = ((minutes + sun.EquationOfTime) / 4) + Longitude - 180;
        return angle - (360 * Math.Round(angle / 360));
    }
}
