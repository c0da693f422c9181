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

    /// <summary>A twentieth of a second, as a part of half a day.</summary>
    private const double Closest = 0.05 / (12 * 3600);

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

    /// <summary>
    /// The sun climbs without a turn from midnight to noon, so there is one crossing at most. It is found by false position in the form of Illinois
    /// (Dowell and Jarratt, BIT 11, 1971; from memory), with the sun's place taken at that very moment.
    /// </summary>
    /// <returns>No more than a twentieth of a second nearer noon.</returns>
    private Instant? Crossing(Instant midnight, Instant noon, double altitude)
    {
        var halfDay = noon - midnight;
        // Parts of the half day between which the sun crosses, and how far it is from doing so there.
        var (low, high) = (0.0, 1.0);
        var (below, above) = (Altitude(midnight) - altitude, Altitude(noon) - altitude);
        if (below > 0 || above < 0)
        {
            return null;
        }

        bool? lowMoved = null;
        while (high - low > Closest)
        {
            // Never quite at an end, or that end would be all that moves.
            var part = Math.Clamp(low + ((high - low) * below / (below - above)), low + (Closest / 3), high - (Closest / 3));
            var height = Altitude(midnight + (halfDay * part)) - altitude;
            // An end that stays twice counts for half.
            if (height < 0)
            {
                (low, below, above) = (part, height, lowMoved == true ? above / 2 : above);
            }
            else
            {
                (high, above, below) = (part, height, lowMoved == false ? below / 2 : below);
            }

            lowMoved = height < 0;
        }

        return midnight + (halfDay * high);
    }

    /// <summary>Degrees past noon, -180 to 180.</summary>
    private double HourAngle(Instant time, SolarPosition sun)
    {
        var minutes = time.InUtc().TimeOfDay.NanosecondOfDay / (double)NodaConstants.NanosecondsPerMinute;
        var angle = ((minutes + sun.EquationOfTime) / 4) + Longitude - 180;
        return angle - (360 * Math.Round(angle / 360));
    }
}
