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
            chances);
    }
}
