namespace PaperFlock.Flocks.Reading.Values;

/// <summary>A unit that may follow a number.</summary>
/// <param name="Name">As typed, and as advised; capitals make no difference.</param>
/// <param name="Factor">What one of it is, in the unit the domain keeps; exact.</param>
internal sealed record Unit(string Name, decimal Factor, string? OtherName = null)
{
    /// <summary>In kilograms.</summary>
    public static Unit[] Masses { get; } =
    [
        new("kg", 1),
        new("lb", Mass.KilogramsPerPound, "lbs"),
        new("g", 0.001m),
        // Sixteen ounces to the pound: Weights and Measures Act 1985, Schedule 1, Part V.
        new("oz", Mass.KilogramsPerPound / 16),
    ];

    /// <summary>In metres.</summary>
    public static Unit[] Lengths { get; } =
    [
        new("m", 1),
        new("ft", Length.MetresPerFoot, "feet"),
        new("cm", 0.01m),
        // Twelve inches to the foot: Weights and Measures Act 1985, Schedule 1, Part I.
        new("in", Length.MetresPerFoot / 12, "inches"),
        new("mm", 0.001m),
    ];

    /// <summary>In megajoules for each kilogram of dry matter; a laboratory's sheet says so after the unit.</summary>
    public static Unit[] Energies { get; } = [new("MJ/kg", 1, "MJ/kg DM")];

    /// <summary>In grams for each kilogram. No per cent: a bag's label gives those of the whole, and this is of dry matter.</summary>
    public static Unit[] Contents { get; } = [new("g/kg", 1, "g/kg DM")];

    /// <summary>As a fraction.</summary>
    public static Unit[] Parts { get; } = [new("%", 0.01m)];

    public bool Is(string typed) =>
        string.Equals(Name, typed, StringComparison.OrdinalIgnoreCase) || string.Equals(OtherName, typed, StringComparison.OrdinalIgnoreCase);
}
