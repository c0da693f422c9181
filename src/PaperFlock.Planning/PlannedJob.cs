using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning;

/// <summary>A job, its window and the day it was given.</summary>
/// <param name="Id">Stable: <c>scan</c>, <c>house</c>, … and <c>own</c> for the keeper's.</param>
/// <param name="Title">Short words for the planner, such as "Raddle to orange".</param>
/// <param name="Group">Null when the job is the whole flock's.</param>
/// <param name="Earliest">First day it is any use, included.</param>
/// <param name="Best">The day the trade would choose with nothing in the way.</param>
/// <param name="Latest">Last day it is any use, included.</param>
/// <param name="Date">Null when no day in the window can be had: see <paramref name="Trouble"/>.</param>
/// <param name="Handled">Ewes must be gathered for it.</param>
/// <param name="Fixed">Stands on its day whatever the keeper's week.</param>
/// <param name="Minutes">Time to allow, for all the ewes; null when nobody says.</param>
/// <param name="Why">Why it is on that day, in a sentence a stranger understands.</param>
/// <param name="Source">Where the window comes from: a publication, or "common practice".</param>
public sealed record PlannedJob(
    string Id,
    string Title,
    TuppingGroup? Group,
    LocalDate Earliest,
    LocalDate Best,
    LocalDate Latest,
    LocalDate? Date,
    bool Handled,
    bool Fixed,
    int? Minutes,
    string Why,
    string Source,
    JobTrouble? Trouble)
{
    /// <summary>Where it goes on paper: its day, else the day it should have been.</summary>
    public LocalDate ShownOn => Date ?? Best;

    /// <summary>What its window is counted from; null for a job that the flock file puts on a day.</summary>
    public JobBasis? Basis { get; init; }

    /// <summary>Why it is not on its best day, or what is odd about the day it is on; null when there is nothing to say.</summary>
    public string? Moved { get; init; }
}

/// <summary>The day a job's window hangs on, and how that day is known.</summary>
/// <param name="Words">Such as "the day the tup goes in" or "housing".</param>
/// <param name="Evidence">How the day is known, in a sentence without its full stop.</param>
public sealed record JobBasis(LocalDate Day, string Words, string Evidence);

/// <param name="Words">What is wrong, in a sentence.</param>
/// <param name="NearestDay">The nearest day outside the window that would do; null when there is none within a year.</param>
public sealed record JobTrouble(string Words, LocalDate? NearestDay);

/// <summary>A day on which ewes are handled, and all that is done that day.</summary>
public sealed record Gathering(LocalDate Date, ImmutableArray<PlannedJob> Jobs);

/// <summary>The ids a job can have; other programs rely on them.</summary>
public static class JobIds
{
    public const string TeethToesTeats = "teeth-toes-teats";
    public const string TupCheck = "tup-check";
    public const string Shear = "shear";
    public const string TupIn = "tup-in";
    public const string RaddleChange = "raddle-change";
    public const string TupOut = "tup-out";
    public const string Scan = "scan";
    public const string Sort = "sort";
    public const string FeedFrom = "feed-from";
    public const string BucketsOut = "buckets-out";
    public const string Booster = "booster";
    public const string TwoFeeds = "two-feeds";
    public const string HeavyRounds = "heavy-rounds";
    public const string ShedReady = "shed-ready";
    public const string House = "house";
    public const string Dag = "dag";
    public const string FirstDue = "first-due";
    public const string LastDue = "last-due";
    public const string Own = "own";
}
