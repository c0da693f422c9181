namespace PaperFlock.Planning.Pens;

/// <summary>Whether ewes can be fitted into pens at all, whoever they stand with: bin packing with two measures.</summary>
/// <remarks>Depth-first, largest ewe first, into the pen it leaves least floor in; so the first way tried is the usual
/// best fit, and the search goes on from there. Exact until the steps run out, which takes a shed filled to within a ewe
/// and many ewes or pens; then one more way is tried, and a "no" is on the safe side.</remarks>
internal sealed class PenPacking(ImmutableArray<RoomNeeded> rooms, ImmutableArray<PenRoom> pens)
{
    private const int MostSteps = 5_000;

    private readonly int[] _largestFirst = [.. Enumerable.Range(0, rooms.Length).OrderByDescending(i => rooms[i].Floor)];

    /// <summary>What the smallest so many ewes want together.</summary>
    private readonly RoomNeeded[] _smallest = RoomNeeded.Sums(rooms.OrderByDescending(r => r.Floor).Reverse());
    private readonly PenRoom[] _left = [.. pens];
    private readonly int[] _penOf = new int[rooms.Length];
    private int _steps;

    /// <returns>A pen for each ewe, by index; null when they do not fit.</returns>
    public static ImmutableArray<int>? Of(ImmutableArray<RoomNeeded> ewes, ImmutableArray<PenRoom> pens)
    {
        var packing = new PenPacking(ewes, pens);
        return packing.Place(0) ? [.. packing._penOf]
            : packing._steps > MostSteps ? FullPens.Of(ewes, pens)
            : null;
    }

    private bool Place(int rank)
    {
        if (rank == _largestFirst.Length)
        {
            return true;
        }

        if (++_steps > MostSteps || !CouldHoldFrom(rank))
        {
            return false;
        }

        var ewe = _largestFirst[rank];
        var tried = default(PenRoom?);
        foreach (var pen in LeastFloorFirst())
        {
            // Pens with the same room left are one choice, and stand next to each other here.
            var before = _left[pen];
            if (!before.Holds(rooms[ewe]) || before == tried)
            {
                continue;
            }

            tried = before;
            _left[pen] = before.Less(rooms[ewe]);
            _penOf[ewe] = pen;
            if (Place(rank + 1))
            {
                return true;
            }

            _left[pen] = before;
        }

        return false;
    }

    private int[] LeastFloorFirst() =>
        [.. Enumerable.Range(0, _left.Length).OrderBy(p => _left[p].Floor).ThenBy(p => _left[p].Trough ?? decimal.MaxValue)];

    private bool CouldHoldFrom(int rank)
    {
        decimal? trough = _left.Any(pen => pen.Trough is null) ? null : _left.Sum(pen => pen.Trough);
        return new PenRoom(_left.Sum(pen => pen.Floor), trough).Holds(_smallest[_largestFirst.Length - rank]);
    }
}
