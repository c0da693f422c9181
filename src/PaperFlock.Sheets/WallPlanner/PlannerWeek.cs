namespace PaperFlock.Sheets.WallPlanner;

/// <summary>One row of the planner, as data.</summary>
/// <param name="Days">Seven, from the week's first.</param>
/// <param name="Rations">What a ewe of each litter size gets a day, in kilograms, in the order of the planner's litters; null before her feeding starts or after it ends.</param>
/// <param name="Past">The whole week lies before the as-of date.</param>
internal sealed record PlannerWeek(
    LocalDate Start, ImmutableArray<PlannerDay> Days, int Rounds, bool HeavyRounds, ImmutableArray<decimal?> Rations, bool Past)
{
    /// <summary>Ewes may lamb in it.</summary>
    public bool IsLambing => Days.Any(d => d.ExpectedEwes >= 0.05);

    public bool IsBusy => IsLambing || Days.Any(d => d.HasJob || d.SitterBegins);
}
