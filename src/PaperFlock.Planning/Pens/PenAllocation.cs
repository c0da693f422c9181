namespace PaperFlock.Planning.Pens;

/// <summary>Puts whole feeding classes into pens: splitting as few as can be, then sharing as few pens as can be, then sharing those in which a hurdle leaves trough enough.</summary>
/// <remarks>A class that is split is split by due date: those due first stand together, so that one pen empties before the
/// next and nobody is moved twice. Depth-first over the order of the classes and the pen each next part goes to, filling
/// a pen as far as the class goes; the first way found that neither splits nor shares more than it must ends the search. When the
/// steps run out, the best way found so far is taken.</remarks>
internal sealed class PenAllocation(ImmutableArray<ImmutableArray<RoomNeeded>> classes, ImmutableArray<PenRoom> pens)
{
    private const int MostSteps = 20_000;

    // What the first so many ewes of each class want together, so that filling a pen is a look-up.
    private readonly RoomNeeded[][] _sums = [.. classes.Select(ewes => RoomNeeded.Sums(ewes))];
    private readonly PenRoom[] _left = [.. pens];
    private readonly int[] _partsIn = new int[pens.Length];
    private readonly int[][] _penOf = [.. classes.Select(c => new int[c.Length])];
    private int _parts;
    private int _steps;
    private int[][]? _best;
    private (int Parts, int Shared, int Unparted) _bestCost = (int.MaxValue, int.MaxValue, int.MaxValue);

    /// <param name="classes">Ewes of each class in the order they are due; no class is empty.</param>
    /// <param name="pens">Empty pens.</param>
    /// <returns>The pen of each ewe of each class, by index; null when no way was found to house them all.</returns>
    public static int[][]? Of(ImmutableArray<ImmutableArray<RoomNeeded>> classes, ImmutableArray<PenRoom> pens)
    {
        var allocation = new PenAllocation(classes, pens);
        allocation.NextClass([.. Enumerable.Range(0, classes.Length)]);
        return allocation._best;
    }

    private bool IsDone => _steps > MostSteps || _bestCost == (classes.Length, Math.Max(0, classes.Length - _left.Length), 0);

    // Pens that hold more than one part hold ewes that want different rations.
    private int Shared => _partsIn.Sum(n => Math.Max(0, n - 1));

    // Where hurdles would take trough that the ewes need, all of them eat one ration.
    private int Unparted => _left.Where((pen, p) => _partsIn[p] > 1 && !pen.TakesHurdles(_partsIn[p] - 1)).Count();

    private void NextClass(ImmutableArray<int> waiting)
    {
        if (waiting.IsEmpty)
        {
            if ((_parts, Shared, Unparted).CompareTo(_bestCost) < 0)
            {
                _bestCost = (_parts, Shared, Unparted);
                _best = [.. _penOf.Select(p => p.ToArray())];
            }

            return;
        }

        foreach (var next in waiting)
        {
            NextPart(next, 0, waiting.Remove(next));
        }
    }

    private void NextPart(int feeding, int from, ImmutableArray<int> waiting)
    {
        // What is done, this part, and one for each class waiting: never fewer parts than that.
        if (IsDone || ++_steps > MostSteps || (_parts + 1 + waiting.Length, Shared, Unparted).CompareTo(_bestCost) >= 0)
        {
            return;
        }

        var (ewes, sums) = (classes[feeding], _sums[feeding]);
        var choices = Enumerable.Range(0, _left.Length)
            .Select(pen => (Pen: pen, To: FillTo(sums, from, _left[pen])))
            .Where(c => c.To > from)
            .OrderByDescending(c => c.To)
            .ThenBy(c => _partsIn[c.Pen])
            .ThenBy(c => _left[c.Pen].Floor)
            .ToList();
        foreach (var (pen, to) in choices)
        {
            var before = _left[pen];
            _left[pen] = before.Less(sums[to].Less(sums[from]));
            Array.Fill(_penOf[feeding], pen, from, to - from);
            _parts++;
            _partsIn[pen]++;
            if (to == ewes.Length)
            {
                NextClass(waiting);
            }
            else
            {
                NextPart(feeding, to, waiting);
            }

            _partsIn[pen]--;
            _parts--;
            _left[pen] = before;
        }
    }

    /// <returns>The index after the last ewe the pen holds.</returns>
    private static int FillTo(RoomNeeded[] sums, int from, PenRoom pen)
    {
        var (low, high) = (from, sums.Length - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = pen.Holds(sums[middle].Less(sums[from])) ? (middle, high) : (low, middle - 1);
        }

        return low;
    }
}
