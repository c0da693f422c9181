using PaperFlock.Planning;
using PaperFlock.Sheets.Tests.WorstCases;
using PaperFlock.Sheets.WallPlanner;

namespace PaperFlock.Sheets.Tests.Parts;

public sealed class PlannerWeekTests
{
    private static readonly SeasonPlan Plan = new FlockText
    {
        Season = "tup-in: 2026-08-10",
        Groups = ["{name: Orchard}", "{name: Paddock, tup-in: 2026-08-27}"],
        Ewes = FlockText.Many(6, n => $"group: {(n % 2 == 0 ? "Orchard" : "Paddock")}, scan: 2"),
    }.On(new(2026, 8, 1)).Plan;

    [Fact]
    public void What_the_first_group_makes_the_whole_flocks_is_said_once()
    {
        Assert.Equal(2, Plan.Jobs.Where(j => j.Kind == JobKind.HeavyRounds).Select(j => j.Date).Distinct().Count());
        Assert.Single(PlannerWeek.Of(Plan).SelectMany(w => w.Days).SelectMany(d => d.Jobs), l => l.Job.Kind == JobKind.HeavyRounds);
    }

    [Fact]
    public void The_planner_ends_with_the_last_week_of_which_anything_is_said()
    {
        var weeks = PlannerWeek.Of(Plan);
        Assert.True(weeks[^1].Last < Plan.To);
        Assert.Equal(Plan.Jobs.Max(j => j.ShownOn), weeks[^1].Days.Last(d => d.HasJob).Date);
    }

    [Fact]
    public void Every_ewe_in_lamb_is_due_in_one_week() =>
        Assert.Equal(Plan.Ewes.Where(e => e.IsCarrying).Select(e => e.Ewe.Tag).Order(), PlannerWeek.Of(Plan).SelectMany(w => w.Due).Select(e => e.Ewe.Tag).Order());
}
