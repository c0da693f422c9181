using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Stores;

/// <summary>How much of something is used on each day, to be added up by the keeper's weeks.</summary>
internal sealed class DailyUse(IsoDayOfWeek weekStarts)
{
    private readonly SortedDictionary<LocalDate, decimal> _amounts = [];

    public bool IsEmpty => _amounts.Count == 0;

    public decimal Total => _amounts.Values.Sum();

    /// <summary>The most used on one day.</summary>
    /// <exception cref="InvalidOperationException">Nothing is used.</exception>
    public decimal MostInADay => _amounts.Values.Max();

    /// <exception cref="InvalidOperationException">Nothing is used.</exception>
    public LocalDate First => _amounts.Keys.First();

    /// <exception cref="InvalidOperationException">Nothing is used.</exception>
    public LocalDate Last => _amounts.Keys.Last();

    /// <param name="amount">Nothing is kept for an amount of zero, so that use begins on the first day there is any.</param>
    public void Add(LocalDate day, decimal amount)
    {
        if (amount > 0)
        {
            _amounts[day] = _amounts.GetValueOrDefault(day) + amount;
        }
    }

    /// <param name="from">Included.</param>
    /// <param name="to">Included.</param>
    public void AddEachDay(LocalDate from, LocalDate to, decimal amount)
    {
        for (var day = from; day <= to; day = day.PlusDays(1))
        {
            Add(day, amount);
        }
    }

    /// <summary>Sums by week, every week from the first to the last with use in it, weeks of nothing between included.</summary>
    /// <exception cref="InvalidOperationException">Nothing is used.</exception>
    public ImmutableArray<StoreWeek> Weeks()
    {
        var sums = _amounts.GroupBy(d => WeekOf(d.Key)).ToDictionary(g => g.Key, g => g.Sum(d => d.Value));
        var weeks = ImmutableArray.CreateBuilder<StoreWeek>();
        // The last key is found by walking past all others.
        var last = WeekOf(Last);
        for (var week = WeekOf(First); week <= last; week = week.PlusWeeks(1))
        {
            weeks.Add(new StoreWeek(week, sums.GetValueOrDefault(week)));
        }

        return weeks.ToImmutable();
    }

    private LocalDate WeekOf(LocalDate day) => KeeperWeek.FirstDay(day, weekStarts);
}
