namespace PaperFlock.Planning.Pens;

/// <summary>Fills a tight shed pen by pen without stirring the classes together: each pen takes the next ewes in order, then
/// exchanges some for heavier ones of the same class still waiting, so that its last corner is not wasted. Only when those
/// left waiting would want more than the other pens have are ewes of another class exchanged too.</summary>
internal sealed class SortedPens(ImmutableArray<RoomNeeded> rooms, ImmutableArray<int> classOf)
{
    /// <param name="ewes">Class by class, in the order they are to be placed.</param>
    /// <param name="classOf">The class of each ewe, by index.</param>
    /// <param name="pens">Empty pens, filled in this order.</param>
    /// <returns>A pen for each ewe, by index; null when this way does not fit them.</returns>
    public static ImmutableArray<int>? Of(
        ImmutableArray<RoomNeeded> ewes, ImmutableArray<int> classOf, ImmutableArray<PenRoom> pens)
    {
        var sorted = new SortedPens(ewes, classOf);
        var penOf = new int[ewes.Length];
        var waiting = Enumerable.Range(0, ewes.Length).ToList();
        for (var pen = 0; pen < pens.Length; pen++)
        {
            foreach (var ewe in sorted.Fill(pens[pen], waiting, pens[(pen + 1)..].Sum(p => p.Floor)))
            {
                penOf[ewe] = pen;
            }
        }

        return waiting.Count == 0 ? [.. penOf] : null;
    }

    /// <param name="waiting">Loses those that go in.</param>
    /// <param name="floorElsewhere">Of the pens still to be filled, square metres.</param>
    private List<int> Fill(PenRoom left, List<int> waiting, decimal floorElsewhere)
    {
        var inside = new List<int>();
        while (waiting.Count > 0 && left.Holds(rooms[waiting[0]]))
        {
            left = left.Less(rooms[waiting[0]]);
            inside.Add(waiting[0]);
            waiting.RemoveAt(0);
        }

        while (true)
        {
            var exchange = BestExchange(left, inside, waiting, sameClass: true);
            if (exchange.Gain == 0 && waiting.Sum(w => rooms[w].Floor) > floorElsewhere)
            {
                exchange = BestExchange(left, inside, waiting, sameClass: false);
            }

            if (exchange.Gain == 0)
            {
                return inside;
            }

            var (goesOut, comesIn) = (inside[exchange.Inside], waiting[exchange.Waiting]);
            left = left.Plus(rooms[goesOut]).Less(rooms[comesIn]);
            inside[exchange.Inside] = comesIn;
            waiting[exchange.Waiting] = goesOut;
        }
    }

    /// <summary>The exchange that fills most of what is left; a gain of 0 square metres when none does.</summary>
    private (int Inside, int Waiting, decimal Gain) BestExchange(PenRoom left, List<int> inside, List<int> waiting, bool sameClass)
    {
        (int Inside, int Waiting, decimal Gain) best = default;

        // From the back, so that of equals the later due goes to the later pen.
        for (var i = inside.Count - 1; i >= 0; i--)
        {
            var without = left.Plus(rooms[inside[i]]);
            for (var w = 0; w < waiting.Count; w++)
            {
                var gain = rooms[waiting[w]].Floor - rooms[inside[i]].Floor;
                if (gain > best.Gain
                    && (!sameClass || classOf[waiting[w]] == classOf[inside[i]])
                    && without.Holds(rooms[waiting[w]]))
                {
                    best = (i, w, gain);
                }
            }
        }

        return best;
    }
}
