namespace PaperFlock.Planning.Dates;

/// <summary>
/// How long a ewe carries: a mean by breed and litter, and a spread round it. The mean falls as the litter grows (7,083 ewes
/// of four Canadian breeds, 144 to 147 days by breed; hair sheep at 149.8, 147.4 and 146.7 days for singles, twins and more).
/// The flock file's own figures decide; its defaults of a day more for a single and a day less for three take their
/// direction from those papers and their size from memory.
/// </summary>
internal static class Gestation
{
    /// <summary>Tails beyond this many standard deviations are cut: individuals are reported from 138 to 159 days (Montana Farm Flock Sheep Production Handbook).</summary>
    private const int Cut = 4;

    /// <summary>Mean days, with the litter's share where she has been scanned.</summary>
    public static int MeanDays(Flock flock, Ewe ewe)
    {
        var litter = flock.Practice.GestationLitterDays;
        return flock.GestationDaysOf(ewe) + ewe.Scan switch
        {
            null or 0 => 0,
            1 => litter.Single,
            2 => litter.Twin,
            _ => litter.More,
        };
    }

    /// <summary>Chances of whole days round the mean, symmetric, odd in number: the normal density at whole days, scaled to sum to 1.</summary>
    /// <param name="standardDeviation">Days, not negative; 0 gives the mean alone.</param>
    public static ImmutableArray<double> Spread(decimal standardDeviation)
    {
        var reach = (int)decimal.Floor(standardDeviation * Cut);
        return DayChances.Scaled([.. Enumerable.Range(-reach, (2 * reach) + 1).Select(Density)]);

        double Density(int day)
        {
            var z = day == 0 ? 0 : day / (double)standardDeviation;
            return Math.Exp(-z * z / 2);
        }
    }
}
