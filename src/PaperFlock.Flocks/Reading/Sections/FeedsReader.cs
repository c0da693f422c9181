using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Reading.Sections;

internal static class FeedsReader
{
    public static Feeds Read(Section feeds) => new(
        feeds.Find("method")?.AsChoice(("per-lamb", FeedMethod.PerLamb), ("energy-balance", FeedMethod.EnergyBalance)) ?? FeedMethod.PerLamb,
        // A pound of food a lamb a day: common practice, no source.
        feeds.Find("per-lamb")?.AsMass(0.05m, 2) ?? Mass.FromPounds(1),
        ForageReader.Read(feeds.Below("forage", FlockKeys.Forage)),
        Concentrate(feeds.Below("concentrate", FlockKeys.Concentrate)),
        // No more than half a kilogram in one feed: Drummonds, "Feeding the early lambing lowland ewe"; AHDB gives the same, from memory.
        feeds.Find("largest-feed")?.AsMass(0.05m, 2) ?? new Mass(0.5m),
        feeds.IsGiven("buckets") ? Buckets(feeds.Below("buckets", FlockKeys.Buckets)) : null,
        feeds.Find("order-lead-days")?.AsWhole(0, 60) ?? 7,
        feeds.Find("margin")?.AsFraction(0, 1) ?? 0,
        feeds.Find("ground")?.AsChoice(("lowland", Ground.Lowland), ("hill", Ground.Hill)) ?? Ground.Lowland);

    /// <summary>Energy and dry matter of a ewe concentrate: Hybu Cig Cymru, "Feeding ewes in late pregnancy". Protein: 18 to 20 %, Teagasc.</summary>
    private static Concentrate Concentrate(Section concentrate) => new(
        concentrate.Find("name")?.AsText() ?? "Ewe nuts",
        concentrate.Find("energy")?.AsEnergy(5, 16) ?? 12.5m,
        concentrate.Find("protein")?.AsContent(20, 600) ?? 180,
        concentrate.Find("dry-matter")?.AsFraction(0.20m, 1) ?? 0.86m,
        concentrate.Find("bag")?.AsMass(1, 1500) ?? new Mass(20),
        concentrate.Find("scoop")?.AsMass(0.05m, 10));

    private static Buckets Buckets(Section buckets) => new(
        buckets.Find("name")?.AsText() ?? "Mineral bucket",
        buckets.Find("weight")?.AsMass(0.5m, 250) ?? new Mass(22),
        buckets.Find("ewes-per-bucket")?.AsWhole(1, 200) ?? 20,
        buckets.Find("days")?.AsWhole(1, 120) ?? 14);
}
