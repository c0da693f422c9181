using PaperFlock.Planning;

namespace PaperFlock.Cli.Dates;

/// <summary>The season on a screen: the jobs by date, the days the ewes are handled, and when each ewe is due.</summary>
internal static class DatesReport
{
    public static void Write(SeasonPlan plan, Surroundings surroundings)
    {
        var output = new TableWriter(surroundings);
        output.Heading(Words.DatesTitle(plan));
        output.Table(Words.JobHeads, plan.Jobs.OrderBy(j => j.ShownOn).Select(JobRow), lastBelowSecond: true);
        if (plan.Gatherings.Length > 0)
        {
            output.Heading(Words.Gatherings(plan.Gatherings.Length));
            output.Table(Words.GatheringHeads, plan.Gatherings.Select(GatheringRow));
        }

        output.Heading(Words.EwesDue(plan.Ewes.Length));
        output.Table(Words.EweHeads, plan.Ewes.Select(EweRow), lastBelowSecond: true);
    }

    private static string[] JobRow(PlannedJob job) =>
    [
        Words.JobDay(job),
        job.Title,
        job.Group?.Name ?? string.Empty,
        Words.Window(job),
        job.Trouble is { } trouble ? Words.Trouble(trouble) : job.Why,
    ];

    private static string[] GatheringRow(Gathering gathering) =>
    [
        Words.Day(gathering.Date),
        string.Join(", ", gathering.Jobs.Select(j => j.Group is { Name.Length: > 0 } group ? $"{j.Title} ({group.Name})" : j.Title)),
    ];

    private static string[] EweRow(EwePlan ewe) =>
    [
        ewe.Ewe.Tag,
        ewe.Ewe.Name ?? string.Empty,
        ewe.Due is { } due ? Words.Day(due.Likely) : string.Empty,
        ewe.Due is { } window ? Words.Between(window.Earliest, window.Latest) : string.Empty,
        ewe.Due?.Words ?? Words.NotDue(ewe.Standing),
    ];
}
