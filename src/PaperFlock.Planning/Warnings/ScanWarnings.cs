namespace PaperFlock.Planning.Warnings;

/// <summary>Ewes that a scan comes too early for, and scans that come too late for feeding.</summary>
internal static class ScanWarnings
{
    public static IEnumerable<PlanWarning> For(Flock flock, GroupPlan plan, IEnumerable<EwePlan> ewes, IEnumerable<Job> jobs, LocalDate asOf)
    {
        var group = plan.Group;
        var unscanned = ewes.Where(e => e.IsCarrying && !e.IsScanned && e.Ewe.Group == group.Name).ToList();
        if (unscanned.Count == 0)
        {
            return [];
        }

        var scan = jobs.First(j => j.Kind == JobKind.Scan && j.Group == group).ShownOn;
        var warnings = TooEarly(flock, group, unscanned, scan).ToList();
        var feedFrom = plan.FirstDue?.PlusDays(-7 * flock.Practice.FeedWeeksBeforeLambing.Twin);
        if (feedFrom is { } feeding && asOf >= feeding)
        {
            warnings.Add(new PlanWarning.NotScannedByFeeding(group, unscanned.Count, feeding));
        }

        return warnings;
    }

    /// <summary>A ewe marked late is named; ewes that may have been mated on the tup's last days are counted.</summary>
    private static IEnumerable<PlanWarning> TooEarly(Flock flock, TuppingGroup group, List<EwePlan> unscanned, LocalDate scan)
    {
        var late = unscanned
            .Select(e => (e.Ewe, Evidence: MatingEvidence.Of(e.Ewe, group, flock.Practice)))
            .Where(e => Period.DaysBetween(e.Evidence.LastDay, scan) < PregnancyScan.EarliestCountableDays)
            .ToLookup(e => e.Evidence.IsOneDay);
        foreach (var (ewe, evidence) in late[true])
        {
            yield return new PlanWarning.MarkedTooLateToCount(ewe, evidence.LastDay, scan);
        }

        var unsure = late[false].ToList();
        if (unsure.Count > 0)
        {
            yield return new PlanWarning.TooLateToCount(group, unsure.Count, unsure.Max(e => e.Evidence.LastDay), scan);
        }
    }
}
