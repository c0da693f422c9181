namespace PaperFlock.Planning.Pens;

/// <summary>Fits ewes into pens one pen at a time, each with the ewes that leave least of it empty: the minimum bin slack
/// heuristic (Gupta and Ho, 1999, <i>Production Planning and Control</i> 10; the name and source from memory). For many
/// ewes and a nearly full shed, where trying every way would take for ever.</summary>
internal sealed class FullPens(ImmutableArray<RoomNeeded> rooms, int[] waiting)
{
    private const int MostStepsAPen = 3_000;

    private readonly List<int> _chosen = [];
    private List<int> _best = [];
    private decimal _bestSlack = decimal.MaxValue;
    private int _steps;

    /// <returns>A pen for each ewe, by index; null when this way does not fit them.</returns>
    public static ImmutableArray<int>? Of(ImmutableArray<RoomNeeded> ewes, ImmutableArray<PenRoom> pens)
    {
        int[] waiting = [.. Enumerable.Range(0, ewes.Length).OrderByDescending(i => ewes[i].Floor)];
        var penOf = new int[ewes.Length];
        foreach (var pen in Enumerable.Range(0, pens.Length).OrderBy(p => pens[p].Floor))
        {
            var filling = new FullPens(ewes, waiting);
            filling.Fill(0, pens[pen]);
            foreach (var ewe in filling._best)
            {
                penOf[ewe] = pen;
            }

            waiting = [.. waiting.Except(filling._best)];
        }

        return waiting.Length == 0 ? [.. penOf] : null;
    }

    private void Fill(int from, PenRoom left)
    {
        // What is left is reckoned by whichever of floor and trough is scarcer, each in lots of a common ewe.
        var slack = left.Trough is { } trough ? Math.Min(left.Floor / 1.3m, trough / 0.5m) : left.Floor / 1.3m;
        if (slack < _bestSlack)
        {
            _bestSlack = slack;
            _best = [.. _chosen];
        }

        for (var i = from; i < waiting.Length && _bestSlack > 0 && _steps <= MostStepsAPen; i++)
        {
            // An ewe of a size just tried and given up leads nowhere new.
            var need = rooms[waiting[i]];
            if (!left.Holds(need) || (i > from && need == rooms[waiting[i - 1]]))
            {
                continue;
            }

            _steps++;
            _chosen.Add(waiting[i]);
            Fill(i + 1, left.Less(need));
            _chosen.RemoveAt(_chosen.Count - 1);
        }
    }
}
