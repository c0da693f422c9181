using System.Collections.Immutable;

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
/// <param name="Handled">Ewes must be gathered for it.</param>
/// <param name="Fixed">Stands on its day whatever the keeper's week.</param>
internal sealed record JobFigures(
    string Id,
    string Title,
    string? Group,
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
    string? TroughGroup,
    string? Pen);

/// <param name="Earliest">5 % point.</param>
/// <param name="Likely">50 % point.</param>
/// <param name="Latest">95 % point.</param>
/// <param name="FirstPossible">Gestation after the first day the evidence allows.</param>
/// <param name="LastPossible">Gestation after the last day it allows.</param>
internal sealed record DueFigures(string Earliest, string Likely, string Latest, string FirstPossible, string LastPossible);

/// <param name="Housed">She is indoors that week.</param>
/// <param name="ScoopsPerFeed">Level scoops for the whole group; null when the feed is weighed.</param>
/// <param name="PerLambKg">A ewe a day, by so much a lamb.</param>
/// <param name="EnergyBalanceKg">A ewe a day, by energy balance.</param>
/// <param name="Difference">Between the two methods, in words; empty when small.</param>
/// <param name="Protein">In which weeks protein looks short, in words; empty when in none.</param>
/// <param name="Assumed">What had to be taken for granted; empty when nothing.</param>
internal sealed record FeedingFigures(
    string Group,
    string WeekBeginning,
    int WeeksBefore,
    int Ewes,
    int Litter,
    bool Scanned,
    string? Pen,
    bool Housed,
    decimal KgPerEwePerDay,
    int FeedsPerDay,
    decimal KgPerFeedForGroup,
    decimal? ScoopsPerFeed,
    decimal PerLambKg,
    decimal EnergyBalanceKg,
    decimal EnergyNeedMJ,
    decimal EnergySupplyMJ,
    decimal ProteinNeedG,
    decimal ProteinSupplyG,
    string Difference,
    string Protein,
    string Assumed);

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

internal sealed record LambingSummaryFigures(ImmutableArray<string> BusiestNights, double? ChanceTooFewPens, string Words);

internal sealed record HousingFigures(ImmutableArray<PenFigures> Pens, int EwesWithoutRoom, string Words, string Source);

/// <param name="Ewes">Tags.</param>
internal sealed record PenFigures(
    string Pen,
    ImmutableArray<string> Ewes,
    decimal FloorNeededM2,
    decimal FloorThereM2,
    decimal TroughNeededM,
    decimal? TroughThereM,
    int Capacity);

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
