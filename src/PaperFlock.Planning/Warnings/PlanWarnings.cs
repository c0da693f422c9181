namespace PaperFlock.Planning.Warnings;

internal static class PlanWarnings
{
    public static ImmutableArray<PlanWarning> Of(
        Flock flock, LocalDate asOf, ImmutableArray<GroupPlan> groups, ImmutableArray<EwePlan> ewes, ImmutableArray<Job> jobs, HousingPlan housing) =>
    [
        .. ewes.SelectMany(e => EweWarnings.For(flock, e)),
        .. groups.SelectMany(g => ScanWarnings.For(flock, g, ewes, jobs, asOf)),
        .. groups.SelectMany(g => TooManyEwes(flock, g.Group, ewes)),
        .. jobs.Where(j => j.Date is null).Select(j => new PlanWarning.NoDayForJob(j)),
        .. housing.Pens.Where(p => p.Capacity == 0 && p.Ewes.IsEmpty).Select(p => new PlanWarning.PenTooSmall(p.Pen)),
        .. NoRoom(flock, housing),
        .. ShornOutdoors(flock),
    ];

    private static IEnumerable<PlanWarning> TooManyEwes(Flock flock, TuppingGroup group, ImmutableArray<EwePlan> ewes)
    {
        var limit = flock.Practice.EwesPerTup;
        var number = ewes.Count(e => e.Ewe.Group == group.Name && e.Standing != Standing.LeftOut);
        return group.Mating != Mating.Artificial && number > limit ? [new PlanWarning.TooManyEwes(group, number, limit)] : [];
    }

    /// <summary>Where no pen holds any ewe, each of them has been named.</summary>
    private static IEnumerable<PlanWarning> NoRoom(Flock flock, HousingPlan housing) =>
        !housing.WithoutRoom.IsEmpty && housing.Pens.Any(p => p.Capacity > 0) ? [new PlanWarning.NoRoom(housing.WithoutRoom.Length, flock.Housing.Pens[0])] : [];

    private static IEnumerable<PlanWarning> ShornOutdoors(Flock flock) =>
        flock.Housing.Lambing == LambingPlace.Outdoors && flock.Practice.Shear == Shearing.AtHousing
            ? [new PlanWarning.ShornOutdoors(flock.Season)]
            : [];
}
