using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning;

/// <summary>The front door of this room: a flock and a day in, the whole plan out. Pure.</summary>
public static class SeasonPlanner
{
    /// <param name="asOf">Stands in for today.</param>
    public static SeasonPlan Plan(Flock flock, LocalDate asOf) => throw new NotSupportedException($"{flock.Holding.Name} {asOf}");
}
