namespace PaperFlock.Sheets.RoundLog;

/// <summary>A run of days that share a page of the log.</summary>
/// <param name="Days">Consecutive, at least one.</param>
internal sealed record LogPage(LogPace Pace, ImmutableArray<RoundDay> Days);

internal enum LogPace
{
    /// <summary>A page a week while little happens.</summary>
    QuietWeek,

    /// <summary>A few days a page once they are heavy.</summary>
    HeavyDays,

    /// <summary>A page a day, with rows for each lambing, while they lamb.</summary>
    LambingDay,
}

/// <summary>Pages on the front and back of one leaf.</summary>
/// <param name="From">The first day that belongs to it, which may be over and no longer printed: its page code.</param>
/// <param name="Pages">One or two.</param>
internal sealed record LogLeaf(LocalDate From, ImmutableArray<LogPage> Pages)
{
    public LocalDate Last => Pages[^1].Days[^1].Date;
}

/// <summary>
/// Cuts the season's days into leaves of the log. Where a page or leaf ends depends on the calendar alone and not on the day of printing or of the first
/// lamb, so that a change of one day's pace leaves all other leaves as they are.
/// </summary>
internal static class LogRhythm
{
    private const int PagesToALeaf = 2;
    private static readonly LocalDate Monday = new(1900, 1, 1);

    /// <summary>The days asked for; else from the as-of date to the end of the season, since days already past need no log.</summary>
    /// <param name="heavyDays">Heavy days that fit a page.</param>
    public static ImmutableArray<LogLeaf> Of(SheetContext context, int heavyDays)
    {
        var plan = context.Plan;
        var lambing = Lambing(plan);
        var days = context.OnlyDays is { } only ? plan.Rounds.Where(r => only.Contains(r.Date)) : plan.Rounds;
        var leaves = ImmutableArray.CreateBuilder<LogLeaf>();
        foreach (var leaf in Runs(days, d => Place(plan, lambing, d, heavyDays, context.LogsOnFronts ? 1 : PagesToALeaf)))
        {
            var pages = Runs(leaf.Where(d => context.OnlyDays is not null || d.Date >= plan.AsOf), d => Place(plan, lambing, d, heavyDays, 1))
                .Select(page => new LogPage(PaceOf(plan, lambing, page[0]), [.. page]));
            if (pages.ToImmutableArray() is { IsEmpty: false } printed)
            {
                leaves.Add(new LogLeaf(leaf[0].Date, printed));
            }
        }

        return leaves.ToImmutable();
    }

    /// <summary>Days of a pace are on the same sheet of so many pages when they have the same place.</summary>
    private static (LogPace Pace, int Sheet) Place(SeasonPlan plan, DateInterval? lambing, RoundDay day, int heavyDays, int pages)
    {
        var pace = PaceOf(plan, lambing, day);
        var number = Period.DaysBetween(Monday, day.Date);
        var sheet = pace switch
        {
            LogPace.QuietWeek => (number - (plan.Flock.Print.WeekStarts - IsoDayOfWeek.Monday) + 7) / 7 / pages,
            LogPace.HeavyDays => number / (heavyDays * pages),
            _ => number / pages,
        };
        return (pace, sheet);
    }

    private static IEnumerable<List<RoundDay>> Runs(IEnumerable<RoundDay> days, Func<RoundDay, (LogPace, int)> place)
    {
        var run = new List<RoundDay>();
        foreach (var day in days)
        {
            if (run.Count > 0 && place(run[0]) != place(day))
            {
                yield return run;
                run = [];
            }

            run.Add(day);
        }

        if (run.Count > 0)
        {
            yield return run;
        }
    }

    public static LogPace PaceOf(SeasonPlan plan, DateInterval? lambing, RoundDay day) =>
        lambing?.Contains(day.Date) == true ? LogPace.LambingDay
        : day.Times.Length > plan.Flock.Practice.ChecksPerDay.Normal ? LogPace.HeavyDays
        : LogPace.QuietWeek;

    /// <summary>
    /// The days with rows for each lambing. The first ewe may be early: they start when the first 5 % point is reached, or on the first due date if that
    /// is sooner. The last may be late: they go on to the last 95 % point, or to the last due date if that is later.
    /// </summary>
    /// <returns>Null when no ewe can be in lamb.</returns>
    public static DateInterval? Lambing(SeasonPlan plan)
    {
        if (plan.Dates is not { FirstDue: { } first, LastDue: { } last })
        {
            return null;
        }

        var (from, to) = (first, last);
        foreach (var due in plan.Ewes.Select(e => e.Due).OfType<DueWindow>())
        {
            from = LocalDate.Min(from, due.Earliest);
            to = LocalDate.Max(to, due.Latest);
        }

        return new DateInterval(from, to);
    }
}
