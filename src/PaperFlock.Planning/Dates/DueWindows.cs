using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Text;

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
        string Day(LocalDate day) => DateText.Loose(day);
        var (first, last) = (evidence.FirstDay, evidence.LastDay);
        List<string> sentences =
        [
            evidence.IsOneDay
                ? $"{carries} days from {Day(first)} is {Day(first.PlusDays(carries))}."
                : $"Any day from {Day(first)} to {Day(last)} may be the one; {carries} days on from those is {Day(first.PlusDays(carries))} to {Day(last.PlusDays(carries))}.",
        ];
        if (mean != carries)
        {
            var lambs = English.CountLoose(ewe.Scan ?? 0, "lamb", "lambs");
            var days = English.CountLoose(Math.Abs(mean - carries), "day", "days");
            sentences.Add(mean > carries
                ? $"With {lambs} she is planned at {mean} days, {days} more."
                : $"With {lambs} she is planned at {mean} days, {days} less.");
        }

        if (spread != 0 && evidence.IsOneDay)
        {
            sentences.Add($"Two ewes in three lamb within {spread:0.##} days of that, before or after.");
        }

        return string.Join(' ', sentences);
    }
}
