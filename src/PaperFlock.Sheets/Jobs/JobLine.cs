namespace PaperFlock.Sheets.Jobs;

/// <summary>A job as people read it: the same job of several groups on one day is one line.</summary>
/// <param name="Job">Of those the one that must be done soonest.</param>
/// <param name="Ewes">Whom it is done to, as its title calls them.</param>
internal sealed record JobLine(Job Job, string Title, string Ewes)
{
    /// <param name="jobs">Some of the plan's, or all. What the first group makes the whole flock's is said once.</param>
    public static ImmutableArray<JobLine> Of(SeasonPlan plan, IEnumerable<Job> jobs) =>
    [
        .. jobs
            .Where(j => j.Date is null || j.Kind is not (JobKind.HeavyRounds or JobKind.ShedReady) || j.Date == plan.Jobs.Where(other => other.Kind == j.Kind).Min(other => other.Date))
            .GroupBy(j => (j.ShownOn, Same: JobText.Title(j, plan.Flock, JobText.Them), Placed: j.Date is not null))
            .OrderBy(g => g.Key.ShownOn)
            .Select(same => Of([.. same], plan.Flock)),
    ];

    /// <summary>The last day it is any use, where that is another than its own; null where it stands on its day, or has none.</summary>
    public LocalDate? NoLaterThan => Job.IsFixed || Job.Date is null || Job.Latest == Job.Date ? null : Job.Latest;

    private static JobLine Of(Job[] same, Flock flock)
    {
        var ewes = JobText.Ewes(same, flock);
        return new JobLine(same.MinBy(j => j.Latest)!, JobText.Title(same[0], flock, ewes), ewes);
    }
}
