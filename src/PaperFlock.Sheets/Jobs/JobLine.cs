namespace PaperFlock.Sheets.Jobs;

/// <summary>A job as people read it: the same job of several groups on one day is one line.</summary>
/// <param name="Job">Of those the one that must be done soonest.</param>
/// <param name="Ewes">Whom it is done to, as its title calls them.</param>
/// <param name="Names">Those it is for by name, where it is not for all of a group; else empty.</param>
internal sealed record JobLine(Job Job, string Title, string Ewes, string Names)
{
    /// <summary>More than this many are counted: a line must fit a page, and their days stand on the sheet of who lambs when.</summary>
    private const int MostNamed = 60;

    private static readonly ImmutableArray<JobKind> ForAll = [JobKind.HeavyRounds, JobKind.ShedReady, JobKind.AbortionVaccine, JobKind.BoughtTup, JobKind.FlukeAndWorms, JobKind.RingAndTag];

    /// <param name="jobs">Some of the plan's, or all. What the first group makes the whole flock's is said once.</param>
    public static ImmutableArray<JobLine> Of(SeasonPlan plan, IEnumerable<Job> jobs) =>
    [
        .. jobs
            .Where(j => j.Date is null || !ForAll.Contains(j.Kind) || j.Date == plan.Jobs.Where(other => other.Kind == j.Kind && other.Rule.Reason == j.Rule.Reason).Min(other => other.Date))
            .GroupBy(j => (j.ShownOn, Same: JobText.Title(j, plan.Flock, JobText.Them), Placed: j.Date is not null))
            .OrderBy(g => g.Key.ShownOn)
            .Select(same => Of([.. same], plan)),
    ];

    /// <summary>The last day it is any use, where that is another than its own; null where it stands on its day, or has none.</summary>
    public LocalDate? NoLaterThan => Job.IsFixed || Job.Date is null || Job.Latest == Job.Date ? null : Job.Latest;

    private static JobLine Of(Job[] same, SeasonPlan plan)
    {
        var ewes = JobText.Ewes(same, plan.Flock);
        return new JobLine(same.MinBy(j => j.Latest)!, JobText.Title(same[0], plan.Flock, ewes), ewes, Named(same, plan));
    }

    private static string Named(Job[] same, SeasonPlan plan) => same[0].Kind == JobKind.Sort
        ? string.Join("; ", plan.Feeding.Sorts.Where(s => s.Day == same[0].Date).Select(s => $"{s.Field}: {Named(", ", s.Ewes)}"))
        : Named(Strikes.Between, [.. same.SelectMany(plan.BatchOf).Select(e => e.Ewe)]);

    private static string Named(string between, ImmutableArray<Ewe> ewes) =>
        ewes.Length > MostNamed ? $"{ewes.Length} ewes" : string.Join(between, ewes.Select(e => e.CallName));
}
