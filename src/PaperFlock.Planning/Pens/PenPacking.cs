namespace PaperFlock.Planning.Pens;

/// <summary>Whether ewes can be fitted into pens at all, whoever they stand with: bin packing with two measures.</summary>
/// <remarks>Depth-first, largest ewe first, into the pen it leaves least floor in; so the first way tried is the usual
/// best fit, and the search goes on from there. Exact until the steps run out, which takes a shed filled to within a ewe
/// and many ewes or pens; then one more way is tried, and a "no" is on the safe side.</remarks>
internal sealed class PenPacking
{
    private const int MostSteps = 5_000;

    private readonly ImmutableArray<RoomNeeded> _rooms;
    private readonly int[] _largestFirst;
    private readonly decimal[] _floorFrom;
    private readonly decimal[] _troughFrom;
    private readonly PenRoom[] _left;
    private readonly int[] _penOf;
    private int _steps;

    private PenPacking(ImmutableArray<RoomNeeded> rooms, ImmutableArray<PenRoom> pens)
    {
        _rooms = rooms;
        _largestFirst = [.. Enumerable.Range(0, rooms.Length).OrderByDescending(i => rooms[i].Floor)];
        _floorFrom = SumsFrom(i => rooms[i].Floor);
        _troughFrom = SumsFrom(i => rooms[i].Trough);
        _left = [.. pens];
        _penOf = new int[rooms.Length];
    }

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
            if (!before.Holds(_rooms[ewe]) || before == tried)
            {
                continue;
            }

            tried = before;
            _left[pen] = before.Less(_rooms[ewe]);
            _penOf[ewe] = pen;
            if (Place(rank + 1))
            {
                return true;
            }

            _left[pen] = before;
        }

        return false;
    }

    private int[] LeastFloorFirst()
    {
        var pens = new int[_left.Length];
        var keys = new (decimal Floor, decimal Trough, int Pen)[_left.Length];
        for (var p = 0; p < pens.Length; p++)
        {
            pens[p] = p;
            keys[p] = (_left[p].Floor, _left[p].Trough ?? decimal.MaxValue, p);
        }

        Array.Sort(keys, pens);
        return pens;
    }

    private bool CouldHoldFrom(int rank)
    {
        var floor = 0m;
        var trough = (decimal?)0m;
        foreach (var pen in _left)
        {
            floor += pen.Floor;
            trough += pen.Trough;
        }

        return _floorFrom[rank] <= floor && (trough is null || _troughFrom[rank] <= trough);
    }

    private decimal[] SumsFrom(Func<int, decimal> size)
    {
        var sums = new decimal[_largestFirst.Length + 1];
        for (var rank = _largestFirst.Length - 1; rank >= 0; rank--)
        {
            sums[rank] = sums[rank + 1] + size(_largestFirst[rank]);
        }

        return sums;
    }
}
