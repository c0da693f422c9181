namespace PaperFlock.Planning.Feeding;

/// <summary>What the growing litter takes, by day of pregnancy: the Gompertz curves of AFRC (1993), <i>Energy and Protein
/// Requirements of Ruminants</i>, written there for a lamb of 4 kg born on day 147.</summary>
/// <remarks>All coefficients are from memory of that book. They hang together: the daily figures are the slopes of the
/// two curves, which the tests confirm.</remarks>
internal static class ConceptusGrowth
{
    /// <summary>The day of birth the curves are drawn for. Another gestation length is fitted by counting back from birth.</summary>
    public const double TermDay = 147;

    private const double CurveLambWeight = 4;
    private const double EnergyEfficiency = 0.133;
    private const double ProteinEfficiency = 0.85;

    /// <summary>Energy held in the womb of a ewe carrying a 4 kg lamb, MJ: log10 Et = 3.322 - 4.979 exp(-0.00643 t).</summary>
    /// <param name="day">Day of pregnancy, birth on 147.</param>
    public static double EnergyContent(double day) => Math.Pow(10, 3.322 - (4.979 * Math.Exp(-0.00643 * day)));

    /// <summary>Energy laid down, MJ/day: Ec = 0.25 W0 (Et x 0.07372 exp(-0.00643 t)).</summary>
    /// <param name="day">Day of pregnancy, birth on 147.</param>
    /// <param name="litterWeight">W0: weight of the whole litter at birth, kg.</param>
    public static double EnergyRetained(double day, double litterWeight) =>
        litterWeight / CurveLambWeight * EnergyContent(day) * 0.07372 * Math.Exp(-0.00643 * day);

    /// <summary>Metabolisable energy the litter takes, MJ/day: Ec / 0.133.</summary>
    /// <param name="day">Day of pregnancy, birth on 147.</param>
    /// <param name="litterWeight">Weight of the whole litter at birth, kg.</param>
    public static double Energy(double day, double litterWeight) => EnergyRetained(day, litterWeight) / EnergyEfficiency;

    /// <summary>Protein held in the womb of a ewe carrying a 4 kg lamb, g: log10 TPt = 4.928 - 4.873 exp(-0.00601 t).</summary>
    /// <param name="day">Day of pregnancy, birth on 147.</param>
    public static double ProteinContent(double day) => Math.Pow(10, 4.928 - (4.873 * Math.Exp(-0.00601 * day)));

    /// <summary>Net protein laid down, g/day: NPc = 0.25 W0 (TPt x 0.06744 exp(-0.00601 t)).</summary>
    /// <param name="day">Day of pregnancy, birth on 147.</param>
    /// <param name="litterWeight">Weight of the whole litter at birth, kg.</param>
    public static double ProteinRetained(double day, double litterWeight) =>
        litterWeight / CurveLambWeight * ProteinContent(day) * 0.06744 * Math.Exp(-0.00601 * day);

    /// <summary>Metabolisable protein the litter takes, g/day: NPc / 0.85.</summary>
    /// <param name="day">Day of pregnancy, birth on 147.</param>
    /// <param name="litterWeight">Weight of the whole litter at birth, kg.</param>
    public static double Protein(double day, double litterWeight) => ProteinRetained(day, litterWeight) / ProteinEfficiency;
}
