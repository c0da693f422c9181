namespace PaperFlock.Planning.Dates;

internal static class EwePlans
{
    /// <summary>In the order of the flock file; trough groups and pens are filled in once feeding and housing are planned.</summary>
    public static ImmutableArray<EwePlan> Of(Flock flock) => [.. flock.Ewes.Select(ewe => Of(flock, ewe))];

    private static EwePlan Of(Flock flock, Ewe ewe)
    {
        var advice = TupAdvisor.Advise(ewe);
        var standing = Standings.Of(ewe, advice);
        var unscannedLitter = standing == Standing.LeftOut ? 0 : 1;
        return new(
            ewe,
            standing,
            Litter: ewe.Scan ?? unscannedLitter,
            Due: standing == Standing.ToLamb ? DueWindows.Of(flock, ewe) : null,
            advice,
            Chart: null,
            Pen: null);
    }
}
