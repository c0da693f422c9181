using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Warnings;

/// <summary>Ewes that a scan comes too early for, and scans that come too late for feeding.</summary>
internal static class ScanWarnings
{
    public static IEnumerable<Diagnostic> For(Flock flock, GroupPlan plan, IEnumerable<EwePlan> ewes, IEnumerable<PlannedJob> jobs, LocalDate asOf)
    {
        var group = plan.Group;
        var unscanned = ewes.Where(e => e.IsCarrying && !e.IsScanned && e.Ewe.Group == group.Name).ToList();
        if (unscanned.Count == 0)
        {
            return [];
        }

        var scan = jobs.First(j => j.Id == JobIds.Scan && j.Group == group).ShownOn;
        var warnings = TooEarly(flock, group, unscanned, scan).ToList();
        var feedFrom = plan.FirstDue?.PlusDays(-7 * flock.Practice.FeedWeeksBeforeLambing.Twin);
        if (feedFrom is { } feeding && asOf >= feeding)
        {
            warnings.Add(WarningWords.NotScannedByFeeding(group, unscanned.Count, feeding));
        }

        return warnings;
    }

    /// <summary>A ewe marked late is named; ewes that may have been mated on the tup's last days are counted.</summary>
    private static IEnumerable<Diagnostic> TooEarly(Flock flock, TuppingGroup group, List<EwePlan> unscanned, LocalDate scan)
    {
        var late = unscanned
            .Select(e => (e.Ewe, Evidence: MatingEvidence.Of(e.Ewe, group, flock.Practice)))
            .Where(e => Period.DaysBetween(e.Evidence.LastDay, scan) < PregnancyScan.EarliestCountableDays)
            .ToLookup(e => e.Evidence.IsOneDay);
        foreach (var (ewe, evidence) in late[true])
        {
            yield return WarningWords.MarkedTooLateToCount(
                ewe, Period.DaysBetween(evidence.LastDay, scan), scan, evidence.LastDay.PlusDays(PregnancyScan.EarliestCountableDays));
        }

        var unsure = late[false].ToList();
        if (unsure.Count > 0)
        {
            var last = unsure.Max(e => e.Evidence.LastDay);
            yield return WarningWords.TooLateToCount(
                group, unsure.Count, Math.Max(0, Period.DaysBetween(last, scan)), scan, last.PlusDays(PregnancyScan.EarliestCountableDays));
        }
    }
}
