namespace PaperFlock.Sheets.Jobs;

/// <summary>A job as people read it: the same job of several groups on one day is one line.</summary>
/// <param name="Job">Of those the one that must be done soonest.</param>
/// <param name="Groups">"Orchard, Paddock", or empty when it is the whole flock's.</param>
internal sealed record JobLine(Job Job, string Title, string Groups)
{
    public static ImmutableArray<JobLine> Of(SeasonPlan plan) => Of(plan, plan.Jobs);

    /// <param name="jobs">Some of the plan's, or all.</param>
    public static ImmutableArray<JobLine> Of(SeasonPlan plan, IEnumerable<Job> jobs) =>
    [
        .. jobs
            .GroupBy(j => (j.ShownOn, Title: JobText.Title(j, plan.Flock), Placed: j.Date is not null))
            .OrderBy(g => g.Key.ShownOn)
            .Select(same => new JobLine(same.MinBy(j => j.Latest)!, same.Key.Title, GroupsOf(same, plan.Groups.Length))),
    ];

    /// <summary>Why it is on that day, and the last day it is any use where that is another day.</summary>
    public string Why(SeasonPlan plan) => Block.Sentences(
        JobText.Why(Job, plan),
        Job.IsFixed || Job.Latest == Job.Date ? "" : $"No later than {DateText.Short(Job.Latest)}.");

    private static string GroupsOf(IEnumerable<Job> same, int all)
    {
        var names = same.Select(j => j.Group?.Name).OfType<string>().Where(n => n.Length > 0).Distinct().ToList();
        return names.Count == all ? "" : string.Join(", ", names);
    }
}
