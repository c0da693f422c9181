using PaperFlock.Sheets.Jobs;

namespace PaperFlock.Sheets.WallPlanner;

/// <summary>One row of the planner, as data.</summary>
/// <param name="Days">Seven, from the week's first.</param>
/// <param name="Rounds">A day, on the day that has most.</param>
/// <param name="Due">Whose likeliest day is in it, in order of that day.</param>
internal sealed record PlannerWeek(LocalDate Start, ImmutableArray<PlannerDay> Days, int Rounds, ImmutableArray<EwePlan> Due)
{
    public LocalDate Last => Start.PlusDays(6);

    public bool NamesMany => Due.Length > 1;

    private bool SaysSomething => !Due.IsEmpty || Days.Any(d => d.HasJob || d.Away is not null);

    /// <summary>The weeks of the season, those that are over as well, to the last of which anything is said.</summary>
    public static ImmutableArray<PlannerWeek> Of(SeasonPlan plan)
    {
        var weeks = new List<PlannerWeek>();
        var jobs = JobLine.Of(plan, plan.Jobs).ToLookup(l => l.Job.ShownOn);
        var rounds = plan.Rounds.ToDictionary(r => r.Date, r => r.Times.Length);
        for (var start = plan.From; start <= plan.To; start = start.PlusDays(7))
        {
            var (first, last) = (start, start.PlusDays(6));
            ImmutableArray<PlannerDay> days =
                [.. Enumerable.Range(0, 7).Select(start.PlusDays).Select(d => new PlannerDay(d, [.. jobs[d]], plan.Flock.KeeperDays.AbsenceOn(d)))];
            weeks.Add(new PlannerWeek(
                start,
                days,
                days.Max(d => rounds.GetValueOrDefault(d.Date)),
                [.. plan.Ewes.Where(e => e.Due?.Likely >= first && e.Due.Likely <= last).OrderBy(e => e.Due!.Likely)]));
        }

        return [.. weeks.Take(1 + weeks.FindLastIndex(w => w.SaysSomething))];
    }
}
