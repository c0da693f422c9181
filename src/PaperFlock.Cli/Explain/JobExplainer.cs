using NodaTime;
using PaperFlock.Planning;

namespace PaperFlock.Cli.Explain;

/// <summary>Why a job is on its day.</summary>
internal static class JobExplainer
{
    public static Explanation Of(PlannedJob job, SeasonPlan plan) => Explanation.Of(
        $"{ExplainMessages.Name(job)}: {Messages.JobDay(job)}",
        [
            ("trouble", job.Trouble?.Words),
            ("why", job.Why),
            ("counted from", job.Basis is { } basis ? $"{basis.Words}, {Messages.Day(basis.Day)}: {Offset(job, basis.Day)}" : "the day the flock file gives"),
            ("known by", job.Basis?.Evidence),
            ("any use", job.Fixed ? "that day, whatever the keeper's week" : $"{ExplainMessages.Span(job.Earliest, job.Latest)}, best on {Messages.Day(job.Best)}"),
            ("moved", Moved(job)),
            ("mind", job.Moved is { } odd && job.Date == job.Best ? odd : null),
            ("gathering", Gathering(job, plan)),
            ("time", job.Minutes is { } minutes ? Messages.Count(minutes, "minute") : null),
            ("source", job.Source),
        ]);

    private static string? Moved(PlannedJob job) => job switch
    {
        { Moved: { } words } when job.Date != job.Best => $"from its best day, {Messages.Day(job.Best)}: {words}",
        { Fixed: false, Date: not null } when job.Date == job.Best => "no: it is on its best day",
        _ => null,
    };

    private static string? Gathering(PlannedJob job, SeasonPlan plan)
    {
        if (!job.Handled)
        {
            return null;
        }

        var others = plan.Gatherings.FirstOrDefault(g => g.Date == job.Date)?.Jobs.Where(j => !ReferenceEquals(j, job)).Select(ExplainMessages.Name).ToList() ?? [];
        return others.Count == 0 ? ExplainMessages.Gathered : $"{ExplainMessages.Gathered}, together with {Messages.List(others)}";
    }

    /// <summary>Such as "75 to 80 days after, best 75".</summary>
    private static string Offset(PlannedJob job, LocalDate from)
    {
        var (earliest, best, latest) = (Period.DaysBetween(from, job.Earliest), Period.DaysBetween(from, job.Best), Period.DaysBetween(from, job.Latest));
        return (earliest, latest) switch
        {
            (0, 0) => "that day",
            _ when earliest == latest => $"{Messages.Count(Math.Abs(best), "day")} {(best < 0 ? "before" : "after")}",
            ( < 0, <= 0) => $"{-earliest} to {-latest} days before, best {-best}",
            ( >= 0, _) => $"{earliest} to {latest} days after, best {best}",
            _ => $"from {Messages.Count(-earliest, "day")} before to {Messages.Count(latest, "day")} after",
        };
    }
}
