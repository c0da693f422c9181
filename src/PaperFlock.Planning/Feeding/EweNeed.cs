namespace PaperFlock.Planning.Feeding;

/// <summary>What decides one ewe's need on one day.</summary>
/// <param name="Weight">Live weight, kg.</param>
/// <param name="Litter">Lambs carried, or what the flock carries on average.</param>
/// <param name="Condition">Body condition score at tupping; null where nobody scored her.</param>
internal readonly record struct EweNeed(double Weight, double Litter, decimal? Condition)
{
    /// <summary>Metabolisable energy, MJ/day: maintenance and litter, more for a thin ewe.</summary>
    /// <param name="day">Day of pregnancy, birth on 147.</param>
    /// <param name="qm">Metabolisability of the whole diet, 0 to 1.</param>
    public double Energy(double day, Walking where, double qm) =>
        ConditionCorrection.Factor(Condition)
        * (AfrcEnergy.Maintenance(Weight, where, qm) + ConceptusGrowth.Energy(day, LitterWeight.AtBirth(Weight, Litter)));

    /// <summary>Metabolisable protein, g/day: maintenance with wool, and litter.</summary>
    /// <param name="day">Day of pregnancy, birth on 147.</param>
    public double Protein(double day) =>
        AfrcProtein.Maintenance(Weight) + ConceptusGrowth.Protein(day, LitterWeight.AtBirth(Weight, Litter));
}
