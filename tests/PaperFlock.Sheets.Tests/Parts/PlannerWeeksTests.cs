using PaperFlock.Planning;
using PaperFlock.Sheets.Tests.WorstCases;
using PaperFlock.Sheets.WallPlanner;

namespace PaperFlock.Sheets.Tests.Parts;

public sealed class PlannerWeeksTests
{
    [Fact]
    public void A_heavy_box_stands_round_a_day_of_which_something_is_said_and_round_no_other()
    {
        var flock = new FlockText
        {
            Season = "tup-in: 2026-08-10",
            Groups = ["{name: Orchard}", "{name: Paddock, tup-in: 2026-08-27}"],
            Ewes = FlockText.Many(6, n => $"group: {(n % 2 == 0 ? "Orchard" : "Paddock")}, scan: 2"),
        };
        var plan = flock.On(new(2026, 8, 1)).Plan;

        // The second group's heavy rounds are a job that the planner leaves to its column of rounds.
        Assert.Equal(2, plan.Jobs.Where(j => j.Kind == JobKind.HeavyRounds).Select(j => j.Date).Distinct().Count());
        foreach (var week in PlannerWeeks.Of(plan))
        {
            Assert.Equal(
                week.Days.SelectMany(d => d.Lines()).Select(l => l.Day).Where(d => d != "NO DAY").Distinct(),
                week.Days.Where(d => d.HasJob).Select(d => DateText.WeekdayNumber(d.Date)));
        }
    }
}
