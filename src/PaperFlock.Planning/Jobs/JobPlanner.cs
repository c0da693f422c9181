using System.Collections.Immutable;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Jobs;

/// <param name="Jobs">By the day they are shown on, then by group, then in the order of the calendar.</param>
/// <param name="Gatherings">In date order.</param>
/// <param name="Unplaced">Jobs without a day, with what in the file asks for them.</param>
internal sealed record PlannedJobs(
    ImmutableArray<PlannedJob> Jobs,
    ImmutableArray<Gathering> Gatherings,
    ImmutableArray<(PlannedJob Job, SourceSpan Span)> Unplaced);

/// <summary>From anchors to jobs on their days.</summary>
internal static class JobPlanner
{
    public static PlannedJobs Plan(Flock flock, IReadOnlyList<GroupAnchors> groups)
    {
        ImmutableArray<JobNeed> needs =
        [
            .. groups.SelectMany(g => BuiltInJobs.For(flock, g)),
            .. OwnJobs.For(flock, groups),
        ];
        var calendar = new KeeperCalendar(flock.KeeperDays);
        var placements = new JobPlacer(calendar).Place(needs);
        var gathered = placements.Where(p => p.Date is not null && p.Need.Handled).ToLookup(p => p.Date!.Value, p => p.Need);
        var words = new JobWords(calendar, gathered);
        var order = groups.Select((g, i) => (g.Group, Order: i)).ToDictionary(g => g.Group, g => g.Order);
        var jobs = placements
            .Select(p => (Job: Planned(p, calendar, words), p.Need.Span))
            .OrderBy(j => j.Job.ShownOn)
            .ThenBy(j => j.Job.Group is { } group ? order[group] : -1)
            .ToList();
        return new(
            [.. jobs.Select(j => j.Job)],
            [.. jobs.Where(j => j.Job is { Handled: true, Date: not null }).GroupBy(j => j.Job.Date!.Value, (day, on) => new Gathering(day, [.. on.Select(j => j.Job)]))],
            [.. jobs.Where(j => j.Job.Trouble is not null)]);
    }

    private static PlannedJob Planned(Placement placement, KeeperCalendar calendar, JobWords words)
    {
        var need = placement.Need;
        JobTrouble? trouble = null;
        if (placement.Date is null)
        {
            var nearest = calendar.NearestFreeOutside(need.Earliest, need.Latest, need.NotAfter);
            trouble = new(JobWords.Trouble(need, nearest), nearest);
        }

        return new(
            need.Id,
            need.Title,
            need.Group,
            need.Earliest,
            need.Best,
            need.Latest,
            placement.Date,
            need.Handled,
            need.Fixed,
            need.Minutes,
            words.Why(placement),
            need.Source,
            trouble)
        {
            Basis = need.Basis,
            Moved = words.Moved(placement),
        };
    }
}
