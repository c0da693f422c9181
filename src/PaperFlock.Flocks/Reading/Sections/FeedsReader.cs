using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Reading.Sections;

internal static class FeedsReader
{
    public static Feeds Read(Section feeds) => new(
        feeds.Find("method")?.AsChoice<FeedMethod>() ?? FeedMethod.PerLamb,
        // A pound of food a lamb a day: common practice, no source.
        feeds.Find("per-lamb")?.AsMass() ?? Mass.FromPounds(1),
        ForageReader.Read(feeds.Below("forage")),
        Concentrate(feeds.Below("concentrate")),
        // No more than half a kilogram in one feed: Drummonds, "Feeding the early lambing lowland ewe"; AHDB gives the same, from memory.
        feeds.Find("largest-feed")?.AsMass() ?? new Mass(0.5m),
        feeds.IsGiven("buckets") ? Buckets(feeds.Below("buckets")) : null,
        feeds.Find("order-lead-days")?.AsWhole() ?? 7,
        feeds.Find("margin")?.AsFraction() ?? 0,
        feeds.Find("ground")?.AsChoice<Ground>() ?? Ground.Lowland);

    /// <summary>Energy and dry matter of a ewe concentrate: Hybu Cig Cymru, "Feeding ewes in late pregnancy". Protein: 18 to 20 %, Teagasc.</summary>
    private static Concentrate Concentrate(Section concentrate) => new(
        concentrate.Find("name")?.AsText() ?? "Ewe nuts",
        concentrate.Find("energy")?.AsEnergy() ?? 12.5m,
        concentrate.Find("protein")?.AsContent() ?? 180,
        concentrate.Find("dry-matter")?.AsFraction() ?? 0.86m,
        concentrate.Find("bag")?.AsMass() ?? new Mass(20),
        concentrate.Find("scoop")?.AsMass());

    private static Buckets Buckets(Section buckets) => new(
        buckets.Find("name")?.AsText() ?? "Mineral bucket",
        buckets.Find("weight")?.AsMass() ?? new Mass(22),
        buckets.Find("ewes-per-bucket")?.AsWhole() ?? 20,
        buckets.Find("days")?.AsWhole() ?? 14);
}
