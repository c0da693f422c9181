namespace PaperFlock.Planning.Feeding;

/// <summary>What one ewe eats in a day, kg of dry matter.</summary>
internal readonly record struct Diet(double ForageDryMatter, double ConcentrateDryMatter)
{
    /// <summary>Metabolisable energy, MJ/day.</summary>
    public double Energy(Forage forage, Concentrate concentrate) =>
        (ForageDryMatter * (double)forage.Energy) + (ConcentrateDryMatter * (double)concentrate.Energy);

    /// <summary>M/D of the whole diet, MJ/kg dry matter; the forage's own where nothing is eaten.</summary>
    public double EnergyDensity(Forage forage, Concentrate concentrate)
    {
        var dryMatter = ForageDryMatter + ConcentrateDryMatter;
        return dryMatter > 0 ? Energy(forage, concentrate) / dryMatter : (double)forage.Energy;
    }

    /// <summary>Concentrate as it comes out of the bag, kg/day.</summary>
    public double FreshConcentrate(Concentrate concentrate) => ConcentrateDryMatter / (double)concentrate.DryMatter;
}
