using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Planning;
using PaperFlock.Sheets.Jobs;
using PaperFlock.Sheets.Theme;

namespace PaperFlock.Sheets.WallPlanner;

/// <summary>The season cut into weeks, from the first check to a month after the last due date.</summary>
internal static class PlannerWeeks
{
    /// <summary>Litter sizes fed, smallest first: the columns of the feed figures.</summary>
    public static ImmutableArray<int> Litters(SeasonPlan plan) =>
        [.. plan.TroughGroups.Select(g => g.Litter).Distinct().Order()];

    public static ImmutableArray<PlannerWeek> Of(SeasonPlan plan)
    {
        var jobs = Jobs(plan).ToLookup(l => l.Job.ShownOn);
        var weeks = ImmutableArray.CreateBuilder<PlannerWeek>();
        var rounds = plan.Rounds.ToDictionary(r => r.Date);
        for (var start = FirstWeek(plan); start <= plan.To; start = start.PlusDays(7))
        {
            weeks.Add(Week(plan, start, jobs, rounds));
        }

        return weeks.ToImmutable();
    }

    /// <summary>Weeks that are over are left off: the wall's height goes to what is to come. A season that is over is shown whole.</summary>
    public static LocalDate FirstWeek(SeasonPlan plan) => plan.AsOf <= plan.From || plan.AsOf > plan.To
        ? plan.From
        : plan.From.PlusDays(Period.DaysBetween(plan.From, plan.AsOf) / 7 * 7);

    /// <summary>The rounds are the whole flock's: they grow with the first group, and the column beside says so. A day of which nothing is said is not boxed either.</summary>
    private static IEnumerable<JobLine> Jobs(SeasonPlan plan)
    {
        var firstHeavy = plan.Jobs.Where(j => j.Kind == JobKind.HeavyRounds).Min(j => j.Date);
        return JobLine.Of(plan).Where(l => l.Job.Date is null || l.Job.Kind != JobKind.HeavyRounds || l.Job.Date == firstHeavy);
    }

    private static PlannerWeek Week(SeasonPlan plan, LocalDate start, ILookup<LocalDate, JobLine> jobs, Dictionary<LocalDate, RoundDay> rounds)
    {
        var keeper = plan.Flock.KeeperDays;
        var days = Enumerable.Range(0, 7).Select(start.PlusDays).ToArray();
        var counts = days.Where(rounds.ContainsKey).Select(d => rounds[d].Times.Length).DefaultIfEmpty(0).ToArray();
        var lines = days.SelectMany(d => Lines(plan, d, jobs[d])).ToImmutableArray();
        var most = counts.Max();
        return new PlannerWeek(
            start,
            [.. days.Select(d => Day(plan, d, jobs[d].Any(), keeper.IsFreeWeekday(d), keeper.AbsenceOn(d) is not null))],
            lines,
            most,
            most > plan.Flock.Practice.ChecksPerDay.Normal,
            [.. Litters(plan).Select(l => Ration(plan, l, start))],
            days[6] < plan.AsOf);
    }

    private static PlannerDay Day(SeasonPlan plan, LocalDate date, bool hasJob, bool free, bool sitter)
    {
        var lambing = plan.Lambing.On(date);
        return new PlannerDay(date, hasJob, free, sitter, lambing?.ExpectedEwes ?? 0, lambing?.P10 ?? 0, lambing?.P90 ?? 0);
    }

    /// <summary>A line for the day's jobs, one for a sitter who starts that day, one that shouts for each job without a day.</summary>
    private static IEnumerable<PlannerLine> Lines(SeasonPlan plan, LocalDate day, IEnumerable<JobLine> jobs)
    {
        var placed = jobs.Where(l => l.Job.Date is not null).ToArray();
        if (placed.Length > 0)
        {
            var groups = placed.GroupBy(l => l.Groups).Select(g => string.Join(", ", g.Select(l => l.Title)) + Bracketed(g.Key));
            yield return new PlannerLine(DateText.WeekdayNumber(day), string.Join(" · ", groups), false);
        }

        foreach (var unplaced in jobs.Where(l => l.Job.Date is null))
        {
            var nearest = unplaced.Job.NearestDay is { } n ? $"Nearest day: {DateText.Short(n)}." : "";
            var words = $"for {unplaced.Title}{Bracketed(unplaced.Groups)}.";
            yield return new PlannerLine("NO DAY", Block.Sentences(words, nearest), true);
        }

        foreach (var away in plan.Flock.KeeperDays.Away.Where(a => a.From == day))
        {
            var to = DateText.Short(away.To);
            var holder = away.Sitter is { } sitter ? $"{sitter} has the pack, to {to}" : $"Sitter has the pack, to {to}";
            yield return new PlannerLine(DateText.WeekdayNumber(day), holder, true);
        }
    }

    private static string Bracketed(string groups) => groups.Length == 0 ? "" : $" ({groups})";

    /// <summary>The ration in force on the first day of the week that has one, for that litter size.</summary>
    private static decimal? Ration(SeasonPlan plan, int litter, LocalDate start)
    {
        var weeks = plan.TroughGroups.Where(g => g.Litter == litter).SelectMany(g => g.Weeks)
            .Where(w => w.WeekBeginning <= start.PlusDays(6) && w.WeekBeginning.PlusDays(6) >= start)
            .ToArray();
        return weeks.Length == 0 ? null : weeks.Max(w => w.KgPerEwePerDay);
    }
}
