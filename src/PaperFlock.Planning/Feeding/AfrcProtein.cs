namespace PaperFlock.Planning.Feeding;

/// <summary>Metabolisable protein needed for maintenance and supplied by a diet, after AFRC (1993), <i>Energy and Protein
/// Requirements of Ruminants</i>. All coefficients are from memory of that book.</summary>
/// <remarks>A full reckoning wants analyses a keeper does not have. Three shares are assumed instead, by kind of
/// feed, and are assumptions of this program, from memory of ordinary feed tables: how much of the metabolisable energy the
/// rumen's microbes can use (less where fat and silage acids hold it), how much of the crude protein breaks down in the
/// rumen, and how much is bound to fibre and lost. So the answer is a warning to ask about protein, never a formula for a mix.</remarks>
internal static class AfrcProtein
{
    private const double MicrobialToDigestible = 0.6375;
    private const double UndegradedDigestibility = 0.9;
    private const double BoundShare = 0.05;
    private const double ConcentrateFermentable = 0.90;
    private const double ConcentrateDegradable = 0.72;

    /// <summary>Metabolisable protein for maintenance and wool, g/day: 2.1875 W^0.75 + 20.4.</summary>
    /// <param name="weight">Live weight, kg.</param>
    public static double Maintenance(double weight) => (2.1875 * Math.Pow(weight, 0.75)) + 20.4;

    /// <summary>Microbial crude protein made from each MJ of fermentable energy, g: 9, 10 and 11 at one, two and three times
    /// maintenance, in proportion between.</summary>
    /// <param name="feedingLevel">Energy eaten as a multiple of maintenance.</param>
    public static double MicrobialYield(double feedingLevel) => 8 + Math.Clamp(feedingLevel, 1, 3);

    /// <summary>Metabolisable protein a diet gives, g/day: 0.6375 of the microbial protein, which either energy or
    /// degradable protein may hold back, and 0.9 of the undegraded protein that is not bound.</summary>
    /// <param name="maintenance">Metabolisable energy for maintenance, MJ/day: sets the feeding level.</param>
    public static double Supply(Diet diet, Forage forage, Concentrate concentrate, double maintenance)
    {
        var (fermentableShare, degradableShare) = Shares(forage.Kind);
        var forageProtein = diet.ForageDryMatter * (double)forage.Protein;
        var concentrateProtein = diet.ConcentrateDryMatter * (double)concentrate.Protein;
        var fermentable = (diet.ForageDryMatter * (double)forage.Energy * fermentableShare)
            + (diet.ConcentrateDryMatter * (double)concentrate.Energy * ConcentrateFermentable);
        var degraded = (forageProtein * degradableShare) + (concentrateProtein * ConcentrateDegradable);

        var energy = diet.Energy(forage, concentrate);
        var microbial = Math.Min(MicrobialYield(energy / maintenance) * fermentable, degraded);
        var crude = forageProtein + concentrateProtein;
        var undegraded = Math.Max(0, crude - degraded - (BoundShare * crude));
        return (MicrobialToDigestible * microbial) + (UndegradedDigestibility * undegraded);
    }

    /// <summary>Of its energy and of its protein, 0 to 1.</summary>
    private static (double Fermentable, double Degradable) Shares(ForageKind kind) => kind switch
    {
        ForageKind.Hay => (0.94, 0.68),
        ForageKind.Haylage => (0.86, 0.72),
        ForageKind.Silage => (0.78, 0.78),
        ForageKind.Straw => (0.95, 0.55),
        ForageKind.Grass => (0.93, 0.75),
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
