namespace PaperFlock.Planning.Jobs;

/// <summary>
/// Meets every window with the fewest allowed days, exactly: of the smallest sets of days that do, the one
/// whose days lie nearest the jobs' best days, and of those the earliest days. Days are plain numbers.
/// </summary>
/// <remarks>
/// Once the days are chosen each job goes to the nearest in its window. A job whose best day lies between two
/// neighbouring chosen days can only go to one of those two, so the cost of a whole choice is a sum over neighbouring
/// pairs, and the best choice a shortest path through the allowed days. Days on which ewes are gathered anyway cost
/// nothing, so every path passes through them.
/// </remarks>
internal sealed class FewestDays
{
    /// <summary>With how many jobs have that window.</summary>
    private readonly (JobWindow Window, int Jobs)[] _windows;

    private readonly int[] _days;
    private readonly bool[] _gathered;

    private FewestDays(IEnumerable<JobWindow> jobs, IEnumerable<int> allowed, IReadOnlySet<int> gathered)
    {
        _windows = [.. jobs.GroupBy(j => j).Select(g => (g.Key, g.Count()))];
        _days = [.. allowed.Where(d => _windows.Any(j => j.Window.Holds(d)))];
        _gathered = [.. _days.Select(gathered.Contains)];
    }

    /// <returns>The day of each job, in the order given.</returns>
    /// <param name="jobs">Each with at least one allowed day in its window.</param>
    /// <param name="allowed">Ascending.</param>
    /// <param name="gathered">Days on which ewes are gathered whatever is chosen.</param>
    public static ImmutableArray<int> Choose(ImmutableArray<JobWindow> jobs, ImmutableArray<int> allowed, IReadOnlySet<int> gathered)
    {
        var chosen = new FewestDays(jobs, allowed, gathered).Shortest();
        return [.. jobs.Select(j => Nearest(chosen, j))];
    }

    private static int Nearest(List<int> chosen, JobWindow job) => chosen
        .Where(job.Holds)
        .MinBy(d => Math.Abs(d - job.Best));

    /// <summary>Runs from the last day to the first, so that of equal paths the one with the earlier next day is kept.</summary>
    private List<int> Shortest()
    {
        var end = _days.Length;
        var best = new Cost[end + 1];
        var next = new int[end + 1];
        for (var from = end - 1; from >= 0; from--)
        {
            (best[from], next[from]) = BestNext(from, best);
        }

        return Walk(BestNext(-1, best).To, next);
    }

    private (Cost Cost, int To) BestNext(int from, Cost[] best)
    {
        // Distances take time to add up, so only the days that keep the gatherings fewest are asked for theirs.
        var within = Within(from);
        var fewest = within.Min(to => New(to) + best[to].Gatherings);
        return within
            .Where(to => New(to) + best[to].Gatherings == fewest)
            .Select(to => (Cost: new Cost(fewest, best[to].Distance + DistanceBetween(from, to)), To: to))
            .MinBy(step => step.Cost.Distance);
    }

    private int New(int day) => day < _days.Length && !_gathered[day] ? 1 : 0;

    /// <summary>What may be chosen next: no day past one that is gathered anyway, and the end once every window is met.</summary>
    private List<int> Within(int from)
    {
        var reach = Reach(from);
        var within = new List<int>();
        for (var to = from + 1; to < _days.Length && _days[to] <= reach; to++)
        {
            within.Add(to);
            if (_gathered[to])
            {
                return within;
            }
        }

        if (reach == int.MaxValue)
        {
            within.Add(_days.Length);
        }

        return within;
    }

    /// <summary>The last day the next chosen one may be: no window that opens after this one may be stepped over whole.</summary>
    private int Reach(int from)
    {
        var after = from < 0 ? int.MinValue : _days[from];
        return _windows.Where(j => j.Window.Earliest > after).Select(j => j.Window.Latest).DefaultIfEmpty(int.MaxValue).Min();
    }

    /// <summary>Days from their best for the jobs whose best lies between two neighbouring chosen days, the second excluded.</summary>
    private long DistanceBetween(int from, int to)
    {
        int? before = from < 0 ? null : _days[from], after = to < _days.Length ? _days[to] : null;
        return _windows.Where(j => !(j.Window.Best < before) && !(j.Window.Best >= after)).Sum(j => (long)j.Jobs * Math.Min(
            before >= j.Window.Earliest ? j.Window.Best - before.Value : int.MaxValue,
            after <= j.Window.Latest ? after.Value - j.Window.Best : int.MaxValue));
    }

    private List<int> Walk(int first, int[] next)
    {
        var chosen = new List<int>();
        for (var at = first; at < _days.Length; at = next[at])
        {
            chosen.Add(_days[at]);
        }

        return chosen;
    }

    /// <param name="Gatherings">New ones, from a day to the end.</param>
    /// <param name="Distance">Days from their best, summed over the jobs.</param>
    private readonly record struct Cost(int Gatherings, long Distance);
}
