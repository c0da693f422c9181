using PaperFlock.Planning;

namespace PaperFlock.Cli.Dates;

/// <summary>The season on a screen: the jobs by date, the days the ewes are handled, and when each ewe is due.</summary>
internal static class DatesReport
{
    public static void Write(SeasonPlan plan, Host host)
    {
        var output = new TableWriter(host);
        output.Heading(Messages.DatesTitle(plan));
        output.Table(Messages.JobHeads, plan.Jobs.OrderBy(j => j.ShownOn).Select(JobRow), lastBelowSecond: true);
        if (plan.Gatherings.Length > 0)
        {
            output.Heading(Messages.Gatherings(plan.Gatherings.Length));
            output.Table(Messages.GatheringHeads, plan.Gatherings.Select(GatheringRow));
        }

        output.Heading(Messages.EwesDue(plan.Ewes.Length));
        output.Table(Messages.EweHeads, plan.Ewes.Select(EweRow), lastBelowSecond: true);
    }

    private static string[] JobRow(PlannedJob job) =>
    [
        Messages.JobDay(job),
        job.Title,
        job.Group?.Name ?? string.Empty,
        Messages.Window(job),
        job.Trouble is { } trouble ? Messages.Trouble(trouble) : job.Why,
    ];

    private static string[] GatheringRow(Gathering gathering) =>
    [
        Messages.Day(gathering.Date),
        string.Join(", ", gathering.Jobs.Select(j => j.Group is { Name.Length: > 0 } group ? $"{j.Title} ({group.Name})" : j.Title)),
    ];

    private static string[] EweRow(EwePlan ewe) =>
    [
        ewe.Ewe.Tag,
        ewe.Ewe.Name ?? string.Empty,
        ewe.Due is { } due ? Messages.Day(due.Likely) : string.Empty,
        ewe.Due is { } window ? Messages.Between(window.Earliest, window.Latest) : string.Empty,
        ewe.Due?.Words ?? Messages.NotDue(ewe.Standing),
    ];
}
