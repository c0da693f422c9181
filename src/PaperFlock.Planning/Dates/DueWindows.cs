using PaperFlock.Flocks;

namespace PaperFlock.Planning.Dates;

internal static class DueWindows
{
    /// <summary>When she should lamb, as the day she conceived and the days she carries, both uncertain and independent.</summary>
    public static DueWindow Of(Flock flock, Ewe ewe)
    {
        var group = flock.GroupOf(ewe);
        var evidence = MatingEvidence.Of(ewe, group, flock.Practice);
        var spread = Gestation.Spread(flock.Practice.GestationSpreadDays);
        var chances = ConceptionDays.Given(evidence, group, flock.Practice)
            .Plus(Gestation.MeanDays(flock, ewe) - (spread.Length / 2), spread);
        var carries = flock.GestationDaysOf(ewe);
        return new(
            evidence.Kind,
            evidence.Words,
            FirstPossible: evidence.FirstDay.PlusDays(carries),
            LastPossible: evidence.LastDay.PlusDays(carries),
            Earliest: chances.Quantile(0.05),
            Likely: chances.Quantile(0.5),
            Latest: chances.Quantile(0.95),
            chances)
        {
            Reckoning = Reckoning(ewe, evidence, carries, Gestation.MeanDays(flock, ewe), flock.Practice.GestationSpreadDays),
        };
    }

    private static string Reckoning(Ewe ewe, MatingEvidence evidence, int carries, int mean, decimal spread)
    {
        var due = evidence.IsOneDay
            ? $"{carries} days from {DateWords.Day(evidence.FirstDay)} is {DateWords.Day(evidence.FirstDay.PlusDays(carries))}."
            : $"Any day from {DateWords.Day(evidence.FirstDay)} to {DateWords.Day(evidence.LastDay)} may be the one; {carries} days on from those is "
                + $"{DateWords.Day(evidence.FirstDay.PlusDays(carries))} to {DateWords.Day(evidence.LastDay.PlusDays(carries))}.";
        var litter = mean == carries
            ? ""
            : $" With {DateWords.Count(ewe.Scan ?? 0, "lamb")} she is planned at {mean} days, {DateWords.Count(Math.Abs(mean - carries), "day")} {(mean > carries ? "more" : "less")}.";
        var either = spread == 0 || !evidence.IsOneDay ? "" : FormattableString.Invariant($" Two ewes in three lamb within {spread:0.##} days of that, before or after.");
        return due + litter + either;
    }
}
