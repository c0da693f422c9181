namespace PaperFlock.Flocks.Reading.Sections;

internal static class FeedsReader
{
    public static Feeds Read(Section feeds)
    {
        var forageOnly = feeds.Find("concentrate")?.Value is Yaml.Scalar { Text: var word } && word.Trim(' ').Equals("none", StringComparison.OrdinalIgnoreCase);
        var concentrate = forageOnly ? Section.Absent(FlockKeys.Concentrate, feeds.Bag) : feeds.Below("concentrate");
        var scales = feeds.Find("scales")?.AsFlag() ?? true;
        feeds.Bag.Add(scales || forageOnly || concentrate.IsGiven("scoop") ? null : FlockMessages.ScalesWithoutScoop(feeds.Find("scales")!.Span));
        feeds.Bag.AddRange((forageOnly ? feeds.FindAll("per-lamb", "lambed") : []).Select(field => FlockMessages.WithoutConcentrate(field.KeySpan, field.Name)));
        var most = feeds.Find("most-dry-matter")?.AsQuantity() ?? 0.025m;
        return Made(feeds, concentrate, most) with
        {
            MostDryMatter = most,
            Scales = scales,
            Parted = feeds.Find("parted")?.AsChoice<Parting>() ?? Parting.ByLambs,
            ChangeDay = feeds.Find("change-day")?.AsChoice<IsoDayOfWeek>(),
            Lambed = Lambed(feeds.Below("lambed")),
            ForageOnly = forageOnly,
            Spans = Spans(feeds, concentrate),
        };
    }

    private static Feeds Made(Section feeds, Section concentrate, decimal mostDryMatter) => new(
        feeds.Find("method")?.AsChoice<FeedMethod>() ?? FeedMethod.Stepped,
        feeds.Find("per-lamb")?.AsMass(),
        ForageReader.Read(feeds.Below("forage"), mostDryMatter),
        Concentrate(concentrate),
        // No more than half a kilogram in one feed: Drummonds, "Feeding the early lambing lowland ewe"; AHDB gives the same, from memory.
        feeds.Find("largest-feed")?.AsMass() ?? new Mass(0.5m),
        feeds.IsGiven("buckets") ? Buckets(feeds.Below("buckets"), feeds.Find("buckets")) : null,
        feeds.Find("order-lead-days")?.AsWhole() ?? 7,
        feeds.Find("margin")?.AsQuantity() ?? 0,
        feeds.Find("ground")?.AsChoice<Ground>() ?? Ground.Lowland);

    /// <summary>Energy and dry matter of a ewe concentrate: Hybu Cig Cymru, "Feeding ewes in late pregnancy". Protein: 18 to 20 %, Teagasc.</summary>
    private static Concentrate Concentrate(Section concentrate) => new(
        concentrate.Find("name")?.AsText() ?? "Ewe nuts",
        concentrate.Find("energy")?.AsQuantity() ?? 12.5m,
        Protein(concentrate.Find("protein")) ?? 180,
        concentrate.Find("dry-matter")?.AsQuantity() ?? 0.86m,
        concentrate.Find("bag")?.AsMass() ?? new Mass(20),
        concentrate.Find("scoop")?.AsMass());

    private static LambedFeeds Lambed(Section lambed)
    {
        var read = new LambedFeeds(
            lambed.Find("single")?.AsMass() ?? LambedFeeds.Usual.Single,
            lambed.Find("twin")?.AsMass() ?? LambedFeeds.Usual.Twin,
            lambed.Find("triplet")?.AsMass() ?? LambedFeeds.Usual.Triplet);
        Rises(lambed, "twin", read.Twin, "single", read.Single);
        Rises(lambed, "triplet", read.Triplet, "twin", read.Twin);
        return read;
    }

    /// <summary>More lambs ask for more milk, so fewer of them never get more. At the figure that is given; what the program takes by itself rises.</summary>
    private static void Rises(Section lambed, string key, Mass feed, string fewer, Mass feedOfFewer)
    {
        lambed.Bag.Add(feed.Kilograms < feedOfFewer.Kilograms && (lambed.Find(key) ?? lambed.Find(fewer)) is { } at
            ? FlockMessages.LambedFallsShort(at.Span, key, feed, fewer, feedOfFewer, isGiven: at.Name == key)
            : null);
    }

    private static FeedSpans Spans(Section feeds, Section concentrate) => new(
        feeds.Span,
        feeds.Find("per-lamb")?.Span ?? feeds.Span,
        concentrate.Find("scoop")?.Span ?? feeds.Span,
        feeds.Find("forage")?.KeySpan ?? feeds.Span,
        feeds.Find("largest-feed")?.Span ?? feeds.Span);

    /// <summary>From whole barley to soya: what lies outside is no feed for ewes, or of the bag and not of its dry matter. Common knowledge of the trade, no source.</summary>
    private static decimal? Protein(Field? field)
    {
        var protein = field?.AsQuantity();
        field?.Bag.Add(protein is < 60 or > 560 ? FlockMessages.FeedUnlikely(field, "a concentrate", "60 to 560 g/kg") : null);
        return protein;
    }

    /// <param name="at">Where they stand in the file; null where they are no section, and that is reported.</param>
    private static Buckets Buckets(Section buckets, Field? at)
    {
        var read = new Buckets(
            buckets.Find("name")?.AsText() ?? "Mineral bucket",
            buckets.Find("weight")?.AsMass() ?? new Mass(22),
            buckets.Find("ewes-per-bucket")?.AsWhole() ?? 20,
            buckets.Find("days")?.AsWhole() ?? 14);
        var each = read.Weight.Kilograms / (read.EwesPerBucket * read.Days);
        // From a mineral lick of a few grams to a block of feed of half a kilogram: common practice, no source.
        at?.Bag.Add(each is < 0.003m or > 0.5m ? FlockMessages.BucketsUnlikely(at.KeySpan, read, each) : null);
        return read;
    }
}
