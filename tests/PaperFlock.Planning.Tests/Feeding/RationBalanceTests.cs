using CsCheck;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

public sealed class RationBalanceTests
{
    private static readonly Gen<Forage> AnyForage =
        from energy in Gen.Double[5, 12]
        from rate in Gen.Double[0, 1.2]
        select FeedingSample.Hay with { Energy = (decimal)energy, SubstitutionRate = (decimal)rate };

    [Fact]
    public void The_diet_meets_the_need_and_is_never_negative() =>
        Gen.Select(AnyForage, Gen.Double[4, 40], Gen.Double[0, 2]).Sample((forage, need, capacity) =>
        {
            var diet = RationBalance.Meeting(need, capacity, forage, FeedingSample.Nuts);
            var energy = diet.Energy(forage, FeedingSample.Nuts);
            return diet.ForageDryMatter >= 0 && diet.ConcentrateDryMatter >= 0
                && (diet.ConcentrateDryMatter == 0 ? energy >= need - 1e-9 : Math.Abs(energy - need) < 1e-9);
        });

    [Fact]
    public void Feeding_what_the_balance_asks_gives_the_same_diet_back() =>
        Gen.Select(AnyForage, Gen.Double[4, 40], Gen.Double[0, 2]).Sample((forage, need, capacity) =>
        {
            var diet = RationBalance.Meeting(need, capacity, forage, FeedingSample.Nuts);
            var again = RationBalance.With(diet.FreshConcentrate(FeedingSample.Nuts), capacity, forage, FeedingSample.Nuts);
            return Math.Abs(again.ForageDryMatter - diet.ForageDryMatter) < 1e-9;
        });

    [Fact]
    public void Forage_that_is_enough_wants_no_concentrate()
    {
        var diet = RationBalance.Meeting(9, 1.2, FeedingSample.Hay, FeedingSample.Nuts);
        Assert.Equal(new Diet(1.2, 0), diet);
    }

    /// <summary>Substitution of 0.63 on hay: abstract, "The effect of concentrate level on the intake of hays by ewes in late
    /// pregnancy". Gap 16 - 1.05 x 8.8 = 6.76 MJ; each kilogram of nuts brings 12.5 - 0.63 x 8.8 = 6.956 MJ.</summary>
    [Fact]
    public void Nuts_that_push_out_hay_have_to_make_that_up_too()
    {
        var hay = FeedingSample.Hay with { SubstitutionRate = 0.63m };
        var diet = RationBalance.Meeting(16, 1.05, hay, FeedingSample.Nuts);
        Assert.Equal(6.76 / 6.956, diet.ConcentrateDryMatter, 1e-9);
        Assert.Equal(1.05 - (0.63 * 6.76 / 6.956), diet.ForageDryMatter, 1e-9);
    }

    [Fact]
    public void Concentrate_carries_the_whole_need_once_no_forage_is_left()
    {
        var hay = FeedingSample.Hay with { SubstitutionRate = 1.5m };
        var diet = RationBalance.Meeting(16, 1.05, hay, FeedingSample.Nuts);
        Assert.Equal(0, diet.ForageDryMatter);
        Assert.Equal(16 / 12.5, diet.ConcentrateDryMatter, 1e-9);
    }

    [Fact]
    public void Where_nothing_is_eaten_the_diet_is_as_rich_as_its_forage() =>
        Assert.Equal(8.8, new Diet(0, 0).EnergyDensity(FeedingSample.Hay, FeedingSample.Nuts));

    [Theory]
    [InlineData(ForageKind.Hay, 0.015)] // Hybu Cig Cymru, "Feeding ewes in late pregnancy"
    [InlineData(ForageKind.Silage, 0.014)] // Vet Times 2017 Panel 1, after Vipond et al. 2009
    public void A_usual_intake_is_the_published_one(ForageKind kind, double share) =>
        Assert.Equal((decimal)share, ForageIntake.Usual(kind));

    [Fact]
    public void The_keepers_own_intake_comes_before_the_usual_one() =>
        Assert.Equal(1.4, ForageIntake.Capacity(FeedingSample.Hay with { Intake = 0.02m }, 70), 1e-12);
}
