using PaperFlock.Sheets.Jobs;

namespace PaperFlock.Sheets.WallPlanner;

/// <summary>The season cut into weeks, from the first check to a month after the last due date.</summary>
internal static class PlannerWeeks
{
    /// <summary>Litter sizes fed, smallest first: the columns of the feed figures.</summary>
    public static ImmutableArray<int> Litters(SeasonPlan plan) =>
        [.. plan.Feeding.Charts.Where(c => !c.IsForageOnly).Select(Litter).Distinct().Order()];

    private static int Litter(FeedChart chart) => (int)Math.Round(chart.Lambs, MidpointRounding.AwayFromZero);

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
        var days = Enumerable.Range(0, 7).Select(start.PlusDays).ToArray();
        var most = days.Max(d => rounds.GetValueOrDefault(d)?.Times.Length ?? 0);
        return new PlannerWeek(
            start,
            [.. days.Select(d => Day(plan, d, [.. jobs[d]]))],
            most,
            most > plan.Flock.Practice.ChecksPerDay.Normal,
            [.. Litters(plan).Select(l => Ration(plan, l, start))],
            days[6] < plan.AsOf);
    }

    private static PlannerDay Day(SeasonPlan plan, LocalDate date, ImmutableArray<JobLine> jobs)
    {
        var (keeper, lambing) = (plan.Flock.KeeperDays, plan.Lambing.On(date));
        return new PlannerDay(
            date, jobs, keeper.IsFreeWeekday(date), keeper.AbsenceOn(date), lambing?.ExpectedEwes ?? 0, lambing?.P10 ?? 0, lambing?.P90 ?? 0);
    }

    /// <summary>The ration in force on the first day of the week that has one, for that litter size.</summary>
    private static decimal? Ration(SeasonPlan plan, int litter, LocalDate start)
    {
        var rows = plan.Feeding.Charts.Where(c => Litter(c) == litter).SelectMany(c => c.Rows)
            .Where(r => r.From <= start.PlusDays(6) && r.To >= start)
            .ToArray();
        return rows.Length == 0 ? null : rows.Max(r => r.KgPerEwePerDay);
    }
}
