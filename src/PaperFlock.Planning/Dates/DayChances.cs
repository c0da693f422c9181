namespace PaperFlock.Planning.Dates;

/// <summary>Makes and adds distributions over whole days.</summary>
internal static class DayChances
{
    public static DayDistribution Certain(LocalDate day) => new(day, [1.0]);

    /// <param name="weights">None negative, not all zero; scaled to sum to 1.</param>
    public static DayDistribution FromWeights(LocalDate first, double[] weights) => new(first, Scaled(weights));

    /// <summary>The distribution of a day and an independent number of days after it.</summary>
    /// <param name="shift">Days that the first element of <paramref name="lag"/> stands for.</param>
    public static DayDistribution Plus(this DayDistribution day, int shift, ImmutableArray<double> lag)
    {
        var sum = new double[day.Chances.Length + lag.Length - 1];
        for (var i = 0; i < day.Chances.Length; i++)
        {
            for (var j = 0; j < lag.Length; j++)
            {
                sum[i + j] += day.Chances[i] * lag[j];
            }
        }

        return new(day.First.PlusDays(shift), [.. sum]);
    }

    internal static ImmutableArray<double> Scaled(double[] weights)
    {
        var total = weights.Sum();
        return [.. weights.Select(weight => weight / total)];
    }
}
