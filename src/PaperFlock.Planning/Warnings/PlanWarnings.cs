using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Planning.Jobs;

namespace PaperFlock.Planning.Warnings;

internal static class PlanWarnings
{
    /// <summary>By place in the flock file, then by code.</summary>
    public static ImmutableArray<Diagnostic> Of(
        Flock flock, LocalDate asOf, ImmutableArray<GroupPlan> groups, ImmutableArray<EwePlan> ewes, PlannedJobs planned)
    {
        var warnings = ewes.SelectMany(e => EweWarnings.For(flock, e))
            .Concat(groups.SelectMany(g => ScanWarnings.For(flock, g, ewes, planned.Jobs, asOf)))
            .Concat(groups.SelectMany(g => TooManyEwes(flock, g.Group, ewes)))
            .Concat(planned.Unplaced.Select(u => WarningWords.NoDayForJob(u.Span, u.Job)))
            .Concat(ShornOutdoors(flock));
        return
        [
            .. warnings.OrderBy(w => w.Span.Line).ThenBy(w => w.Span.Column)
                .ThenBy(w => w.Code, StringComparer.Ordinal).ThenBy(w => w.Message, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<Diagnostic> TooManyEwes(Flock flock, TuppingGroup group, ImmutableArray<EwePlan> ewes)
    {
        var limit = flock.Practice.EwesPerTup;
        var number = ewes.Count(e => e.Ewe.Group == group.Name && e.Standing != Standing.LeftOut);
        return group.Mating != Mating.Artificial && number > limit ? [WarningWords.TooManyEwes(group, number, limit)] : [];
    }

    private static IEnumerable<Diagnostic> ShornOutdoors(Flock flock) =>
        flock.Housing.Lambing == LambingPlace.Outdoors && flock.Practice.Shear == Shearing.AtHousing
            ? [WarningWords.ShornOutdoors(flock.Season)]
            : [];
}
