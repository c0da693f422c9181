namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>
/// Another energy system for pregnant ewes: the equations of New Zealand's agricultural greenhouse gas inventory (Ministry for Primary Industries), as
/// they stand in a public farm emissions model, numbered there 3.1 to 3.38. The ministry's own report was not read.
/// </summary>
/// <remarks>
/// Maintenance is CSIRO's form and independent of AFRC's. The litter's curve has the figures of AFRC's, so that it shows ours to be copied rightly, and
/// not that it is right. The inventory's own litter weight, 9 % of a ewe's weight for each lamb and no less for twins, is for a national flock and
/// too heavy for one ewe: it is not used here.
/// </remarks>
internal static class NewZealandInventory
{
    private const double GrossEnergy = 18.45;

    /// <summary>km, 3.22, by metabolisability, 3.1.</summary>
    /// <param name="energyDensity">MJ/kg dry matter of the diet.</param>
    public static double MaintenanceEfficiency(double energyDensity) => (0.35 * (energyDensity / GrossEnergy)) + 0.503;

    /// <summary>3.23 and 3.24 for a housed ewe that makes neither milk nor wool nor gain, MJ a day.</summary>
    /// <param name="age">Years.</param>
    /// <param name="energyDensity">MJ/kg dry matter of the diet.</param>
    public static double Maintenance(double weight, double age, double energyDensity) =>
        0.28 * Math.Pow(weight, 0.75) * Math.Exp(-0.03 * age) / MaintenanceEfficiency(energyDensity);

    /// <summary>Et, 3.25 to 3.32, MJ.</summary>
    /// <param name="day">Of pregnancy.</param>
    public static double ConceptusContent(double day) => Math.Pow(10, 3.322 - (4.979 * Math.Exp(-0.00643 * day)));

    /// <summary>MEc for a litter of one weight, MJ a day.</summary>
    /// <param name="day">Of pregnancy.</param>
    public static double Conceptus(double day, double litterWeight) =>
        0.25 * litterWeight * (0.07372 * ConceptusContent(day) * Math.Exp(-0.00643 * day)) / 0.133;
}
