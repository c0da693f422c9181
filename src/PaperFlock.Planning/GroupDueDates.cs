namespace PaperFlock.Planning;

/// <summary>First and last due day of a tupping group, on which its jobs hang.</summary>
public sealed record GroupDueDates(GroupDueDay First, GroupDueDay Last)
{
    /// <summary>
    /// From the marks or matings that hold where every ewe has one, else from the tup's stay, since a ewe without a mark may
    /// have been mated on any day of it. Ewes that have lambed stay in, so that the jobs already done do not move.
    /// </summary>
    /// <param name="ewes">The whole flock's.</param>
    /// <returns>Null when no ewe of the group can be in lamb.</returns>
    internal static GroupDueDates? Of(Flock flock, TuppingGroup group, ImmutableArray<EwePlan> ewes)
    {
        var matings = ewes
            .Where(e => e.Ewe.Group == group.Name && e.WasToLamb)
            .Select(e => (e.Ewe, Evidence: MatingEvidence.Of(e.Ewe, group, flock.Practice), Carries: flock.GestationDaysOf(e.Ewe)))
            .ToList();
        if (matings.Count == 0)
        {
            return null;
        }

        var unsure = matings.Count(m => !m.Evidence.IsOneDay);
        if (unsure == 0)
        {
            var days = matings.Select(m => new GroupDueDay(m.Evidence.FirstDay, m.Carries, m.Ewe, m.Evidence, matings.Count, 0)).ToList();
            return new(days.MinBy(d => d.Day)!, days.MaxBy(d => d.Day)!);
        }

        return new(
            new(group.TupIn, matings.Min(m => m.Carries), null, null, matings.Count, unsure),
            new(group.TupOut, matings.Max(m => m.Carries), null, null, matings.Count, unsure));
    }
}

/// <summary>A day on which a group is due, and how it is known.</summary>
/// <param name="From">The mating it is counted from, or the day the tup goes in or comes out.</param>
/// <param name="Carries">Days from there.</param>
/// <param name="Ewe">Whose mating it is; null where the tup's stay is counted from.</param>
/// <param name="Evidence">Of that mating; null as <paramref name="Ewe"/>.</param>
/// <param name="Ewes">Ewes of the group that may be in lamb.</param>
/// <param name="Unsure">How many of them have no mark and no day of mating.</param>
public sealed record GroupDueDay(LocalDate From, int Carries, Ewe? Ewe, MatingEvidence? Evidence, int Ewes, int Unsure)
{
    public LocalDate Day => From.PlusDays(Carries);
}
