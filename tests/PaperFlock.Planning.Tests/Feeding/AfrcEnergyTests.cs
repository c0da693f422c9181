using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>Worked by hand from the equations as remembered from AFRC (1993), <i>Energy and Protein Requirements of
/// Ruminants</i>: they catch a slip in typing the equations, and cannot vouch for the coefficients.</summary>
public sealed class AfrcEnergyTests
{
    [Theory]
    [InlineData(40, 3.45, 5.41, 5.28, 5.15, 5.02)]
    [InlineData(50, 4.08, 6.42, 6.26, 6.10, 5.96)]
    [InlineData(60, 4.68, 7.38, 7.20, 7.02, 6.85)]
    [InlineData(70, 5.25, 8.31, 8.10, 7.90, 7.71)]
    [InlineData(80, 5.81, 9.20, 8.97, 8.75, 8.54)]
    [InlineData(90, 6.34, 10.07, 9.82, 9.58, 9.35)]
    public void Maintenance_of_a_housed_ewe_follows_the_table(
        double weight, double fasting, double at50, double at55, double at60, double at65)
    {
        Assert.Equal(fasting, AfrcEnergy.Fasting(weight), 0.005);
        Assert.Equal(at50, AfrcEnergy.Maintenance(weight, Walking.Housed, 0.50), 0.0051);
        Assert.Equal(at55, AfrcEnergy.Maintenance(weight, Walking.Housed, 0.55), 0.0051);
        Assert.Equal(at60, AfrcEnergy.Maintenance(weight, Walking.Housed, 0.60), 0.0051);
        Assert.Equal(at65, AfrcEnergy.Maintenance(weight, Walking.Housed, 0.65), 0.0051);
    }

    [Theory]
    [InlineData("Housed", 0.378)]
    [InlineData("LowlandGrazing", 0.749)]
    [InlineData("HillGrazing", 1.68)]
    public void Walking_costs_more_the_rougher_the_ground(string where, double activity) =>
        Assert.Equal(activity, AfrcEnergy.Activity(70, Enum.Parse<Walking>(where)), 1e-9);

    [Fact]
    public void A_70_kg_ewe_three_weeks_from_twins_of_9_kg_needs_15_MJ()
    {
        const double litterWeight = 9;
        const double day = 147 - 21;

        Assert.Equal(5.254, AfrcEnergy.Fasting(70), 0.0005);
        Assert.Equal(0.713, AfrcEnergy.MaintenanceEfficiency(0.60), 1e-9);
        Assert.Equal(12.807, ConceptusGrowth.EnergyContent(day), 0.0005);
        Assert.Equal(0.945, ConceptusGrowth.EnergyRetained(day, litterWeight), 0.0005);

        var total = AfrcEnergy.Maintenance(70, Walking.Housed, 0.60) + ConceptusGrowth.Energy(day, litterWeight);
        Assert.Equal("15.0", Figures.Three(total));
        Assert.Equal("15.8", Figures.Three(total * 1.05)); // the margin the book adds to its allowances
    }

    [Fact]
    public void Metabolisability_is_the_share_of_gross_energy() => Assert.Equal(0.5, AfrcEnergy.Metabolisability(9.4), 1e-12);
}
