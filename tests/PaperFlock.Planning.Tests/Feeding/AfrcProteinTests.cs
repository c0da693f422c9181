using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

public sealed class AfrcProteinTests
{
    /// <summary>From the equation 2.1875 W^0.75 + 20.4, remembered from AFRC (1993): 0.35 g endogenous nitrogen x 6.25, and 5.3 g of
    /// wool protein at 0.26.</summary>
    [Theory]
    [InlineData(40, 55.2)]
    [InlineData(50, 61.5)]
    [InlineData(60, 67.6)]
    [InlineData(70, 73.3)]
    [InlineData(80, 78.9)]
    [InlineData(90, 84.3)]
    public void Maintenance_follows_the_table(double weight, double grams) =>
        Assert.Equal(grams, AfrcProtein.Maintenance(weight), 0.051);

    [Theory]
    [InlineData(0.5, 9)]
    [InlineData(1, 9)]
    [InlineData(1.5, 9.5)]
    [InlineData(2, 10)]
    [InlineData(3, 11)]
    [InlineData(4, 11)]
    public void Microbes_make_more_at_a_higher_feeding_level(double level, double grams) =>
        Assert.Equal(grams, AfrcProtein.MicrobialYield(level), 1e-12);

    /// <summary>By hand: 1 kg hay of 90 g protein and 8.8 MJ. Degraded 61.2 g; the microbes' energy would do for 9.1 x 8.272 = 75 g; so
    /// protein holds them back. Undegraded 28.8 - 4.5 bound = 24.3 g. 0.6375 x 61.2 + 0.9 x 24.3 = 60.9 g.</summary>
    [Fact]
    public void Hay_alone_is_held_back_by_its_protein() =>
        Assert.Equal(60.885, AfrcProtein.Supply(new Diet(1, 0), FeedingSample.Hay, FeedingSample.Nuts, 8), 1e-6);

    /// <summary>By hand: 1 kg of nuts of 300 g protein and 12.5 MJ at maintenance 12.5 MJ. Energy holds the microbes to 9 x 11.25 = 101.25 g; 216 g
    /// would be degraded. Undegraded 84 - 15 bound = 69 g. 0.6375 x 101.25 + 0.9 x 69 = 126.6 g.</summary>
    [Fact]
    public void Rich_nuts_are_held_back_by_energy() =>
        Assert.Equal(
            126.646875, AfrcProtein.Supply(new Diet(0, 1), FeedingSample.Hay, FeedingSample.Nuts with { Protein = 300 }, 12.5), 1e-6);

    /// <summary>By hand: 1 kg of silage of 160 g protein and 10.8 MJ at maintenance 10.8 MJ. Energy holds the microbes to 9 x 8.424 = 75.816 g; 124.8 g
    /// would be degraded. Undegraded 35.2 - 8 bound = 27.2 g. 0.6375 x 75.816 + 0.9 x 27.2 = 72.8 g.</summary>
    [Fact]
    public void Good_silage_is_held_back_by_energy()
    {
        var silage = FeedingSample.Hay with { Kind = ForageKind.Silage, Protein = 160, Energy = 10.8m };
        Assert.Equal(72.8127, AfrcProtein.Supply(new Diet(1, 0), silage, FeedingSample.Nuts, 10.8), 1e-6);
    }

    /// <summary>The trade's advice is more protein where forage is straw: 16 to 18 % in the concentrate with hay or silage and 20 % with straw (Darlington and
    /// Stockton Times, a feed firm's author). Agriland, reporting Teagasc, and the Irish Farmers Journal say 18 to 20 %. So straw with
    /// barley of 11 % must look short; hay with nuts of 18 %, which is inside both, must not.</summary>
    [Theory]
    [InlineData(ForageKind.Hay, 90, 180, false)]
    [InlineData(ForageKind.Straw, 40, 110, true)]
    public void Straw_and_barley_look_short_where_hay_and_ewe_nuts_do_not(
        ForageKind kind, int forageProtein, int concentrateProtein, bool isShort)
    {
        var forage = FeedingSample.Hay with { Kind = kind, Protein = forageProtein };
        var concentrate = FeedingSample.Nuts with { Protein = concentrateProtein };
        var ewe = new EweNeed(70, 2, null);
        const double day = 147 - 7;
        var diet = RationBalance.Meeting(
            ewe.Energy(day, Walking.Housed, 0.55), ForageIntake.Capacity(forage, 70), forage, concentrate);
        var supply = AfrcProtein.Supply(diet, forage, concentrate, AfrcEnergy.Maintenance(70, Walking.Housed, 0.55));
        Assert.Equal(isShort, supply < ewe.Protein(day));
    }
}
