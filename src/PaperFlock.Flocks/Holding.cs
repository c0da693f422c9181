namespace PaperFlock.Flocks;

/// <param name="Latitude">Decimal degrees, north positive, -90 to 90.</param>
/// <param name="Longitude">Decimal degrees, east positive, -180 to 180.</param>
/// <param name="Contacts">In the order they are to be rung.</param>
public sealed record Holding(
    string Name,
    string? Keeper,
    decimal Latitude,
    decimal Longitude,
    DateTimeZone TimeZone,
    string? GridReference,
    string? Postcode,
    ImmutableArray<Contact> Contacts)
{
    public string Name { get; init; } = Require.Text(Name);

    public decimal Latitude { get; init; } = Require.Within(Latitude, -90, 90);

    public decimal Longitude { get; init; } = Require.Within(Longitude, -180, 180);

    public DateTimeZone TimeZone { get; init; } = TimeZone ?? throw new ArgumentNullException(nameof(TimeZone));

    public ImmutableArray<Contact> Contacts { get; init; } = Require.Made(Contacts);

    /// <summary>Where bins, tap, hay, hurdles and scales are.</summary>
    public string? Find { get; init; }

    /// <summary>Where a telephone works.</summary>
    public string? Signal { get; init; }

    /// <summary>Where a ewe that is unwell is brought in, out of the weather.</summary>
    public string? SickPen { get; init; }
}

public sealed record Contact(string Role, string? Name, string? Phone, string? Note)
{
    public string Role { get; init; } = Require.Text(Role);
}
