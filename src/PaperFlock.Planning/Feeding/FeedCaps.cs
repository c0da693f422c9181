namespace PaperFlock.Planning.Feeding;

/// <summary>Every limit on a ration, whatever the method: nothing is printed that is not held to these.</summary>
/// <remarks>Sources: a feed of half a kilogram at most, Drummonds, "Feeding the early lambing lowland ewe", and Agriland; the rumen
/// needs 10 to 14 days to take to concentrate, Farmers Weekly, 8 December 1995; dry matter of 2 to 2.5 % of live weight in lamb and 3.5 %
/// in milk, Dugdale. That no more than 60 % of it is concentrate, and that a step is no more than 0.1 kg in three days, are
/// this program's own, on the careful side.</remarks>
internal sealed class FeedCaps(Feeds feeds)
{
    public const decimal LargestFeed = 0.5m;
    public const int MostFeeds = 4;

    /// <summary>More feeds than this are warned of.</summary>
    public const int UsualFeeds = 3;
    public const decimal ConcentrateShare = 0.6m;

    /// <summary>From here on the keeper is told.</summary>
    public const decimal NotedConcentrateShare = 0.5m;
    public const decimal DryMatterInMilk = 0.035m;
    public const decimal Step = 0.1m;

    /// <summary>Days from one step to the next, at the least.</summary>
    public const int StepDays = 3;

    /// <summary>Days from nothing to the largest ration of a chart, at the least.</summary>
    public const int IntroductionDays = 10;

    /// <summary>Rations are whole multiples of this, kg, but for a keeper's own figure: finer than a hand with a scoop can be.</summary>
    public const decimal Grain = 0.05m;

    /// <summary>kg a head at one time.</summary>
    public decimal Largest => Math.Min(LargestFeed, feeds.LargestFeed.Kilograms);

    /// <summary>The most concentrate a ewe in lamb may have, kg a day as it comes out of the bag.</summary>
    /// <param name="weight">Live weight, kg.</param>
    public decimal MostInLamb(decimal weight)
    {
        var forage = feeds.Forage;
        var capacity = weight * (forage.Intake ?? ForageIntake.Usual(forage.Kind));
        const decimal over = ConcentrateShare / (1 - ConcentrateShare);
        var dryMatter = Math.Min(
            ConcentrateShare * feeds.MostDryMatter * weight,
            over * capacity / (1 + (over * forage.SubstitutionRate)));
        return Math.Min(MostFeeds * Largest, dryMatter / feeds.Concentrate.DryMatter);
    }

    /// <summary>The most concentrate a ewe in milk may have, kg a day as it comes out of the bag.</summary>
    /// <param name="weight">Live weight, kg.</param>
    public decimal MostInMilk(decimal weight) =>
        Math.Min(MostFeeds * Largest, ConcentrateShare * DryMatterInMilk * weight / feeds.Concentrate.DryMatter);

    /// <summary>What she eats in a day in lamb, as fractions: dry matter of live weight, and concentrate of dry matter. Forage gives way.</summary>
    /// <param name="ration">Concentrate as it comes out of the bag, kg a day.</param>
    /// <param name="weight">Live weight, kg.</param>
    public (decimal DryMatter, decimal Concentrate) SharesInLamb(decimal ration, decimal weight)
    {
        var forage = feeds.Forage;
        var concentrate = ration * feeds.Concentrate.DryMatter;
        var capacity = weight * (forage.Intake ?? ForageIntake.Usual(forage.Kind));
        var eaten = Math.Max(0, Math.Min(capacity - (forage.SubstitutionRate * concentrate), (feeds.MostDryMatter * weight) - concentrate));
        var all = eaten + concentrate;
        return (all / weight, all == 0 ? 0 : concentrate / all);
    }

    /// <summary>Forage dry matter left to a ewe in milk beside so much concentrate, kg a day.</summary>
    public decimal ForageInMilk(decimal ration, decimal weight) =>
        Math.Max(0, (DryMatterInMilk * weight) - (ration * feeds.Concentrate.DryMatter));

    /// <summary>Down to a whole number of grains.</summary>
    public static decimal Down(decimal kilograms) => Math.Floor((kilograms / Grain) + 0.000001m) * Grain;

    /// <summary>To the nearest grain.</summary>
    public static decimal Nearest(decimal kilograms) => Math.Round(kilograms / Grain, MidpointRounding.AwayFromZero) * Grain;
}
