using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Reading.Sections;

internal static class FeedsReader
{
    public static Feeds Read(Section feeds)
    {
        var forageOnly = feeds.Find("concentrate")?.Value is Yaml.Scalar { Text: var word } && word.Trim(' ').Equals("none", StringComparison.OrdinalIgnoreCase);
        var concentrate = forageOnly ? Section.Absent(FlockKeys.Concentrate, feeds.Bag) : feeds.Below("concentrate");
        var scales = feeds.Find("scales")?.AsFlag() ?? true;
        if (!scales && !forageOnly && !concentrate.IsGiven("scoop"))
        {
            feeds.Bag.Add(FlockMessages.ScalesWithoutScoop(feeds.Find("scales")!.Span));
        }

        return Made(feeds, concentrate) with
        {
            MostDryMatter = feeds.Find("most-dry-matter")?.AsQuantity() ?? 0.025m,
            Scales = scales,
            Parted = feeds.Find("parted")?.AsChoice<Parting>() ?? Parting.ByLambs,
            ChangeDay = feeds.Find("change-day")?.AsChoice<IsoDayOfWeek>(),
            Lambed = Lambed(feeds.Below("lambed")),
            ForageOnly = forageOnly,
            Spans = Spans(feeds, concentrate),
        };
    }

    private static Feeds Made(Section feeds, Section concentrate) => new(
        feeds.Find("method")?.AsChoice<FeedMethod>() ?? FeedMethod.Stepped,
        feeds.Find("per-lamb")?.AsMass(),
        ForageReader.Read(feeds.Below("forage")),
        Concentrate(concentrate),
        // No more than half a kilogram in one feed: Drummonds, "Feeding the early lambing lowland ewe"; AHDB gives the same, from memory.
        feeds.Find("largest-feed")?.AsMass() ?? new Mass(0.5m),
        feeds.IsGiven("buckets") ? Buckets(feeds.Below("buckets")) : null,
        feeds.Find("order-lead-days")?.AsWhole() ?? 7,
        feeds.Find("margin")?.AsQuantity() ?? 0,
        feeds.Find("ground")?.AsChoice<Ground>() ?? Ground.Lowland);

    /// <summary>Energy and dry matter of a ewe concentrate: Hybu Cig Cymru, "Feeding ewes in late pregnancy". Protein: 18 to 20 %, Teagasc.</summary>
    private static Concentrate Concentrate(Section concentrate) => new(
        concentrate.Find("name")?.AsText() ?? "Ewe nuts",
        concentrate.Find("energy")?.AsQuantity() ?? 12.5m,
        concentrate.Find("protein")?.AsQuantity() ?? 180,
        concentrate.Find("dry-matter")?.AsQuantity() ?? 0.86m,
        concentrate.Find("bag")?.AsMass() ?? new Mass(20),
        concentrate.Find("scoop")?.AsMass());

    private static LambedFeeds Lambed(Section lambed) => new(
        lambed.Find("single")?.AsMass() ?? LambedFeeds.Usual.Single,
        lambed.Find("twin")?.AsMass() ?? LambedFeeds.Usual.Twin,
        lambed.Find("triplet")?.AsMass() ?? LambedFeeds.Usual.Triplet);

    private static FeedSpans Spans(Section feeds, Section concentrate) => new(
        feeds.Span,
        feeds.Find("per-lamb")?.Span ?? feeds.Span,
        concentrate.Find("scoop")?.Span ?? feeds.Span,
        feeds.Find("forage")?.KeySpan ?? feeds.Span,
        feeds.Find("largest-feed")?.Span ?? feeds.Span);

    private static Buckets Buckets(Section buckets) => new(
        buckets.Find("name")?.AsText() ?? "Mineral bucket",
        buckets.Find("weight")?.AsMass() ?? new Mass(22),
        buckets.Find("ewes-per-bucket")?.AsWhole() ?? 20,
        buckets.Find("days")?.AsWhole() ?? 14);
}
