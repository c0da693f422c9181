using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Warnings;

/// <summary>What does not agree about one ewe.</summary>
internal static class EweWarnings
{
    public static IEnumerable<PlanWarning> For(Flock flock, EwePlan plan)
    {
        var ewe = plan.Ewe;
        if (plan.Standing is not (Standing.ToLamb or Standing.LeftOut))
        {
            yield break;
        }

        if (ewe.ToTup == false)
        {
            if (ewe.Scan > 0 || !ewe.Marks.IsEmpty)
            {
                yield return new PlanWarning.KeptBackYetMated(ewe);
            }

            yield break;
        }

        // The keeper has looked at her and said so.
        if (ewe.ToTup is null && !plan.Advice.Unfit.IsEmpty)
        {
            yield return new PlanWarning.UnfitForTup(plan);
        }

        if (StageAgainstMark(flock, ewe) is { } odd)
        {
            yield return odd;
        }
    }

    /// <summary>Only where one heat was seen: among several the scanner's word chooses.</summary>
    private static PlanWarning.StageAgainstMark? StageAgainstMark(Flock flock, Ewe ewe)
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
        return against ? new(ewe, stage, heats[0]) : null;
    }
}
