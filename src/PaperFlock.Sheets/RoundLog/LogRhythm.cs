using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Planning;

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
    private const int HeavyDaysAPage = 3;

    /// <summary>Pages from the as-of date to the end of the season; days already past need no log.</summary>
    public static ImmutableArray<LogPage> Of(SeasonPlan plan)
    {
        var pages = ImmutableArray.CreateBuilder<LogPage>();
        var run = new List<RoundDay>();
        foreach (var day in plan.Rounds.Where(r => r.Date >= plan.AsOf))
        {
            if (run.Count > 0 && StartsPage(plan, run, day))
            {
                pages.Add(new LogPage(Pace(plan, run[0]), [.. run]));
                run.Clear();
            }

            run.Add(day);
        }

        if (run.Count > 0)
        {
            pages.Add(new LogPage(Pace(plan, run[0]), [.. run]));
        }

        return pages.ToImmutable();
    }

    private static bool StartsPage(SeasonPlan plan, List<RoundDay> run, RoundDay day) => Pace(plan, day) != Pace(plan, run[0]) || Pace(plan, day) switch
    {
        LogPace.QuietWeek => day.Date.DayOfWeek == plan.Flock.Print.WeekStarts,
        LogPace.HeavyDays => run.Count == HeavyDaysAPage,
        _ => true,
    };

    private static LogPace Pace(SeasonPlan plan, RoundDay day)
    {
        if (plan.Dates is { FirstDue: { } first, LastDue: { } last } && day.Date >= LambingFrom(plan, first) && day.Date <= last)
        {
            return LogPace.LambingDay;
        }

        return day.Times.Length > plan.Flock.Practice.ChecksPerDay.Normal ? LogPace.HeavyDays : LogPace.QuietWeek;
    }

    /// <summary>The first ewe may be early: lambing rows start when the first 5 % point is reached, or on the first due date if that is sooner.</summary>
    private static LocalDate LambingFrom(SeasonPlan plan, LocalDate firstDue)
    {
        var earliest = plan.Ewes.Where(e => e.Due is not null).Select(e => e.Due!.Earliest).DefaultIfEmpty(firstDue).Min();
        return LocalDate.Min(earliest, firstDue);
    }
}
