using PaperFlock.Flocks.Places;

namespace PaperFlock.Flocks;

/// <param name="Location">Where the sheep are; null where the file does not say, and then nothing is said of the sun.</param>
/// <param name="Contacts">In the order they are to be rung.</param>
public sealed record Holding(
    string Name,
    string? Keeper,
    Place? Location,
    DateTimeZone TimeZone,
    string? GridReference,
    string? Postcode,
    ImmutableArray<Contact> Contacts)
{
    public string Name { get; init; } = Require.Text(Name);

    public DateTimeZone TimeZone { get; init; } = TimeZone ?? throw new ArgumentNullException(nameof(TimeZone));

    public ImmutableArray<Contact> Contacts { get; init; } = Require.Made(Contacts);

    /// <summary>Which half of the world has its spring now: by the place, else by the main town of the time zone; a zone of no country is taken for a northern one.</summary>
    public bool IsSouthern => (Location ?? PlaceZones.MiddleOf(TimeZone.Id))?.IsSouthern ?? false;

    /// <summary>What tells its pages from those of other holdings, in letters and figures; null for the initials of its name.</summary>
    public string? Code { get; init; }

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

    /// <summary>By the role alone, whatever she is called.</summary>
    public bool IsKeeper => Role.Equals("keeper", StringComparison.OrdinalIgnoreCase);

    /// <summary>By the role alone: "Vet", "Vets, out of hours".</summary>
    public bool IsVet => Role.Contains("vet", StringComparison.OrdinalIgnoreCase);
}
