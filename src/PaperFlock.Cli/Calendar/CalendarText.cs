using PaperFlock.Planning;

namespace PaperFlock.Cli.Calendar;

/// <summary>What stands in the calendar beside a job. Nobody's telephone number: a calendar is shared more lightly than a binder.</summary>
internal static class CalendarText
{
    /// <summary>A job without a day is shown on the day it would best be done, and says so first of all.</summary>
    public static string Summary(PlannedJob job)
    {
        var title = job.Group is { Name.Length: > 0 } group ? $"{job.Title} ({group.Name})" : job.Title;
        return job.Date is null ? $"NO DAY YET: {title}" : title;
    }

    public static string Description(SeasonPlan plan, PlannedJob job)
    {
        IEnumerable<string?> lines =
        [
            job.Trouble is null ? null : $"{job.Trouble.Words} It stands here because this is the day it would best be done.",
            Window(job),
            job.Why,
            job.Handled ? "The ewes are gathered for it." : null,
            job.Minutes is { } minutes ? $"Allow {Messages.Count(minutes, "minute")}." : null,
            $"Source: {job.Source}.",
            $"As planned on {Messages.Day(plan.AsOf)}.",
        ];
        return string.Join('\n', lines.Where(l => l is not null));
    }

    private static string Window(PlannedJob job) => job switch
    {
        { Fixed: true } => "It stands on this day.",
        _ when job.Earliest == job.Latest => $"Any use only on {Messages.Day(job.Best)}.",
        _ => $"Any use from {Messages.Day(job.Earliest)} to {Messages.Day(job.Latest)}; best on {Messages.Day(job.Best)}.",
    };
}
