using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;

namespace PaperFlock.Planning;

/// <summary>Everything worked out from one flock file and one as-of date. Arrays of dated things are in date order.</summary>
/// <param name="From">First day the paper covers: the Monday (or the keeper's week start) of the earliest job.</param>
/// <param name="To">Last day the paper covers, included: a month after the last due date, or after the last job if that is later.</param>
/// <param name="Ewes">In the order of the flock file.</param>
/// <param name="Warnings">What the plan noticed about the file, with the place in it.</param>
public sealed record SeasonPlan(
    Flock Flock,
    LocalDate AsOf,
    SeasonDates Dates,
    LocalDate From,
    LocalDate To,
    ImmutableArray<GroupPlan> Groups,
    ImmutableArray<EwePlan> Ewes,
    ImmutableArray<PlannedJob> Jobs,
    ImmutableArray<Gathering> Gatherings,
    Whereabouts Whereabouts,
    FeedingPlan Feeding,
    ImmutableArray<StoreItem> Stores,
    LambingCurve Lambing,
    HousingPlan Housing,
    ImmutableArray<RoundDay> Rounds,
    ImmutableArray<Diagnostic> Warnings);

/// <param name="TupIn">Earliest of the groups'.</param>
/// <param name="TupOut">Latest of the groups'.</param>
/// <param name="FirstDue">Earliest of the groups'; null when no ewe can be in lamb.</param>
/// <param name="LastDue">Latest of the groups'; null when no ewe can be in lamb.</param>
public sealed record SeasonDates(LocalDate TupIn, LocalDate TupOut, LocalDate? FirstDue, LocalDate? LastDue);

/// <param name="FirstDue">Null when no ewe of the group can be in lamb.</param>
/// <param name="Housed">The day the housing job stands on, or should have where it has no day, since they are housed all the same; null when the group is not housed.</param>
public sealed record GroupPlan(TuppingGroup Group, LocalDate? FirstDue, LocalDate? LastDue, LocalDate? Housed)
{
    /// <summary>How <see cref="FirstDue"/> is known, in a sentence without its full stop; empty when there is none.</summary>
    public string FirstDueWhy { get; init; } = "";

    /// <summary>The same of <see cref="LastDue"/>.</summary>
    public string LastDueWhy { get; init; } = "";
}
