namespace PaperFlock.Flocks.Places;

/// <summary>A figure of the earth that latitudes and longitudes are reckoned on.</summary>
/// <param name="A">Semi-major axis, metres.</param>
/// <param name="B">Semi-minor axis, metres.</param>
internal sealed record Ellipsoid(double A, double B)
{
    /// <summary>Ordnance Survey, "A guide to coordinate systems in Great Britain", annexe A.1.</summary>
    public static readonly Ellipsoid Airy1830 = new(6_377_563.396, 6_356_256.909);

    /// <summary>The same annexe: GRS80, which WGS84 shares to the tenth of a millimetre.</summary>
    public static readonly Ellipsoid Wgs84 = new(6_378_137.000, 6_356_752.3141);

    public double EccentricitySquared => (A * A - B * B) / (A * A);

    /// <summary>Earth-centred metres of a point on the ellipsoid. The guide, annexe B.1, with no height.</summary>
    /// <param name="latitude">Radians, as is <paramref name="longitude"/>.</param>
    public (double X, double Y, double Z) ToCartesian(double latitude, double longitude)
    {
        var nu = Nu(latitude);
        return (
            nu * Math.Cos(latitude) * Math.Cos(longitude),
            nu * Math.Cos(latitude) * Math.Sin(longitude),
            (1 - EccentricitySquared) * nu * Math.Sin(latitude));
    }

    /// <summary>Radians, north and east positive. The guide, annexe B.2.</summary>
    public (double Latitude, double Longitude) FromCartesian(double x, double y, double z)
    {
        var p = Math.Sqrt(x * x + y * y);
        var latitude = Math.Atan(z / (p * (1 - EccentricitySquared)));
        double before;
        do
        {
            before = latitude;
            latitude = Math.Atan((z + EccentricitySquared * Nu(latitude) * Math.Sin(latitude)) / p);
        }
        while (Math.Abs(latitude - before) > 1e-13);

        return (latitude, Math.Atan2(y, x));
    }

    private double Nu(double latitude) => A / Math.Sqrt(1 - EccentricitySquared * Math.Pow(Math.Sin(latitude), 2));
}
