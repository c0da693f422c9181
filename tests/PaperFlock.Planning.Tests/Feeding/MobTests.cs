using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>Ewes at one trough that are not alike: a mean taken as the least or the most would starve some of them or overfeed the rest.</summary>
public sealed class MobTests
{
    private const double Day = 147 - 21;
    private static readonly LocalDate Date = FeedingSample.FirstDue;

    private static readonly EweNeed Light = new(60, 2, 3);
    private static readonly EweNeed Heavy = new(80, 2, 3);

    [Fact]
    public void A_mob_eats_and_needs_the_mean_of_its_ewes()
    {
        var mob = Of(FeedingSample.Feeds, new(Light, null), new(Heavy, null));

        // 1.5 % of 60 and of 80 kg.
        Assert.Equal((0.9 + 1.2) / 2, mob.Capacity, 1e-12);
        Assert.Equal((Light.Protein(Day) + Heavy.Protein(Day)) / 2, mob.Protein(Day), 1e-9);

        var (need, diet) = mob.Balance(Day, Date);
        var qm = AfrcEnergy.Metabolisability(diet.EnergyDensity(FeedingSample.Hay, FeedingSample.Nuts));
        Assert.Equal(
            (Light.Energy(Day, Walking.LowlandGrazing, qm) + Heavy.Energy(Day, Walking.LowlandGrazing, qm)) / 2, need, 1e-9);
    }

    /// <summary>Nuts so rich in protein that energy holds the microbes back, and so the feeding level tells.</summary>
    [Fact]
    public void The_feeding_level_of_a_mob_is_reckoned_from_its_mean_maintenance()
    {
        var nuts = FeedingSample.Nuts with { Protein = 300 };
        var mob = Of(FeedingSample.Feeds with { Concentrate = nuts }, new(Light, null), new(Heavy, null));
        var diet = RationBalance.With(0.5, 1.05, FeedingSample.Hay, nuts);
        var qm = AfrcEnergy.Metabolisability(diet.EnergyDensity(FeedingSample.Hay, nuts));
        var maintenance = (AfrcEnergy.Maintenance(60, Walking.LowlandGrazing, qm) + AfrcEnergy.Maintenance(80, Walking.LowlandGrazing, qm)) / 2;

        Assert.Equal(AfrcProtein.Supply(diet, FeedingSample.Hay, nuts, maintenance), mob.Supply(0.5, Date).Protein, 1e-9);
    }

    [Theory]
    [InlineData(Ground.Lowland, "LowlandGrazing")]
    [InlineData(Ground.Hill, "HillGrazing")]
    public void A_ewe_that_is_out_walks_on_the_ground_the_file_names(Ground ground, string where)
    {
        var (need, diet) = Of(FeedingSample.Feeds with { Ground = ground }, new MobMember(Light, null)).Balance(Day, Date);

        var qm = AfrcEnergy.Metabolisability(diet.EnergyDensity(FeedingSample.Hay, FeedingSample.Nuts));
        Assert.Equal(Light.Energy(Day, Enum.Parse<Walking>(where), qm), need, 1e-9);
    }

    [Fact]
    public void A_ewe_saves_her_walking_from_the_day_she_goes_in()
    {
        var mob = Of(FeedingSample.Feeds, new MobMember(Light, Date));

        Assert.Equal(Energy(Walking.LowlandGrazing, Date.PlusDays(-1)), mob.Balance(Day, Date.PlusDays(-1)).Need, 1e-9);
        Assert.Equal(Energy(Walking.Housed, Date), mob.Balance(Day, Date).Need, 1e-9);

        double Energy(Walking where, LocalDate date)
        {
            var diet = mob.Balance(Day, date).Diet;
            return Light.Energy(Day, where, AfrcEnergy.Metabolisability(diet.EnergyDensity(FeedingSample.Hay, FeedingSample.Nuts)));
        }
    }

    private static Mob Of(Feeds feeds, params MobMember[] members) => new(feeds, [.. members]);
}
