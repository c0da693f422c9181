namespace PaperFlock.Packs.Explain;

/// <summary>Why a job is on its day.</summary>
internal static class JobExplainer
{
    public static Explanation Of(Job job, SeasonPlan plan) => Explanation.Of(
        $"{JobText.Title(job, plan.Flock)}: {ScreenText.JobDay(job)}",
        [
            ("trouble", JobText.Trouble(job)),
            ("for", job.Batch is null ? null : ScreenText.List(plan.BatchOf(job).Select(e => e.Ewe.CallName))),
            ("why", JobText.Why(job, plan)),
            ("counted from", JobText.CountedFrom(job) is { } from ? $"{from}, {ScreenText.Day(job.Anchor)}: {Offset(job.Rule.Window)}" : "the date in the flock file"),
            ("known by", JobText.KnownBy(job, plan)),
            ("any use", job.IsFixed ? "that day, whatever the keeper's week" : $"{ScreenText.Span(job.Earliest, job.Latest)}, best on {ScreenText.Day(job.Best)}"),
            ("moved", Moved(job)),
            ("mind", job.Date == job.Best ? JobText.Moved(job) : null),
            ("gathering", Gathering(job, plan)),
            .. Explanation.List("not joined", plan.NotJoined(job).Select(g => $"the gathering on {ScreenText.Day(g.Date)}: the keeper is not free that day")),
            ("time", job.Minutes is { } minutes ? ScreenText.Count(minutes, "minute") : null),
            ("source", FigureSourceText.Of(job.Rule.Source)),
        ]);

    private static string? Moved(Job job) =>
        job.Date == job.Best ? job.IsFixed ? null : "no: it is on its best day"
        : JobText.Moved(job) is { } why ? $"from its best day, {ScreenText.Day(job.Best)}: {why}"
        : null;

    private static string? Gathering(Job job, SeasonPlan plan)
    {
        if (!job.Handled)
        {
            return null;
        }

        var others = JobText.OthersGathered(job, plan);
        return $"the ewes are gathered for it{(others.Count == 0 ? "" : $", together with {ScreenText.List(others)}")}";
    }

    /// <summary>Such as "75 to 80 days after, best 75".</summary>
    private static string Offset(JobWindow window) => window switch
    {
        (0, _, 0) => "that day",
        var (earliest, best, latest) when earliest == latest => Side(best),
        ( < 0, var best, <= 0) => $"{-window.Earliest} to {-window.Latest} days before, best {-best}",
        ( >= 0, var best, _) => $"{window.Earliest} to {window.Latest} days after, best {best}",
        var (earliest, best, latest) => $"from {Side(earliest)} to {Side(latest)}, best {(best == 0 ? "that day" : Side(best))}",
    };

    private static string Side(int days) => $"{ScreenText.Count(Math.Abs(days), "day")} {(days < 0 ? "before" : "after")}";
}
