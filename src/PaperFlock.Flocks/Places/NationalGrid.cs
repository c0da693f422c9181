using static System.Double;

namespace PaperFlock.Flocks.Places;

/// <summary>
/// From the British National Grid to the latitude and longitude a phone shows. Formulas, constants and the shift between
/// the two figures of the earth are those of Ordnance Survey, "A guide to coordinate systems in Great Britain", sections 6.6
/// and annexes A to C. The shift is good to about five metres: a farm gate, not a boundary.
/// </summary>
internal static class NationalGrid
{
    private const double ScaleAtCentre = 0.9996012717;
    private const double FalseEasting = 400_000;
    private const double FalseNorthing = -100_000;
    private static readonly double OriginLatitude = DegreesToRadians(49);
    private static readonly double OriginLongitude = DegreesToRadians(-2);

    /// <param name="easting">Metres from the corner of square SV, as is <paramref name="northing"/>.</param>
    /// <returns>Degrees on WGS84, north and east positive.</returns>
    public static (double Latitude, double Longitude) ToWgs84(double easting, double northing)
    {
        var airy = ToAiry(easting, northing);
        var (x, y, z) = Shift(Ellipsoid.Airy1830.ToCartesian(DegreesToRadians(airy.Latitude), DegreesToRadians(airy.Longitude)));
        var (latitude, longitude) = Ellipsoid.Wgs84.FromCartesian(x, y, z);
        return (RadiansToDegrees(latitude), RadiansToDegrees(longitude));
    }

    /// <summary>Degrees on the ellipsoid of the old triangulation, OSGB36. The guide, annexe C.2.</summary>
    public static (double Latitude, double Longitude) ToAiry(double easting, double northing)
    {
        var (a, e2) = (Ellipsoid.Airy1830.A, Ellipsoid.Airy1830.EccentricitySquared);
        var latitude = OriginLatitude + (northing - FalseNorthing) / (a * ScaleAtCentre);
        double miss;
        do
        {
            miss = northing - FalseNorthing - MeridianArc(latitude);
            latitude += miss / (a * ScaleAtCentre);
        }
        while (Math.Abs(miss) >= 0.000_01);

        var sin2 = Math.Pow(Math.Sin(latitude), 2);
        var nu = a * ScaleAtCentre / Math.Sqrt(1 - e2 * sin2);
        var rho = a * ScaleAtCentre * (1 - e2) * Math.Pow(1 - e2 * sin2, -1.5);
        var eta2 = nu / rho - 1;
        var tan = Math.Tan(latitude);
        var (t2, sec) = (tan * tan, 1 / Math.Cos(latitude));
        var (t4, t6) = (t2 * t2, t2 * t2 * t2);
        var d = easting - FalseEasting;

        // The Roman numerals are the guide's own names of these terms.
        var vii = tan / (2 * rho * nu);
        var viii = tan / (24 * rho * Math.Pow(nu, 3)) * (5 + 3 * t2 + eta2 - 9 * t2 * eta2);
        var ix = tan / (720 * rho * Math.Pow(nu, 5)) * (61 + 90 * t2 + 45 * t4);
        var x = sec / nu;
        var xi = sec / (6 * Math.Pow(nu, 3)) * (nu / rho + 2 * t2);
        var xii = sec / (120 * Math.Pow(nu, 5)) * (5 + 28 * t2 + 24 * t4);
        var xiia = sec / (5040 * Math.Pow(nu, 7)) * (61 + 662 * t2 + 1320 * t4 + 720 * t6);
        return (
            RadiansToDegrees(latitude - vii * Math.Pow(d, 2) + viii * Math.Pow(d, 4) - ix * Math.Pow(d, 6)),
            RadiansToDegrees(OriginLongitude + x * d - xi * Math.Pow(d, 3) + xii * Math.Pow(d, 5) - xiia * Math.Pow(d, 7)));
    }

    /// <summary>Metres along the central meridian from the true origin. The guide, annexe C, equation C3.</summary>
    private static double MeridianArc(double latitude)
    {
        var (a, b) = (Ellipsoid.Airy1830.A, Ellipsoid.Airy1830.B);
        var n = (a - b) / (a + b);
        var (n2, n3) = (n * n, n * n * n);
        var (difference, sum) = (latitude - OriginLatitude, latitude + OriginLatitude);
        return b * ScaleAtCentre * (
            (1 + n + 5d / 4 * n2 + 5d / 4 * n3) * difference
            - (3 * n + 3 * n2 + 21d / 8 * n3) * Math.Sin(difference) * Math.Cos(sum)
            + (15d / 8 * n2 + 15d / 8 * n3) * Math.Sin(2 * difference) * Math.Cos(2 * sum)
            - 35d / 24 * n3 * Math.Sin(3 * difference) * Math.Cos(3 * sum));
    }

    /// <summary>The guide, section 6.6: the seven parameters from WGS84 to OSGB36, each with its sign turned round.</summary>
    private static (double X, double Y, double Z) Shift((double X, double Y, double Z) at)
    {
        const double Scale = 1 - 20.4894e-6;
        var (rx, ry, rz) = (DegreesToRadians(0.1502 / 3600), DegreesToRadians(0.2470 / 3600), DegreesToRadians(0.8421 / 3600));
        return (
            446.448 + Scale * at.X - rz * at.Y + ry * at.Z,
            -125.157 + rz * at.X + Scale * at.Y - rx * at.Z,
            542.060 - ry * at.X + rx * at.Y + Scale * at.Z);
    }
}
