namespace PaperFlock.Planning;

/// <summary>The ration of ewes fed alike, wherever they stand.</summary>
/// <param name="Number">Of the due week of the first of its ewes, counted from the first week anybody can lamb in: it does not move when others
/// lamb, die or are scanned again.</param>
/// <param name="Lambs">What one ewe carries, on average.</param>
/// <param name="Ewes">Everyone fed by it, in the order of the flock file; those that have lambed since stay in.</param>
/// <param name="Joined">Those of another class who would have been parted alone.</param>
/// <param name="FirstDue">The earliest likely day of its ewes.</param>
/// <param name="LastDue">The latest.</param>
/// <param name="CountedFrom">The day the weeks are counted back from.</param>
/// <param name="MostHeads">The most that ever stand at one trough.</param>
/// <param name="Rows">In date order, without a gap; the last goes on to the end of the plan.</param>
public sealed record FeedChart(
    FeedKind Kind,
    int Number,
    decimal Lambs,
    ImmutableArray<EwePlan> Ewes,
    ImmutableArray<EwePlan> Joined,
    LocalDate FirstDue,
    LocalDate LastDue,
    LocalDate CountedFrom,
    int MostHeads,
    ImmutableArray<FeedRow> Rows)
{
    /// <summary>Stable for the season: <c>FEED-TWINS-1</c>.</summary>
    public string Code { get; } = FeedCodes.Of(Kind, Number);

    public LocalDate Start => Rows[0].From;

    /// <summary>Nothing is weighed out for them.</summary>
    public bool IsForageOnly => Rows.All(r => r.KgPerEwePerDay == 0);

    /// <summary>Its rows, those with the same feed as one.</summary>
    public ImmutableArray<FeedRow> Steps
    {
        get
        {
            var steps = new List<FeedRow>();
            foreach (var row in Rows)
            {
                if (steps.Count > 0 && steps[^1].KgPerEwePerDay == row.KgPerEwePerDay && steps[^1].FedAt.Length == row.FedAt.Length)
                {
                    steps[^1] = steps[^1] with { To = row.To };
                }
                else
                {
                    steps.Add(row);
                }
            }

            return [.. steps];
        }
    }

    /// <returns>Null before it starts and after the plan.</returns>
    public FeedRow? On(LocalDate day) => Rows.FirstOrDefault(r => r.From <= day && day <= r.To);
}

/// <summary>One step of a chart; both ends are days of it.</summary>
/// <param name="FedAt">The rounds at which they are fed; empty where they get forage alone.</param>
/// <param name="KgPerFeedByHeads">Concentrate for so many, all together, at one feed, rounded to what can be measured; the first is for one head.</param>
/// <param name="Need">What one ewe needs in the middle of that week.</param>
/// <param name="Supply">What forage at its usual share and this ration give her: an upper figure.</param>
/// <param name="DryMatterShare">Of live weight a day, for the lightest.</param>
/// <param name="ConcentrateShare">Of all dry matter, for the lightest.</param>
/// <param name="PerLambKg">By so much a lamb, held to nothing.</param>
/// <param name="EnergyBalanceKg">By the energy sum, held to nothing.</param>
/// <param name="IsStep">Less than her ration, while she is brought on to it.</param>
public sealed record FeedRow(
    LocalDate From,
    LocalDate To,
    decimal KgPerEwePerDay,
    ImmutableArray<FeedTime> FedAt,
    ImmutableArray<decimal> KgPerFeedByHeads,
    Nutrients Need,
    Nutrients Supply,
    decimal DryMatterShare,
    decimal ConcentrateShare,
    decimal PerLambKg,
    decimal EnergyBalanceKg,
    bool IsStep);

/// <param name="Energy">Metabolisable energy, MJ a day.</param>
/// <param name="Protein">Metabolisable protein, grams a day.</param>
public readonly record struct Nutrients(decimal Energy, decimal Protein);

/// <summary>Whose ration a chart is.</summary>
public enum FeedKind
{
    Singles,
    Twins,

    /// <summary>Three or more.</summary>
    Triplets,
    NotScanned,

    /// <summary>Ewes of several kinds that must share a trough.</summary>
    Mixed,
}

/// <summary>A round at which ewes are fed, in the order of the day.</summary>
public enum FeedTime
{
    FirstLight,
    Midday,
    Dusk,
    Late,
}
