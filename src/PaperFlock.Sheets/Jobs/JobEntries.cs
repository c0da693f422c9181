using System.Collections.Immutable;
using PaperFlock.Planning;

namespace PaperFlock.Sheets.Jobs;

/// <summary>Jobs as people read them: the same job of several groups on one day is one line.</summary>
internal static class JobEntries
{
    public static ImmutableArray<JobEntry> Of(SeasonPlan plan) => Of(plan, plan.Jobs);

    /// <param name="jobs">Some of the plan's, or all.</param>
    public static ImmutableArray<JobEntry> Of(SeasonPlan plan, IEnumerable<PlannedJob> jobs)
    {
        var groups = plan.Groups.Length;
        return
        [
            .. jobs
                .GroupBy(j => (j.ShownOn, j.Title, Placed: j.Date is not null))
                .OrderBy(g => g.Key.ShownOn)
                .Select(same => new JobEntry(Widest([.. same]), Words([.. same], groups))),
        ];
    }

    /// <summary>The earliest last day among them is the one that binds.</summary>
    private static PlannedJob Widest(ImmutableArray<PlannedJob> same) => same.MinBy(j => j.Latest)!;

    private static string Words(ImmutableArray<PlannedJob> same, int groups)
    {
        var names = same.Select(j => j.Group?.Name).OfType<string>().Where(n => n.Length > 0).Distinct().ToArray();
        return names.Length == 0 || names.Length == groups ? "" : " · " + string.Join(", ", names);
    }
}
