namespace PaperFlock.Planning.Pens;

/// <summary>Brings ewes of a class together again after a tight shed was filled by size alone: swaps two ewes between pens
/// as long as both pens still hold and like stands more with like.</summary>
internal static class Regrouping
{
    // Each swap raises a whole number that cannot pass ewes squared; this only keeps a very large shed quick.
    private const int MostSwaps = 2_000;

    /// <param name="classOf">The class of each ewe, by index.</param>
    /// <param name="pens">Empty pens.</param>
    /// <param name="penOf">A pen for each ewe that fits; changed in place.</param>
    public static void Swap(
        ImmutableArray<RoomNeeded> ewes, ImmutableArray<int> classOf, ImmutableArray<PenRoom> pens, int[] penOf)
    {
        var left = pens.ToArray();
        var count = new int[pens.Length, classOf.DefaultIfEmpty().Max() + 1];
        for (var i = 0; i < ewes.Length; i++)
        {
            left[penOf[i]] = left[penOf[i]].Less(ewes[i]);
            count[penOf[i], classOf[i]]++;
        }

        var swaps = 0;
        for (var again = true; again;)
        {
            again = false;
            for (var a = 0; a < ewes.Length; a++)
            {
                for (var b = a + 1; b < ewes.Length && swaps < MostSwaps; b++)
                {
                    if (penOf[a] == penOf[b] || classOf[a] == classOf[b] || Gain(a, b) <= 0)
                    {
                        continue;
                    }

                    var roomA = left[penOf[a]].Plus(ewes[a]);
                    var roomB = left[penOf[b]].Plus(ewes[b]);
                    if (!roomA.Holds(ewes[b]) || !roomB.Holds(ewes[a]))
                    {
                        continue;
                    }

                    left[penOf[a]] = roomA.Less(ewes[b]);
                    left[penOf[b]] = roomB.Less(ewes[a]);
                    count[penOf[a], classOf[a]]--;
                    count[penOf[a], classOf[b]]++;
                    count[penOf[b], classOf[b]]--;
                    count[penOf[b], classOf[a]]++;
                    (penOf[a], penOf[b]) = (penOf[b], penOf[a]);
                    swaps++;
                    again = true;
                }
            }
        }

        // Half the rise in the sum of squares of each class's ewes in each pen: the more unequal, the more together.
        int Gain(int a, int b) =>
            count[penOf[b], classOf[a]] - (count[penOf[a], classOf[a]] - 1)
            + (count[penOf[a], classOf[b]] - (count[penOf[b], classOf[b]] - 1));
    }
}
