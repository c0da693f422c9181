namespace PaperFlock.Planning.Lambing;

/// <summary>
/// How many lambing pens the fullest night of a season takes. One night's pens hang on those of the night before, so whole seasons are
/// drawn by lot, always the same ones: an error of one in a hundred either way at the most.
/// </summary>
internal static class FullestNight
{
    private const int Seasons = 4000;

    /// <returns>The chance of each number of pens, from none to one for each ewe.</returns>
    public static ImmutableArray<double> Of(ImmutableArray<LambingEwe> ewes)
    {
        var lot = 1ul;
        var first = ewes.Min(e => e.Chances.First);
        var drawn = ewes.Select(e => (From: Period.DaysBetween(first, e.Chances.First), UpTo: Summed(e.Chances.Chances), e.PenDays)).ToArray();
        var nights = drawn.Max(e => e.From + e.UpTo.Length + e.PenDays) + 1;
        var seasons = new double[ewes.Length + 1];
        var change = new int[nights];
        for (var season = 0; season < Seasons; season++)
        {
            Array.Clear(change);
            foreach (var (from, upTo, penDays) in drawn)
            {
                var (chance, day) = (Next(ref lot), 0);
                while (day < upTo.Length - 1 && upTo[day] < chance)
                {
                    day++;
                }

                change[from + day]++;
                change[from + day + penDays]--;
            }

            var (held, most) = (0, 0);
            foreach (var more in change)
            {
                held += more;
                most = Math.Max(most, held);
            }

            seasons[most] += 1.0 / Seasons;
        }

        return [.. seasons];
    }

    /// <summary>The next of a fixed run of numbers from 0 to 1, 1 left out: the linear congruence of Knuth's MMIX.</summary>
    private static double Next(ref ulong lot)
    {
        lot = unchecked((lot * 6364136223846793005) + 1442695040888963407);
        return (lot >> 11) / (double)(1ul << 53);
    }

    private static double[] Summed(ImmutableArray<double> chances)
    {
        var sum = 0.0;
        return [.. chances.Select(chance => sum += chance)];
    }
}
