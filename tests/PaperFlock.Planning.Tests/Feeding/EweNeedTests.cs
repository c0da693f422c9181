using CsCheck;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

public sealed class EweNeedTests
{
    private static readonly Gen<Walking> AnyWhere = Gen.Enum<Walking>();

    /// <summary>Total energy worked by hand at qm 0.60, housed. There the litters were rounded to half a kilogram; here they are 7.5, 12.5 and 15 %
    /// of the ewe unrounded, so a row differs by up to a quarter kilogram of lamb: 0.25/4 of what a 4 kg lamb takes.</summary>
    [Theory]
    [InlineData(50, 1, 7.2, 9.3, 10.6)]
    [InlineData(50, 2, 7.7, 10.8, 12.8)]
    [InlineData(50, 3, 8.2, 12.0, 14.5)]
    [InlineData(60, 1, 8.2, 10.6, 12.1)]
    [InlineData(60, 2, 9.1, 12.9, 15.4)]
    [InlineData(60, 3, 9.5, 14.1, 17.1)]
    [InlineData(70, 1, 9.3, 11.8, 13.5)]
    [InlineData(70, 2, 10.4, 15.0, 18.0)]
    [InlineData(70, 3, 10.8, 16.2, 19.6)]
    [InlineData(80, 1, 10.4, 13.5, 15.5)]
    [InlineData(80, 2, 11.5, 16.6, 19.9)]
    [InlineData(80, 3, 12.0, 18.2, 22.2)]
    [InlineData(90, 1, 11.5, 15.1, 17.4)]
    [InlineData(90, 2, 12.6, 18.3, 21.9)]
    [InlineData(90, 3, 13.3, 20.2, 24.7)]
    public void Need_follows_the_worked_table(double weight, int litter, double week8, double week3, double week1)
    {
        var ewe = new EweNeed(weight, litter, 3);
        foreach (var (weeks, printed) in new[] { (8, week8), (3, week3), (1, week1) })
        {
            var day = 147 - (7 * weeks);
            var tolerance = (0.2501 / 4 * ConceptusGrowth.Energy(day, 4)) + 0.051;
            Assert.Equal(printed, ewe.Energy(day, Walking.Housed, Feeding.Need.TableMetabolisability), tolerance);
        }
    }

    /// <summary>MPm + MPc by hand, for a litter of 9 kg: 110 g three weeks out and 125 g one week out.</summary>
    [Theory]
    [InlineData(3, 110)]
    [InlineData(1, 125)]
    public void Protein_of_a_70_kg_ewe_with_twins_of_9_kg_follows_the_worked_figures(int weeks, double grams) =>
        Assert.Equal(grams, AfrcProtein.Maintenance(70) + ConceptusGrowth.Protein(147 - (7 * weeks), 9), 0.51);

    [Fact]
    public void More_lambs_never_mean_less_need() =>
        Gen.Select(Gen.Double[35, 120], Gen.Int[0, 4], Gen.Double[60, 147], AnyWhere).Sample((weight, litter, day, where) =>
            new EweNeed(weight, litter + 1, null) is var more && new EweNeed(weight, litter, null) is var fewer
            && more.Energy(day, where, 0.55) > fewer.Energy(day, where, 0.55)
            && more.Protein(day) > fewer.Protein(day));

    [Fact]
    public void A_heavier_ewe_never_needs_less() =>
        Gen.Select(Gen.Double[35, 120], Gen.Double[0, 40], Gen.Int[0, 5], Gen.Double[60, 147], AnyWhere)
            .Sample((weight, more, litter, day, where) =>
                new EweNeed(weight + more, litter, null).Energy(day, where, 0.55)
                >= new EweNeed(weight, litter, null).Energy(day, where, 0.55));

    [Theory]
    [InlineData(null, 1.0)]
    [InlineData(4.0, 1.0)] // a fat ewe is not cut
    [InlineData(3.0, 1.0)]
    [InlineData(2.5, 1.0)]
    [InlineData(2.0, 1.05)]
    [InlineData(1.5, 1.10)]
    [InlineData(1.0, 1.15)]
    public void A_thin_ewe_is_given_more(double? score, double factor) =>
        Assert.Equal(factor, ConditionCorrection.Factor((decimal?)score), 1e-9);
}
