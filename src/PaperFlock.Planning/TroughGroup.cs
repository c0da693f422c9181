using System.Collections.Immutable;
using NodaTime;

namespace PaperFlock.Planning;

/// <summary>Ewes fed together: one litter size, due within a cycle of each other, split where pens say so.</summary>
/// <param name="Name">Such as "Twins", or "Twins, early" and "Twins, late" where they are split.</param>
/// <param name="Number">1-based, in feeding order; gives the chart its page code.</param>
/// <param name="Litter">Lambs each ewe is fed for.</param>
/// <param name="Scanned">False for ewes nobody has scanned, fed as singles.</param>
/// <param name="Pen">The pen they are housed in; null when not housed or no pens are given.</param>
/// <param name="Ewes">In the order of the flock file.</param>
/// <param name="FirstDue">The earliest first-possible date of its ewes; weeks count back from it.</param>
/// <param name="LastDue">The latest last-possible date of its ewes.</param>
/// <param name="Weeks">In date order, from the feed week to the week that holds <paramref name="LastDue"/>.</param>
/// <param name="Difference">The difference between the two methods in words, empty when under a quarter.</param>
public sealed record TroughGroup(
    string Name,
    int Number,
    int Litter,
    bool Scanned,
    string? Pen,
    ImmutableArray<EwePlan> Ewes,
    LocalDate FirstDue,
    LocalDate LastDue,
    ImmutableArray<FeedWeek> Weeks,
    string Difference)
{
    /// <summary>In which weeks the ration looks short of protein; empty when it does in none.</summary>
    public string Protein { get; init; } = "";

    /// <summary>What had to be taken for granted, such as the weight of ewes nobody has weighed; empty when nothing.</summary>
    public string Assumed { get; init; } = "";
}

/// <summary>One week's feeding of one trough group.</summary>
/// <param name="WeekBeginning">First of its seven days.</param>
/// <param name="WeeksBefore">Weeks from the first day to the group's first due date: 6 for the sixth week before; 0 and less once lambs may come.</param>
/// <param name="KgPerEwePerDay">By the method the keeper chose: what is on the chart.</param>
/// <param name="PerLambKg">By so much a lamb, for comparison.</param>
/// <param name="EnergyBalanceKg">By energy balance, for comparison.</param>
/// <param name="FeedsPerDay">At least 1.</param>
/// <param name="ScoopsPerFeed">Level scoops to the fraction a hand can judge; null when there is no scoop or it is too coarse, and the feed is weighed.</param>
/// <param name="Need">What one ewe of the group needs in that week.</param>
/// <param name="Supply">What forage and the chosen concentrate give her.</param>
/// <param name="FromHousing">She is indoors that week.</param>
public sealed record FeedWeek(
    LocalDate WeekBeginning,
    int WeeksBefore,
    int Ewes,
    decimal KgPerEwePerDay,
    decimal PerLambKg,
    decimal EnergyBalanceKg,
    int FeedsPerDay,
    decimal? ScoopsPerFeed,
    Nutrients Need,
    Nutrients Supply,
    bool FromHousing)
{
    public decimal KgPerFeedForGroup => KgPerEwePerDay * Ewes / FeedsPerDay;

    public decimal KgPerDayForGroup => KgPerEwePerDay * Ewes;
}

/// <param name="Energy">Metabolisable energy, MJ a day.</param>
/// <param name="Protein">Metabolisable protein, grams a day.</param>
public readonly record struct Nutrients(decimal Energy, decimal Protein);
