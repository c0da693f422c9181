using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Warnings;

/// <summary>What does not agree about one ewe.</summary>
internal static class EweWarnings
{
    public static IEnumerable<Diagnostic> For(Flock flock, EwePlan plan)
    {
        var ewe = plan.Ewe;
        if (plan.Standing is Standing.Lambed or Standing.Empty)
        {
            yield break;
        }

        var mated = Mated(ewe);
        if (ewe.ToTup == false)
        {
            if (mated is not null)
            {
                yield return WarningWords.KeptBackYetMated(ewe, mated);
            }

            yield break;
        }

        if (TupAdvisor.UnfitBecause(ewe) is { Length: > 0 } finding)
        {
            yield return WarningWords.UnfitForTup(ewe, finding, Yet(plan, mated));
        }

        if (StageAgainstMark(flock, ewe) is { } odd)
        {
            yield return odd;
        }
    }

    private static string? Mated(Ewe ewe) => ewe switch
    {
        { Scan: { } scan and > 0 } => $"scanned with {WarningWords.Count(scan, "lamb")}",
        { Marks.IsEmpty: false } => $"marked {WarningWords.Day(ewe.Marks[^1])}",
        _ => null,
    };

    private static string Yet(EwePlan plan, string? mated) => (plan.Standing, mated) switch
    {
        (_, not null) => $", yet she is {mated}",
        (Standing.LeftOut, _) => ": she is left out of the plan",
        _ => ", yet she is in the group that does",
    };

    /// <summary>Only where one heat was seen: among several the scanner's word chooses.</summary>
    private static Diagnostic? StageAgainstMark(Flock flock, Ewe ewe)
    {
        var group = flock.GroupOf(ewe);
        if (group.IsOneDay || ewe.ScanStage is not { } stage)
        {
            return null;
        }

        var heats = Heats.Of(ewe.Marks, flock.Practice.ChangeoverDays);
        if (heats.Length != 1)
        {
            return null;
        }

        var against = stage == ScanStage.Early
            ? heats[0] > TupStay.EndOfFirstHalf(group)
            : heats[0] < TupStay.StartOfSecondHalf(group);
        return against ? WarningWords.StageAgainstMark(ewe, stage, heats[0]) : null;
    }
}
