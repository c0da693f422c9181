namespace PaperFlock.Flocks.Reading.Values;

/// <summary>A unit that may follow a number.</summary>
/// <param name="Name">As typed; case is not looked at.</param>
/// <param name="Factor">What one of it is, in the unit the domain keeps; exact.</param>
internal sealed record Unit(string Name, decimal Factor)
{
    /// <summary>In kilograms.</summary>
    public static Unit[] Masses { get; } =
    [
        new("kg", 1),
        new("lb", Mass.KilogramsPerPound),
        new("g", 0.001m),
        // Sixteen ounces to the pound: Weights and Measures Act 1985, Schedule 1, Part V.
        new("oz", Mass.KilogramsPerPound / 16),
        new("lbs", Mass.KilogramsPerPound),
    ];

    /// <summary>In metres.</summary>
    public static Unit[] Lengths { get; } =
    [
        new("m", 1),
        new("ft", Length.MetresPerFoot),
        new("cm", 0.01m),
        // Twelve inches to the foot: Weights and Measures Act 1985, Schedule 1, Part I.
        new("in", Length.MetresPerFoot / 12),
        new("mm", 0.001m),
    ];

    /// <summary>In megajoules for each kilogram.</summary>
    public static Unit[] Energies { get; } = [new("MJ/kg", 1)];

    /// <summary>In grams for each kilogram. No per cent: a bag's label gives those of the whole, and this is of dry matter.</summary>
    public static Unit[] Contents { get; } = [new("g/kg", 1)];

    /// <summary>As a fraction.</summary>
    public static Unit[] Parts { get; } = [new("%", 0.01m)];
}
