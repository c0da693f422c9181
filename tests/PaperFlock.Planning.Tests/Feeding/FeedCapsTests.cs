using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>Limits of a ration worked out by hand: hay at 1.5 % of live weight, nuts with 0.86 of dry matter.</summary>
public sealed class FeedCapsTests
{
    /// <summary>70 kg: 1.05 kg of hay. Half a kilogram of nuts is 0.43 kg: 1.48 kg in all. One and a half are 1.29 kg, and 2.5 % of her weight leaves 0.46 kg beside them.</summary>
    [Theory]
    [InlineData(0, 0, null, 1.05, 0)]
    [InlineData(0.5, 0, null, 1.48, 0.43)]
    [InlineData(0.5, 0.5, null, 1.265, 0.43)]
    [InlineData(0.5, 0, 0.01, 1.13, 0.43)]
    [InlineData(1.5, 0, null, 1.75, 1.29)]
    [InlineData(2.5, 0, null, 2.15, 2.15)]
    public void What_she_eats_is_shared_between_forage_and_concentrate(double ration, double substitution, double? intake, double all, double concentrate)
    {
        var feeds = FeedingSample.Feeds with { Forage = FeedingSample.Hay with { SubstitutionRate = (decimal)substitution, Intake = (decimal?)intake } };
        var (dryMatter, share) = new FeedCaps(feeds).SharesInLamb((decimal)ration, 70);
        Assert.Equal(all / 70, (double)dryMatter, 1e-9);
        Assert.Equal(concentrate / all, (double)share, 1e-9);
    }

    /// <summary>Six tenths of 3.5 % of her weight, and never over four feeds of half a kilogram.</summary>
    [Theory]
    [InlineData(60, 1.4651)]
    [InlineData(100, 2)]
    public void In_milk_she_may_have_so_much(int weight, double most) => Assert.Equal(most, (double)new FeedCaps(FeedingSample.Feeds).MostInMilk(weight), 1e-4);

    /// <summary>3.5 % of 70 kg is 2.45 kg of dry matter; a kilogram of nuts leaves 1.59 kg of forage, three leave none.</summary>
    [Theory]
    [InlineData(0, 2.45)]
    [InlineData(1, 1.59)]
    [InlineData(3, 0)]
    public void In_milk_forage_gives_way(int ration, double forage) => Assert.Equal((decimal)forage, new FeedCaps(FeedingSample.Feeds).ForageInMilk(ration, 70));

    [Theory]
    [InlineData(0.45, 0.45)]
    [InlineData(0.449, 0.40)]
    [InlineData(0.44999999, 0.45)]
    public void Rations_are_whole_grains(double kilograms, double down) => Assert.Equal((decimal)down, FeedCaps.Down((decimal)kilograms));

    /// <summary>A ewe with no weight of her own is planned for by her own breed's.</summary>
    [Fact]
    public void A_ewe_without_a_weight_has_her_breeds()
    {
        var flock = FeedingSample.Flock() with { Breeds = [new Breed("Vale", null, new Mass(80)), new Breed("Hill", null, new Mass(55))] };
        var ewe = FeedingSample.Ewe(1, weight: null).Ewe;
        Assert.Equal((55m, false), (EweWeights.Of(flock, ewe with { Breed = "Hill" }), EweWeights.IsAssumed(flock, ewe with { Breed = "Hill" })));
        Assert.Equal((70m, true), (EweWeights.Of(flock, ewe), EweWeights.IsAssumed(flock, ewe)));
        Assert.Equal((62m, false), (EweWeights.Of(flock, ewe with { Weight = new Mass(62) }), EweWeights.IsAssumed(flock, ewe with { Weight = new Mass(62) })));
    }
}
