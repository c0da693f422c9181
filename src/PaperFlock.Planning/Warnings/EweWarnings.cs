using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Warnings;

/// <summary>What does not agree about one ewe.</summary>
internal static class EweWarnings
{
    public static IEnumerable<PlanWarning> For(Flock flock, EwePlan plan)
    {
        var ewe = plan.Ewe;
        PlanWarning?[] warnings = (plan.Standing, ewe.ToTup) switch
        {
            (not (Standing.ToLamb or Standing.LeftOut), _) => [],
            (_, false) => [ewe.Scan > 0 || !ewe.Marks.IsEmpty ? new PlanWarning.KeptBackYetMated(ewe) : null],

            // Where it is yes, the keeper has looked at her and said so.
            (_, var toTup) => [toTup is null && !plan.Advice.Unfit.IsEmpty ? new PlanWarning.UnfitForTup(plan) : null, StageAgainstMark(flock, ewe)],
        };
        return warnings.OfType<PlanWarning>();
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
