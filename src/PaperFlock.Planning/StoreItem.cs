namespace PaperFlock.Planning;

/// <summary>Something to have in, how much, and by when to order it.</summary>
/// <param name="Name">As the flock file calls it; null for what has only the name of its kind.</param>
/// <param name="Kg">The plain sum of the plan, without margin; null for what is counted and not weighed.</param>
/// <param name="Packs">Bags, bales or buckets, margin included, rounded up; null for what is not sold in packs.</param>
/// <param name="Pack">Null when there are no packs.</param>
/// <param name="NeededFrom">The first day it is used.</param>
/// <param name="NeededTo">The last day it is used, included.</param>
/// <param name="OrderBy">The last day to order: the lead time before, moved back past closed days; null when nothing is ordered (water).</param>
/// <param name="Weeks">How much of it each week takes.</param>
/// <param name="Rate">What it was reckoned from: for forage a fraction of live weight as dry matter, for bedding kg a ewe a week,
/// for water the most litres in a day; 0 otherwise.</param>
public sealed record StoreItem(
    StoreKind Kind,
    string? Name,
    decimal? Kg,
    int? Packs,
    StorePack? Pack,
    decimal? PackKg,
    LocalDate NeededFrom,
    LocalDate NeededTo,
    LocalDate? OrderBy,
    ImmutableArray<StoreWeek> Weeks,
    decimal Rate);

public enum StoreKind
{
    Concentrate,
    Forage,
    Buckets,
    Bedding,
    Water,
}

public enum StorePack
{
    Bag,
    Bale,
    Bucket,
}

/// <param name="Amount">Kilograms, or litres for water, or a count for what is not weighed.</param>
public sealed record StoreWeek(LocalDate WeekBeginning, decimal Amount);
