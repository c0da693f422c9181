namespace PaperFlock.Packs.Calendar;

/// <summary>What stands in the calendar beside a job. Nobody's telephone number: a calendar is shared more lightly than a binder.</summary>
internal static class CalendarText
{
    /// <summary>A job without a day is shown on the day it would best be done, and says so first of all.</summary>
    public static string Summary(SeasonPlan plan, Job job)
    {
        var title = JobText.Title(job, plan.Flock);
        return job.Date is null ? $"NO DAY YET: {title}" : title;
    }

    public static string Description(SeasonPlan plan, Job job)
    {
        IEnumerable<string?> lines =
        [
            JobText.Trouble(job) is not { } trouble ? null : $"{trouble} It stands here because this is the day it would best be done.",
            Window(job),
            JobText.Why(job, plan),
            job.Handled ? "The ewes are gathered for it." : null,
            job.Minutes is { } minutes ? $"Allow {ScreenText.Count(minutes, "minute")}." : null,
            $"Source: {FigureSourceText.Of(job.Rule.Source)}.",
            $"As planned on {ScreenText.Day(plan.AsOf)}.",
        ];
        return string.Join('\n', lines.Where(l => l is not null));
    }

    private static string Window(Job job) => job switch
    {
        { IsFixed: true } => "It stands on this day.",
        _ when job.Earliest == job.Latest => $"Any use only on {ScreenText.Day(job.Best)}.",
        _ => $"Any use from {ScreenText.Day(job.Earliest)} to {ScreenText.Day(job.Latest)}; best on {ScreenText.Day(job.Best)}.",
    };
}
