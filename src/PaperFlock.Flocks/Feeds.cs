namespace PaperFlock.Flocks;

/// <param name="PerLamb">The keeper's own rule, concentrate a day for each lamb carried; null where the file gives none.</param>
/// <param name="LargestFeed">Most concentrate a ewe gets at one time.</param>
/// <param name="OrderLeadDays">Days between ordering and having it.</param>
/// <param name="Margin">What is bought over the sum, as a fraction: 0.1 is a tenth more.</param>
/// <param name="Ground">Where the ewes walk when they are not housed; decides the energy of activity.</param>
public sealed record Feeds(
    FeedMethod Method,
    Mass? PerLamb,
    Forage Forage,
    Concentrate Concentrate,
    Mass LargestFeed,
    Buckets? Buckets,
    int OrderLeadDays,
    decimal Margin,
    Ground Ground)
{
    /// <summary>A pound of food a lamb a day: common practice, no source.</summary>
    public static Mass UsualPerLamb { get; } = Mass.FromPounds(1);

    public Mass? PerLamb { get; init; } = Require.SomeIfGiven(PerLamb);

    public Mass LargestFeed { get; init; } = Require.Some(LargestFeed);

    public int OrderLeadDays { get; init; } = Require.Within(OrderLeadDays, 0, int.MaxValue);

    public decimal Margin { get; init; } = Require.Within(Margin, 0, decimal.MaxValue);

    /// <summary>Most dry matter a day before lambing, forage and concentrate together, as a fraction of live weight.</summary>
    public decimal MostDryMatter { get; init; } = 0.025m;

    /// <summary>There are scales over the bins; without them every amount is in scoops.</summary>
    public bool Scales { get; init; } = true;

    public Parting Parted { get; init; } = Parting.ByLambs;

    /// <summary>The weekday on which every ration changes; null: the day the keeper's week starts.</summary>
    public IsoDayOfWeek? ChangeDay { get; init; }

    public LambedFeeds Lambed { get; init; } = LambedFeeds.Usual;

    /// <summary>No concentrate is fed at all: hardy ewes on forage alone.</summary>
    public bool ForageOnly { get; init; }

    public FeedSpans Spans { get; init; } = FeedSpans.None;
}

public enum FeedMethod
{
    Stepped,
    PerLamb,
    EnergyBalance,
}

/// <summary>Whether ewes of one place are parted at the trough.</summary>
public enum Parting
{
    ByLambs,
    No,
}

public enum Ground
{
    Lowland,
    Hill,
}

/// <summary>Concentrate a ewe a day by lambs at foot, from some days after lambing until she is turned out.</summary>
public sealed record LambedFeeds(Mass Single, Mass Twin, Mass Triplet)
{
    /// <summary>Kept in on moderate forage: twins 1.2 to 1.5 kg, a single 0.5 to 0.8, triplets a tenth over twins (Irish Farmers
    /// Journal 514628, 677532 and 534896); the figures within those ranges are this program's own.</summary>
    public static LambedFeeds Usual { get; } = new(new Mass(0.6m), new Mass(1.35m), new Mass(1.5m));

    /// <param name="lambs">At foot; more than three count as three, none as one.</param>
    public Mass For(int lambs) => lambs switch { <= 1 => Single, 2 => Twin, _ => Triplet };
}

/// <summary>Where in the file a figure about feeding stands; what is not given has the place of its section.</summary>
public sealed record FeedSpans(SourceSpan Feeds, SourceSpan PerLamb, SourceSpan Scoop, SourceSpan Forage, SourceSpan LargestFeed)
{
    public static FeedSpans None { get; } = new(default, default, default, default, default);
}
