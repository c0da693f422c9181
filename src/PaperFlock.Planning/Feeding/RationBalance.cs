namespace PaperFlock.Planning.Feeding;

/// <summary>The concentrate that makes up what forage cannot give.</summary>
internal static class RationBalance
{
    /// <summary>The diet that meets an energy need with the least concentrate. Without substitution this is the trade's own sum:
    /// fresh concentrate = (need - forage dry matter x its energy) / (concentrate energy x its dry matter).</summary>
    /// <param name="need">Metabolisable energy, MJ/day.</param>
    /// <param name="capacity">Forage she would eat with no concentrate, kg dry matter a day.</param>
    public static Diet Meeting(double need, double capacity, Forage forage, Concentrate concentrate)
    {
        var forageEnergy = (double)forage.Energy;
        var concentrateEnergy = (double)concentrate.Energy;
        var rate = (double)forage.SubstitutionRate;
        var gap = need - (capacity * forageEnergy);
        if (gap <= 0)
        {
            return new Diet(capacity, 0);
        }

        // Each kilogram of concentrate brings its own energy and pushes out the rate's worth of forage.
        var gain = concentrateEnergy - (rate * forageEnergy);
        var concentrateDryMatter = gain > 0 ? gap / gain : double.PositiveInfinity;
        if (rate * concentrateDryMatter >= capacity && rate > 0)
        {
            // All forage is pushed out: concentrate carries the whole need.
            concentrateDryMatter = need / concentrateEnergy;
        }

        return new Diet(ForageIntake.Beside(forage, capacity, concentrateDryMatter), concentrateDryMatter);
    }

    /// <summary>The diet with a given amount of concentrate.</summary>
    /// <param name="fresh">Concentrate out of the bag, kg/day.</param>
    /// <param name="capacity">Forage she would eat with no concentrate, kg dry matter a day.</param>
    public static Diet With(double fresh, double capacity, Forage forage, Concentrate concentrate)
    {
        var dryMatter = fresh * (double)concentrate.DryMatter;
        return new Diet(ForageIntake.Beside(forage, capacity, dryMatter), dryMatter);
    }
}
