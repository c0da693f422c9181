namespace PaperFlock.Packs.Figures;

// One record for each object in the JSON, its properties in the order they are written. Dates are `YYYY-MM-DD`, times of day
// `HH:MM` in the holding's time zone, masses kilograms. Null means there is none, and is written.

internal sealed record PlanFigures(
    string Holding,
    string AsOf,
    string TimeZone,
    SeasonFigures Season,
    ImmutableArray<GroupFigures> Groups,
    ImmutableArray<JobFigures> Jobs,
    ImmutableArray<GatheringFigures> Gatherings,
    ImmutableArray<EweFigures> Ewes,
    ImmutableArray<StayFigures> Whereabouts,
    ImmutableArray<TroughFigures> Troughs,
    ImmutableArray<FeedingFigures> Feeding,
    ImmutableArray<StoreFigures> Stores,
    ImmutableArray<LambingFigures> Lambing,
    LambingSummaryFigures LambingSummary,
    HousingFigures Housing,
    ImmutableArray<RoundFigures> Rounds);

internal sealed record SeasonFigures(string TupIn, string TupOut, string? FirstDue, string? LastDue);

/// <param name="Housed">The day they come in; null when they lamb outdoors.</param>
internal sealed record GroupFigures(string Name, string? Tup, string TupIn, string TupOut, string? FirstDue, string? LastDue, string? Housed);

/// <param name="Group">Empty for the one group of a file without groups, null for a job of the whole flock.</param>
/// <param name="Date">Null when there is no day for it: see <paramref name="Trouble"/>.</param>
/// <param name="Ewes">Tags of those it is for; empty for a job of a whole group.</param>
/// <param name="Handled">Ewes must be gathered for it.</param>
/// <param name="Fixed">Stands on its day whatever the keeper's week.</param>
internal sealed record JobFigures(
    string Id,
    string Title,
    string? Group,
    ImmutableArray<string> Ewes,
    string Earliest,
    string Best,
    string? Date,
    string Latest,
    bool Handled,
    bool Fixed,
    int? Minutes,
    string Why,
    string Source,
    TroubleFigures? Trouble);

internal sealed record TroubleFigures(string Words, string? Nearest);

/// <param name="Jobs">Ids of the jobs done that day.</param>
internal sealed record GatheringFigures(string Date, ImmutableArray<string> Jobs);

/// <param name="Evidence"><c>lambed</c>, <c>mating</c>, <c>mark</c>, <c>scan</c> or <c>tup-stay</c>, strongest first; null when she has no due date.</param>
/// <param name="Standing"><c>to-lamb</c>, <c>empty</c>, <c>left-out</c> or <c>lambed</c>.</param>
/// <param name="Verdict"><c>to-the-tup</c>, <c>treat-first</c>, <c>leave-out</c> or <c>cull</c>.</param>
internal sealed record EweFigures(
    string Tag,
    string? Name,
    string Group,
    string Standing,
    int Litter,
    bool Scanned,
    string? Evidence,
    string? EvidenceWords,
    DueFigures? Due,
    string Verdict,
    string Advice,
    string? Chart,
    string? Pen);

/// <param name="Earliest">5 % point.</param>
/// <param name="Likely">50 % point.</param>
/// <param name="Latest">95 % point.</param>
/// <param name="FirstPossible">Gestation after the first day the evidence allows.</param>
/// <param name="LastPossible">Gestation after the last day it allows.</param>
internal sealed record DueFigures(string Earliest, string Likely, string Latest, string FirstPossible, string LastPossible);

/// <summary>Both ends are days of it.</summary>
/// <param name="Kind"><c>field</c>, <c>pen</c>, <c>lambing-pen</c>, <c>with-lambs</c> or <c>gone</c>.</param>
/// <param name="State"><c>with-tup</c>, <c>in-lamb</c>, <c>lambed</c>, <c>not-in-lamb</c>, <c>left-out</c> or <c>gone</c>.</param>
internal sealed record StayFigures(string Tag, string From, string To, string Place, string Kind, string State);

/// <summary>Ewes that eat together; both ends are days of it.</summary>
internal sealed record TroughFigures(string Name, string Place, string Chart, string From, string To, ImmutableArray<string> Tags);

/// <summary>One step of a chart.</summary>
/// <param name="State"><c>in-lamb</c>, <c>lambed</c> or <c>not-in-lamb</c>.</param>
/// <param name="Litter">Lambs carried, on average; lambs at foot where she has lambed.</param>
/// <param name="From">Null where days are counted from lambing.</param>
/// <param name="To">Included.</param>
/// <param name="DayFrom">Days since she lambed, the day itself being 0; null before lambing.</param>
/// <param name="DayTo">Included; null in the last step, which goes on to turnout.</param>
/// <param name="KgPerEwePerDay">Null where she goes on with what she had before.</param>
/// <param name="KgPerFeedByHeads">For one head, two, and so on, all together.</param>
/// <param name="DryMatterShareOfWeight">For the lightest of them, as a fraction.</param>
/// <param name="PerLambKg">A ewe a day, by so much a lamb.</param>
/// <param name="EnergyBalanceKg">A ewe a day, by the energy sum.</param>
internal sealed record FeedingFigures(
    string Chart,
    string Class,
    string State,
    decimal Litter,
    string? From,
    string? To,
    int? DayFrom,
    int? DayTo,
    ImmutableArray<string> Tags,
    decimal? KgPerEwePerDay,
    ImmutableArray<string> FedAt,
    ImmutableArray<decimal> KgPerFeedByHeads,
    decimal? EnergyNeedMJ,
    decimal? EnergySupplyMJ,
    decimal? ProteinNeedG,
    decimal? ProteinSupplyG,
    decimal? DryMatterShareOfWeight,
    decimal? ConcentrateShareOfDryMatter,
    decimal? PerLambKg,
    decimal? EnergyBalanceKg);

/// <param name="Bags">Packs of whatever kind, margin included; null for what is not sold in packs.</param>
/// <param name="Pack">What a pack is called.</param>
/// <param name="OrderBy">Null when nothing is ordered.</param>
internal sealed record StoreFigures(
    string Item,
    decimal? Kg,
    int? Bags,
    string Pack,
    decimal? PackKg,
    string? OrderBy,
    string NeededFrom,
    string NeededTo,
    ImmutableArray<StoreWeekFigures> Weeks,
    string Basis);

internal sealed record StoreWeekFigures(string WeekBeginning, decimal Amount);

/// <param name="ChanceOverPens">Chance that more pens are wanted than there are; null when the flock file names no number.</param>
internal sealed record LambingFigures(string Date, double ExpectedEwes, int P10, int P90, int PensNeededP90, double? ChanceOverPens);

/// <param name="ChanceTooFewPens">On the worst night.</param>
internal sealed record LambingSummaryFigures(
    ImmutableArray<string> BusiestNights, double? ChanceTooFewPens, double? ChanceTooFewPensOnSomeNight, string Words);

internal sealed record HousingFigures(ImmutableArray<PenFigures> Pens, int EwesWithoutRoom, string Words, string Source);

/// <param name="Ewes">Tags.</param>
internal sealed record PenFigures(
    string Pen,
    ImmutableArray<string> Ewes,
    decimal FloorNeededM2,
    decimal FloorThereM2,
    decimal TroughNeededM,
    decimal? TroughThereM,
    int Capacity,
    int CapacityWithLambs);

/// <param name="Dawn">Start of civil twilight; null where there is none that day.</param>
/// <param name="Sunrise">Null on a day the sun does not rise, or does not set.</param>
/// <param name="Names">What each of <paramref name="Times"/> is called.</param>
internal sealed record RoundFigures(
    string Date,
    string? Dawn,
    string? Sunrise,
    string? Sunset,
    string? Dusk,
    ImmutableArray<string> Times,
    ImmutableArray<string> Names);
