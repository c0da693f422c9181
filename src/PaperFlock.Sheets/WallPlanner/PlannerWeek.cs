using System.Collections.Immutable;
using NodaTime;

namespace PaperFlock.Sheets.WallPlanner;

/// <summary>One row of the planner, as data.</summary>
/// <param name="Days">Seven, from the week's first.</param>
/// <param name="Lines">What is done, a line a day.</param>
/// <param name="Rations">What a ewe of each litter size gets a day, in kilograms, in the order of the planner's litters; null before her feeding starts or after it ends.</param>
/// <param name="Past">The whole week lies before the as-of date.</param>
internal sealed record PlannerWeek(
    LocalDate Start,
    ImmutableArray<PlannerDay> Days,
    ImmutableArray<PlannerLine> Lines,
    int Rounds,
    bool HeavyRounds,
    ImmutableArray<decimal?> Rations,
    bool Past)
{
    /// <summary>Ewes may lamb in it.</summary>
    public bool IsLambing => Days.Any(d => d.ExpectedEwes >= 0.05);

    public bool IsBusy => !Lines.IsEmpty || IsLambing;
}

/// <param name="HasJob">Something is done that day.</param>
/// <param name="Low">10 % point of ewes lambing.</param>
/// <param name="High">90 % point.</param>
internal sealed record PlannerDay(LocalDate Date, bool HasJob, bool Free, bool SitterDay, double ExpectedEwes, int Low, int High);

/// <param name="Day">"Sun 14", or empty where the line is the whole week's.</param>
internal sealed record PlannerLine(string Day, string Words, bool Loud);
