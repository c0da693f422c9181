namespace PaperFlock.Planning.Dates;

internal static class EwePlans
{
    /// <summary>In the order of the flock file; trough groups and pens are filled in once feeding and housing are planned.</summary>
    public static ImmutableArray<EwePlan> Of(Flock flock) => [.. flock.Ewes.Select(ewe => Of(flock, ewe))];

    /// <summary>The same ewe as if nothing had come of her season yet: what is made ahead for her is made by this.</summary>
    public static EwePlan InLambStill(EwePlan ewe) => ewe.WasToLamb
        ? ewe with { Standing = Standing.ToLamb, BeforeLoss = Standing.ToLamb, Ewe = ewe.Ewe with { Lambed = null, LostLambs = null, Gone = null } }
        : ewe;

    private static EwePlan Of(Flock flock, Ewe ewe)
    {
        var advice = TupAdvisor.Advise(ewe);
        var before = BeforeLoss(ewe, advice);
        var standing = ewe.Gone is not null ? Standing.Gone : ewe.LostLambs is not null && before == Standing.ToLamb ? Standing.LostLambs : before;
        var unscannedLitter = before == Standing.LeftOut ? 0 : 1;
        return new(
            ewe,
            standing,
            Litter: ewe.Scan ?? unscannedLitter,
            Due: standing == Standing.ToLamb ? DueWindows.Of(flock, ewe) : null,
            advice,
            Chart: null,
            Pen: null)
        {
            BeforeLoss = before,
            WasToLamb = before is Standing.ToLamb or Standing.Lambed && !IsLostBeforeScan(flock, ewe),
            Sires = before is Standing.ToLamb or Standing.Lambed ? SireChances.Of(flock, ewe) : [],
        };
    }

    /// <summary>
    /// What is known beats what was advised: a lambing, a scan or a raddle mark outweighs the check of teeth, toes and
    /// teats. Only the keeper's own word keeps out a ewe that has been marked.
    /// </summary>
    internal static Standing BeforeLoss(Ewe ewe, TupAdvice advice) => ewe switch
    {
        { Lambed: not null } => Standing.Lambed,
        { Scan: 0 } => Standing.Empty,
        { ToTup: true } => Standing.ToLamb,
        { ToTup: false } => Standing.LeftOut,
        { Marks.IsEmpty: true, Scan: null } when advice.Verdict >= TupVerdict.LeaveOut => Standing.LeftOut,
        _ => Standing.ToLamb,
    };

    private static bool IsLostBeforeScan(Flock flock, Ewe ewe)
    {
        var scan = flock.GroupOf(ewe).TupIn.PlusDays(flock.Practice.ScanDaysAfterTupIn.First);
        return ewe.Gone?.On < scan || ewe.LostLambs < scan;
    }
}
