using PaperFlock.Planning;
using PaperFlock.Sheets;

namespace PaperFlock.Cli.Dates;

/// <summary>The season on a screen: the jobs by date, the days the ewes are handled, and when each ewe is due.</summary>
internal static class DatesReport
{
    public static void Write(SeasonPlan plan, Host host)
    {
        var output = new TableWriter(host);
        output.Heading(Messages.DatesTitle(plan));
        output.Table(Messages.JobHeads, plan.Jobs.Select(j => JobRow(j, plan)), lastBelowSecond: true);
        if (plan.Gatherings.Length > 0)
        {
            output.Heading(Messages.Gatherings(plan.Gatherings.Length));
            output.Table(Messages.GatheringHeads, plan.Gatherings.Select(g => GatheringRow(g, plan)));
        }

        output.Heading(Messages.EwesDue(plan.Ewes.Length));
        output.Table(Messages.EweHeads, plan.Ewes.Select(EweRow), lastBelowSecond: true);
    }

    private static string[] JobRow(Job job, SeasonPlan plan) =>
    [
        Messages.JobDay(job),
        JobText.Title(job, plan.Flock),
        job.Group?.Name ?? string.Empty,
        Messages.Window(job),
        JobText.Trouble(job) ?? JobText.Why(job, plan),
    ];

    private static string[] GatheringRow(Gathering gathering, SeasonPlan plan) =>
    [
        Messages.Day(gathering.Date),
        string.Join(", ", gathering.Jobs.Select(j => JobText.Named(j, plan.Flock))),
    ];

    private static string[] EweRow(EwePlan ewe) =>
    [
        ewe.Ewe.Tag,
        ewe.Ewe.Name ?? string.Empty,
        ewe.Due is { } due ? Messages.Day(due.Likely) : string.Empty,
        ewe.Due is { } window ? Messages.Between(window.Earliest, window.Latest) : string.Empty,
        ewe.Due is { } dated ? EvidenceText.Of(dated.Evidence) : Messages.NotDue(ewe.Standing),
    ];
}
