namespace PaperFlock.Planning.Rounds;

/// <summary>
/// Where the sun stands, by the equations of the NOAA Solar Calculator (NOAA Global Monitoring Laboratory), which take them
/// from Jean Meeus, Astronomical Algorithms, chapter 25. NOAA gives their accuracy as a minute in rise and set within 72 degrees
/// of latitude, between the years 1800 and 2100.
/// </summary>
/// <param name="Declination">Radians, north positive.</param>
/// <param name="EquationOfTime">Apparent solar time less mean solar time, in minutes.</param>
internal readonly record struct SolarPosition(double Declination, double EquationOfTime)
{
    private const double DaysPerCentury = 36525;
    private static readonly Instant J2000 = Instant.FromUtc(2000, 1, 1, 12, 0);

    public static SolarPosition At(Instant time)
    {
        // Universal time stands in for terrestrial: a minute's difference moves the sun by a thousandth of a degree at most.
        var t = (time - J2000).TotalDays / DaysPerCentury;
        var meanLongitude = Radians((280.46646 + (t * (36000.76983 + (t * 0.0003032)))) % 360);
        var meanAnomaly = Radians(357.52911 + (t * (35999.05029 - (0.0001537 * t))));
        var eccentricity = 0.016708634 - (t * (0.000042037 + (0.0000001267 * t)));
        var centre = Radians(
            (Math.Sin(meanAnomaly) * (1.914602 - (t * (0.004817 + (0.000014 * t)))))
            + (Math.Sin(2 * meanAnomaly) * (0.019993 - (0.000101 * t)))
            + (Math.Sin(3 * meanAnomaly) * 0.000289));
        var node = Radians(125.04 - (1934.136 * t));
        var apparentLongitude = meanLongitude + centre - Radians(0.00569 + (0.00478 * Math.Sin(node)));
        var meanObliquity = 23 + ((26 + ((21.448 - (t * (46.815 + (t * (0.00059 - (t * 0.001813)))))) / 60)) / 60);
        var obliquity = Radians(meanObliquity + (0.00256 * Math.Cos(node)));

        var y = Math.Pow(Math.Tan(obliquity / 2), 2);
        var equation = (y * Math.Sin(2 * meanLongitude))
            - (2 * eccentricity * Math.Sin(meanAnomaly))
            + (4 * eccentricity * y * Math.Sin(meanAnomaly) * Math.Cos(2 * meanLongitude))
            - (0.5 * y * y * Math.Sin(4 * meanLongitude))
            - (1.25 * eccentricity * eccentricity * Math.Sin(2 * meanAnomaly));
        return new(Math.Asin(Math.Sin(obliquity) * Math.Sin(apparentLongitude)), 4 * Degrees(equation));
    }

    internal static double Radians(double degrees) => degrees * Math.PI / 180;

    internal static double Degrees(double radians) => radians * 180 / Math.PI;
}
