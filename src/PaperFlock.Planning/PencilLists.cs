using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning;

/// <summary>
/// The ewes in the order in which each sheet that is filled in by pencil lists them. The sheet and whoever asks for what
/// was written on it both come here, so that one can be read into the other line by line. Filling in a sheet never
/// changes its order: a sheet printed in December is still the one to read from in February.
/// </summary>
public static class PencilLists
{
    /// <summary>Teeth, toes and teats: every ewe.</summary>
    public static ImmutableArray<EwePlan> BeforeTheTup(SeasonPlan plan) => plan.Ewes;

    /// <summary>Tup and raddle: group by group where the tup wears raddle, without those left out of the tup; empty where no tup does.</summary>
    public static ImmutableArray<(GroupPlan Group, ImmutableArray<EwePlan> Ewes)> TupAndRaddle(SeasonPlan plan) =>
    [
        .. plan.Groups
            .Where(g => !g.Group.Raddle.IsEmpty)
            .Select(g => (g, plan.Ewes.Where(e => e.Ewe.Group == g.Group.Name && e.BeforeLoss != Standing.LeftOut).ToImmutableArray())),
    ];

    /// <summary>Scan day: every ewe but those left out of the tup.</summary>
    public static ImmutableArray<EwePlan> ScanDay(SeasonPlan plan) => [.. plan.Ewes.Where(e => e.BeforeLoss != Standing.LeftOut)];

    /// <summary>Who lambs when: in the order they are, or were, expected; one that has lambed, lost them or gone keeps her place.</summary>
    public static ImmutableArray<(EwePlan Ewe, DueWindow Window)> WhoLambsWhen(SeasonPlan plan) =>
    [
        .. plan.Ewes
            .Where(e => e.WasToLamb)
            .Select(e => (e, Window: e.Due ?? DueWindows.Of(plan.Flock, e.Ewe)))
            .OrderBy(row => row.Window.Likely)
            .ThenBy(row => row.e.Ewe.Tag, StringComparer.Ordinal),
    ];
}
