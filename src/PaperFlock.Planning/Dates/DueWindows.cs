namespace PaperFlock.Planning.Dates;

internal static class DueWindows
{
    /// <summary>When she should lamb, as the day she conceived and the days she carries, both uncertain and independent.</summary>
    public static DueWindow Of(Flock flock, Ewe ewe)
    {
        var group = flock.GroupOf(ewe);
        var evidence = MatingEvidence.Of(ewe, group, flock.Practice);
        var mean = Gestation.MeanDays(flock, ewe);
        var spread = Gestation.Spread(flock.Practice.GestationSpreadDays);
        var chances = ConceptionDays.Given(evidence, group, flock.Practice).Plus(mean - (spread.Length / 2), spread);
        return new(evidence, flock.GestationDaysOf(ewe), mean, chances.Quantile(0.05), chances.Quantile(0.5), chances.Quantile(0.95), chances);
    }
}
