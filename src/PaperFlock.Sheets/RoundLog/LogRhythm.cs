using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;

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

/// <summary>Cuts the season's days into pages of the log.</summary>
internal static class LogRhythm
{
    /// <summary>The days asked for; else from the as-of date to the end of the season, since days already past need no log.</summary>
    public static IEnumerable<RoundDay> DaysToLog(Stationery stationery) => stationery.OnlyDays is { } days
        ? stationery.Plan.Rounds.Where(r => days.Contains(r.Date))
        : stationery.Plan.Rounds.Where(r => r.Date >= stationery.Plan.AsOf);

    /// <param name="heavyDays">Heavy days that fit a page.</param>
    public static ImmutableArray<LogPage> Of(Stationery stationery, int heavyDays)
    {
        var plan = stationery.Plan;
        var pages = ImmutableArray.CreateBuilder<LogPage>();
        var run = new List<RoundDay>();
        foreach (var day in DaysToLog(stationery))
        {
            if (run.Count > 0 && StartsPage(plan, run, day, heavyDays))
            {
                pages.Add(new LogPage(PaceOf(plan, run[0]), [.. run]));
                run.Clear();
            }

            run.Add(day);
        }

        if (run.Count > 0)
        {
            pages.Add(new LogPage(PaceOf(plan, run[0]), [.. run]));
        }

        return pages.ToImmutable();
    }

    private static bool StartsPage(SeasonPlan plan, List<RoundDay> run, RoundDay day, int heavyDays) => PaceOf(plan, day) != PaceOf(plan, run[0]) || PaceOf(plan, day) switch
    {
        LogPace.QuietWeek => day.Date.DayOfWeek == plan.Flock.Print.WeekStarts,
        LogPace.HeavyDays => run.Count == heavyDays,
        _ => true,
    };

    public static LogPace PaceOf(SeasonPlan plan, RoundDay day)
    {
        if (plan.Dates is { FirstDue: { } first, LastDue: { } last } && day.Date >= LambingFrom(plan, first) && day.Date <= LambingTo(plan, last))
        {
            return LogPace.LambingDay;
        }

        return day.Times.Length > plan.Flock.Practice.ChecksPerDay.Normal ? LogPace.HeavyDays : LogPace.QuietWeek;
    }

    /// <summary>The last may be late: rows go on to the last 95 % point, or to the last due date if that is later.</summary>
    private static LocalDate LambingTo(SeasonPlan plan, LocalDate lastDue) =>
        LocalDate.Max(plan.Ewes.Where(e => e.Due is not null).Select(e => e.Due!.Latest).DefaultIfEmpty(lastDue).Max(), lastDue);

    /// <summary>The first ewe may be early: lambing rows start when the first 5 % point is reached, or on the first due date if that is sooner.</summary>
    private static LocalDate LambingFrom(SeasonPlan plan, LocalDate firstDue)
    {
        var earliest = plan.Ewes.Where(e => e.Due is not null).Select(e => e.Due!.Earliest).DefaultIfEmpty(firstDue).Min();
        return LocalDate.Min(earliest, firstDue);
    }
}
