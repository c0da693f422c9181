namespace PaperFlock.Planning.Stores;

/// <summary>Turns a use into an order: packs with the keeper's margin, and the last day to order.</summary>
/// <param name="closed">Days nothing can be ordered or fetched on.</param>
/// <param name="margin">Fraction bought over the sum: 0.1 is a tenth more.</param>
internal sealed class OrderRule(int leadDays, decimal margin, IReadOnlySet<LocalDate> closed)
{
    // Feeds are sums of sevenths and pounds; a trillionth over a full bag must not buy another.
    private const decimal Rounding = 0.000001m;

    /// <returns>Null when none is used.</returns>
    /// <param name="pack">What one pack holds; null for what comes loose.</param>
    public StoreItem? Weighed(StoreKind kind, string? name, DailyUse use, StorePack? sold, Mass? pack, decimal rate) => use.IsEmpty
        ? null
        : new StoreItem(
            kind, name, use.Total, pack is { } p ? Packs(use.Total / p.Kilograms) : null, sold, pack?.Kilograms, use.First, use.Last, OrderBy(use), use.Weeks(), rate);

    /// <param name="neededTo">The last day the last of them is still in use.</param>
    /// <returns>Null when none is used.</returns>
    public StoreItem? Counted(StoreKind kind, string? name, DailyUse use, LocalDate neededTo, StorePack sold, Mass pack) => use.IsEmpty
        ? null
        : new StoreItem(
            kind, name, null, Packs(use.Total), sold, pack.Kilograms, use.First, neededTo, OrderBy(use), use.Weeks(), 0);

    private int Packs(decimal plain) => (int)Math.Ceiling((plain * (1 + margin)) - Rounding);

    /// <summary>The lead time before it is needed, and earlier still past days marked closed.</summary>
    private LocalDate OrderBy(DailyUse use)
    {
        var day = use.First.PlusDays(-leadDays);
        while (closed.Contains(day))
        {
            day = day.PlusDays(-1);
        }

        return day;
    }
}
