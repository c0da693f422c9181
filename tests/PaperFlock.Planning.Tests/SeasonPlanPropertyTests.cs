using NodaTime;

namespace PaperFlock.Planning.Tests;

public class SeasonPlanPropertyTests
{
    private static readonly LocalDate AsOf = new(2026, 11, 30);

    /// <summary>One flock, one plan, every property: making the plan is most of the work.</summary>
    [Fact]
    public void The_parts_of_any_plan_agree() =>
        AnyFlock.Drawn.Sample(
            flock => PlanParts.Agree(SeasonPlanner.Plan(flock, AsOf)),
            iter: 300);

    [Fact]
    public void Planning_twice_gives_the_same_plan() =>
        AnyFlock.Drawn.Sample(flock => PlanAssert.Same(SeasonPlanner.Plan(flock, AsOf), SeasonPlanner.Plan(flock, AsOf)), iter: 100);
}
