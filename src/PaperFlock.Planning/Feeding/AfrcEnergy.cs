namespace PaperFlock.Planning.Feeding;

/// <summary>Maintenance energy of a ewe by the factorial equations of AFRC (1993), <i>Energy and Protein Requirements of
/// Ruminants</i>, CAB International, Wallingford.</summary>
/// <remarks>Coefficients are from memory of that book unless a line says otherwise. The safety margin of 5 % that the book
/// adds to its printed allowances is left out: the published worked rations this program is checked against feed the plain
/// need, and the keeper sees what is fed beside what is needed.</remarks>
internal static class AfrcEnergy
{
    /// <summary>Gross energy of feed, MJ/kg dry matter. From memory of AFRC (1993): a single figure for all diets.</summary>
    public const double GrossEnergy = 18.8;

    /// <summary>Fasting metabolism, MJ/day: 0.23 (W/1.08)^0.75 for a ewe over a year old. From memory of AFRC (1993).</summary>
    /// <param name="weight">Live weight, kg.</param>
    public static double Fasting(double weight) => 0.23 * Math.Pow(weight / 1.08, 0.75);

    /// <summary>Energy of moving about, MJ/day. From memory of AFRC (1993).</summary>
    /// <param name="weight">Live weight, kg.</param>
    public static double Activity(double weight, Walking where) => weight * where switch
    {
        Walking.Housed => 0.0054,
        Walking.LowlandGrazing => 0.0107,
        Walking.HillGrazing => 0.024,
        _ => throw new ArgumentOutOfRangeException(nameof(where)),
    };

    /// <summary>qm: the share of a diet's gross energy that can be metabolised, 0 to 1.</summary>
    /// <param name="energyDensity">Metabolisable energy of the whole diet, MJ/kg dry matter.</param>
    public static double Metabolisability(double energyDensity) => energyDensity / GrossEnergy;

    /// <summary>km: how much of the energy eaten keeps her going, 0.35 qm + 0.503. Both coefficients are corroborated,
    /// second-hand, by a public model of grazing animals (jbusque/puerto, FuncModAnimal.R).</summary>
    /// <param name="qm">Metabolisability of the whole diet, 0 to 1.</param>
    public static double MaintenanceEfficiency(double qm) => (0.35 * qm) + 0.503;

    /// <summary>Metabolisable energy for maintenance, MJ/day: (fasting + activity) / km.</summary>
    /// <param name="weight">Live weight, kg.</param>
    /// <param name="qm">Metabolisability of the whole diet, 0 to 1.</param>
    public static double Maintenance(double weight, Walking where, double qm) =>
        (Fasting(weight) + Activity(weight, where)) / MaintenanceEfficiency(qm);
}

/// <summary>Where she walks, and so how much energy walking takes.</summary>
internal enum Walking
{
    Housed,
    LowlandGrazing,
    HillGrazing,
}
