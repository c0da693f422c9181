namespace PaperFlock.Planning.Feeding;

/// <summary>How much forage a ewe in late pregnancy can eat.</summary>
internal static class ForageIntake
{
    /// <summary>Dry matter she eats with no concentrate, kg/day: a share of her live weight.</summary>
    /// <param name="weight">Live weight, kg.</param>
    public static double Capacity(Forage forage, double weight) => weight * (double)(forage.Intake ?? Usual(forage.Kind));

    /// <summary>Dry matter she eats beside concentrate, kg/day: each kilogram of concentrate dry matter pushes out
    /// <see cref="Forage.SubstitutionRate"/> kilograms of forage, down to none.</summary>
    /// <remarks>The published worked rations hold forage fixed (a rate of 0). Measured rates run from 0 on silage with modest
    /// concentrate, through about 0.63 on hay (abstract, "The effect of concentrate level on the intake of hays by ewes
    /// in late pregnancy"), to 0.75 on the best silage (Teagasc Athenry, Irish Independent).</remarks>
    /// <param name="capacity">What she would eat with no concentrate, kg dry matter a day.</param>
    /// <param name="concentrateDryMatter">kg/day.</param>
    public static double Beside(Forage forage, double capacity, double concentrateDryMatter) =>
        Math.Max(0, capacity - ((double)forage.SubstitutionRate * concentrateDryMatter));

    /// <summary>The usual intake of a kind, dry matter a day as a fraction of live weight.</summary>
    public static decimal Usual(ForageKind kind) => kind switch
    {
        // Hybu Cig Cymru, "Feeding ewes in late pregnancy": average hay near lambing.
        ForageKind.Hay => 0.015m,

        // Vet Times, 27 November 2017, Panel 1, after Vipond et al. (2009): good silage three weeks before lambing.
        ForageKind.Silage => 0.014m,

        // From memory, low confidence: between hay and silage, and so is winter grass.
        ForageKind.Haylage => 0.015m,
        ForageKind.Grass => 0.015m,

        // From memory, low confidence: she cannot pass straw fast enough to eat more.
        ForageKind.Straw => 0.010m,
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
