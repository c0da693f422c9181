using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>Worked by hand from the equations as remembered from AFRC (1993).</summary>
public sealed class ConceptusGrowthTests
{
    [Theory]
    [InlineData(12, 1.00, 0.049, 0.37, 1.80, 2.1)]
    [InlineData(8, 3.54, 0.145, 1.09, 5.00, 5.9)]
    [InlineData(7, 4.68, 0.184, 1.38, 6.27, 7.4)]
    [InlineData(6, 6.13, 0.230, 1.73, 7.77, 9.1)]
    [InlineData(5, 7.92, 0.284, 2.14, 9.52, 11.2)]
    [InlineData(4, 10.13, 0.347, 2.61, 11.56, 13.6)]
    [InlineData(3, 12.81, 0.420, 3.16, 13.89, 16.3)]
    [InlineData(2, 16.03, 0.502, 3.78, 16.55, 19.5)]
    [InlineData(1, 19.87, 0.595, 4.48, 19.53, 23.0)]
    [InlineData(0, 24.39, 0.699, 5.25, 22.86, 26.9)]
    public void A_lamb_of_4_kg_grows_by_the_table(
        int weeksBefore, double content, double retained, double energy, double proteinRetained, double protein)
    {
        var day = 147 - (7 * weeksBefore);
        Assert.Equal(content, ConceptusGrowth.EnergyContent(day), 0.0051);
        Assert.Equal(retained, ConceptusGrowth.EnergyRetained(day, 4), 0.00051);
        Assert.Equal(energy, ConceptusGrowth.Energy(day, 4), 0.0051);
        Assert.Equal(proteinRetained, ConceptusGrowth.ProteinRetained(day, 4), 0.0051);
        Assert.Equal(protein, ConceptusGrowth.Protein(day, 4), 0.051);
    }

    [Theory]
    [InlineData(70)]
    [InlineData(105)]
    [InlineData(140)]
    public void What_is_laid_down_in_a_day_is_the_slope_of_what_is_held(double day)
    {
        const double step = 1e-4;
        var energySlope = (ConceptusGrowth.EnergyContent(day + step) - ConceptusGrowth.EnergyContent(day - step)) / (2 * step);
        var proteinSlope = (ConceptusGrowth.ProteinContent(day + step) - ConceptusGrowth.ProteinContent(day - step)) / (2 * step);

        // The book rounds the slopes' coefficients to four figures.
        Assert.Equal(energySlope, ConceptusGrowth.EnergyRetained(day, 4), energySlope * 0.0002);
        Assert.Equal(proteinSlope, ConceptusGrowth.ProteinRetained(day, 4), proteinSlope * 0.0002);
    }

    [Fact]
    public void A_heavier_litter_takes_more_in_proportion() =>
        Assert.Equal(2 * ConceptusGrowth.Energy(120, 4), ConceptusGrowth.Energy(120, 8), 1e-12);
}
