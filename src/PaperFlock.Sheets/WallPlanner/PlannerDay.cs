using PaperFlock.Sheets.Jobs;

namespace PaperFlock.Sheets.WallPlanner;

/// <summary>One day of the planner, as data.</summary>
/// <param name="Jobs">All that are shown on it, with a day or without.</param>
/// <param name="Away">The absence it is a day of; null when the keeper is there.</param>
internal sealed record PlannerDay(LocalDate Date, ImmutableArray<JobLine> Jobs, Absence? Away)
{
    public bool HasJob => !Jobs.IsEmpty;
}
