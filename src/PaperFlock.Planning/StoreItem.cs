using System.Collections.Immutable;
using NodaTime;

namespace PaperFlock.Planning;

/// <summary>Something to have in, how much, and by when to order it.</summary>
/// <param name="Item">Such as "Ewe nuts".</param>
/// <param name="Kg">The plain sum of the plan, without margin; null for what is counted and not weighed.</param>
/// <param name="Packs">Bags, bales or buckets, margin included, rounded up; null for what is not sold in packs.</param>
/// <param name="PackName"><see cref="Bag"/>, <see cref="Bale"/> or <see cref="Bucket"/>, whatever the language; empty when there are no packs.</param>
/// <param name="NeededFrom">The first day it is used.</param>
/// <param name="NeededTo">The last day it is used, included.</param>
/// <param name="OrderBy">The last day to order: the lead time before, moved back past closed days; null when nothing is ordered (water).</param>
/// <param name="Weeks">How much of it each week takes.</param>
/// <param name="Basis">How the amount was worked out, with its source.</param>
public sealed record StoreItem(
    string Item,
    decimal? Kg,
    int? Packs,
    string PackName,
    decimal? PackKg,
    LocalDate NeededFrom,
    LocalDate NeededTo,
    LocalDate? OrderBy,
    ImmutableArray<StoreWeek> Weeks,
    string Basis)
{
    public const string Bag = "bag";
    public const string Bale = "bale";
    public const string Bucket = "bucket";
}

/// <param name="Amount">Kilograms, or litres for water, or a count for what is not weighed.</param>
public sealed record StoreWeek(LocalDate WeekBeginning, decimal Amount);
