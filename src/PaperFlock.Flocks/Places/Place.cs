namespace PaperFlock.Flocks.Places;

/// <summary>Where a holding is.</summary>
/// <param name="Latitude">Decimal degrees on WGS84, north positive, -90 to 90; with as many decimals as the place is known by.</param>
/// <param name="Longitude">Decimal degrees on WGS84, east positive, -180 to 180.</param>
/// <param name="GridReference">As an emergency service would be told it; null when the place was not given so.</param>
public sealed record Place(decimal Latitude, decimal Longitude, string? GridReference)
{
    public decimal Latitude { get; init; } = Require.Within(Latitude, -90, 90);

    public decimal Longitude { get; init; } = Require.Within(Longitude, -180, 180);

    public bool IsSouthern => Latitude < 0;

    /// <summary>Great-circle kilometres, on a sphere of 6,371 km: near enough to tell which of two towns is nearer.</summary>
    public double KilometresTo(double latitude, double longitude)
    {
        var (here, there) = (double.DegreesToRadians((double)Latitude), double.DegreesToRadians(latitude));
        var across = double.DegreesToRadians(longitude - (double)Longitude);
        var haversine = Math.Pow(Math.Sin((there - here) / 2), 2) + Math.Cos(here) * Math.Cos(there) * Math.Pow(Math.Sin(across / 2), 2);
        return 2 * 6371 * Math.Asin(Math.Min(1, Math.Sqrt(haversine)));
    }
}
