namespace PaperFlock.Planning.Dates;

/// <summary>The chance of each day being the one on which a ewe conceived, given the evidence.</summary>
internal static class ConceptionDays
{
    /// <summary>
    /// Chance that a marked ewe came back a cycle later and the tup left no mark: about one in five does not hold to a
    /// service and about one return in twenty goes unseen (common practice, no source). It is small enough that a later
    /// mark never gives an earlier date, whatever room the tup-out date leaves for a return.
    /// </summary>
    internal const double UnmarkedReturn = 0.01;

    public static DayDistribution Given(MatingEvidence evidence, TuppingGroup group, Practice practice) =>
        evidence.Kind switch
        {
            Evidence.Mating => DayChances.Certain(evidence.FirstDay),
            Evidence.Mark => AfterMark(evidence.FirstDay, group, practice),
            _ => OverCycles(evidence, group, practice),
        };

    private static DayDistribution AfterMark(LocalDate mark, TuppingGroup group, Practice practice)
    {
        var back = mark.PlusDays(practice.ChangeoverDays);
        if (back > group.TupOut)
        {
            return DayChances.Certain(mark);
        }

        var weights = new double[practice.ChangeoverDays + 1];
        weights[0] = 1 - UnmarkedReturn;
        weights[^1] = UnmarkedReturn;
        return DayChances.FromWeights(mark, weights);
    }

    /// <summary>
    /// Ewes come into heat evenly over a cycle; those that do not hold come back in the next. So each cycle from tup-in is
    /// flat, and lower than the one before it by the share that did not hold; cut to the days the evidence allows.
    /// </summary>
    private static DayDistribution OverCycles(MatingEvidence evidence, TuppingGroup group, Practice practice)
    {
        var notHeld = 1 - (double)practice.ConceptionPerCycle;
        var start = Period.DaysBetween(group.TupIn, evidence.FirstDay);
        var days = Period.DaysBetween(evidence.FirstDay, evidence.LastDay) + 1;
        var weights = Enumerable.Range(start, days).Select(day => Math.Pow(notHeld, day / practice.ChangeoverDays)).ToArray();
        if (weights.Sum() <= 0)
        {
            // Everything was to hold to the first cycle, yet the scanner puts her in a later one: any day of it is as likely.
            Array.Fill(weights, 1);
        }

        return DayChances.FromWeights(evidence.FirstDay, weights);
    }
}
