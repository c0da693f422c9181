namespace PaperFlock.Planning.Stores;

internal static class OrderDay
{
    /// <summary>The last day to order: the lead time before it is needed, and earlier still past days marked closed.</summary>
    /// <param name="closed">Days nothing can be ordered or fetched on.</param>
    public static LocalDate For(LocalDate neededFrom, int leadDays, IReadOnlySet<LocalDate> closed)
    {
        var day = neededFrom.PlusDays(-leadDays);
        while (closed.Contains(day))
        {
            day = day.PlusDays(-1);
        }

        return day;
    }
}
