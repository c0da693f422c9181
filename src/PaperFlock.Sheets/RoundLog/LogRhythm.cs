namespace PaperFlock.Sheets.RoundLog;

/// <summary>Days that share a side of the log.</summary>
/// <param name="Days">Consecutive, at least one; those that are over by the day of printing too.</param>
internal sealed record LogSide(ImmutableArray<RoundDay> Days)
{
    /// <summary>Of all its days, but for those on which nobody is in lamb yet.</summary>
    public RoundReason Why => Days[0].Why;
}

/// <summary>The front and the back of one leaf.</summary>
/// <param name="Sides">One or two.</param>
internal sealed record LogLeaf(ImmutableArray<LogSide> Sides)
{
    /// <summary>The first day that belongs to it, which may be over and no longer printed: its page code.</summary>
    public LocalDate From => Sides[0].Days[0].Date;

    public LocalDate Last => Sides[^1].Days[^1].Date;
}

/// <summary>
/// Cuts the season's days into leaves of the log. Where a side or leaf ends depends on the calendar alone and not on the day of printing or of the first
/// lamb, so that tomorrow prints the same ones, and a change of one day's pace leaves all other leaves as they are.
/// </summary>
internal static class LogRhythm
{
    private const int SidesToALeaf = 2;

    /// <summary>With less of the log left than this, more of it is printed.</summary>
    public const int LeastDaysLeft = 14;

    private static readonly LocalDate Monday = new(1900, 1, 1);

    /// <summary>The days asked for, counted from the first of them; else from the as-of date on as far as the log is to be printed ahead.</summary>
    /// <param name="daysASide">By why the rounds are as many as they are.</param>
    public static ImmutableArray<LogLeaf> Of(SheetContext context, Func<RoundReason, int> daysASide)
    {
        var (plan, only) = (context.Plan, context.OnlyDays);
        var origin = only?.Start ?? Monday.PlusDays(plan.Flock.Print.WeekStarts - IsoDayOfWeek.Monday);
        var sides = context.LogsOnFronts ? 1 : SidesToALeaf;
        if (only is { } set)
        {
            return [.. Sides(plan.Rounds.Where(r => set.Contains(r.Date))).Chunk(sides).Select(leaf => new LogLeaf([.. leaf]))];
        }

        var until = Until(context);
        return [.. Runs(plan.Rounds, day => Place(day, sides)).Select(leaf => new LogLeaf([.. Sides(leaf)])).Where(leaf => leaf.Last >= plan.AsOf && Middle(leaf) <= until)];

        IEnumerable<LogSide> Sides(IEnumerable<RoundDay> days) => Runs(days, day => Place(day, 1)).Select(side => new LogSide([.. side]));

        static LocalDate Middle(LogLeaf leaf) => leaf.From.PlusDays(Period.DaysBetween(leaf.From, leaf.Last) / 2);

        // Days of a pace are on the same sheet of so many sides when they have the same place.
        (RoundReason Why, int Sheet) Place(RoundDay day, int sides)
        {
            var why = day.Why == RoundReason.NoneInLamb ? RoundReason.OutsideHeavyWeeks : day.Why;
            return (why, Math.DivRem(Period.DaysBetween(origin, day.Date), daysASide(why) * sides).Quotient);
        }
    }

    /// <summary>Leaves are printed that lie before this day by half or more. What is in the binder already is enough for an issue of changes, until too little of it is left.</summary>
    private static LocalDate Until(SheetContext context)
    {
        var today = context.Plan.AsOf;
        return context.Mark.Issues.LastDayOf(RoundLogSheet.Definition.Code) is { } last && last >= today.PlusDays(LeastDaysLeft)
            ? last
            : today.PlusDays((NodaConstants.DaysPerWeek * context.Print.LogWeeks) - 1);
    }

    private static IEnumerable<List<RoundDay>> Runs(IEnumerable<RoundDay> days, Func<RoundDay, (RoundReason, int)> place)
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
}
