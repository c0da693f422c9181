using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Dates;

/// <summary>First and last due day of a tupping group, on which its jobs hang.</summary>
/// <param name="First">Null, as <paramref name="Last"/>, when no ewe of the group can be in lamb.</param>
internal readonly record struct GroupDueDates(LocalDate? First, LocalDate? Last)
{
    /// <summary>
    /// From the marks or matings that hold where every ewe has one, else from the tup's stay, since a ewe without a mark may
    /// have been mated on any day of it. Ewes that have lambed stay in, so that the jobs already done do not move.
    /// </summary>
    /// <param name="ewes">The whole flock's.</param>
    public static GroupDueDates Of(Flock flock, TuppingGroup group, ImmutableArray<EwePlan> ewes)
    {
        var matings = ewes
            .Where(e => e.Ewe.Group == group.Name && e.Standing is (Standing.ToLamb or Standing.Lambed))
            .Select(e => (Evidence: MatingEvidence.Of(e.Ewe, group, flock.Practice), Carries: flock.GestationDaysOf(e.Ewe)))
            .ToList();
        if (matings.Count == 0)
        {
            return default;
        }

        return matings.All(m => m.Evidence.IsOneDay)
            ? new(matings.Min(m => m.Evidence.FirstDay.PlusDays(m.Carries)), matings.Max(m => m.Evidence.LastDay.PlusDays(m.Carries)))
            : new(matings.Min(m => group.TupIn.PlusDays(m.Carries)), matings.Max(m => group.TupOut.PlusDays(m.Carries)));
    }
}
