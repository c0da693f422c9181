using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;
using PaperFlock.Planning.Places;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>Feeding alone, of ewes made in code, without the rest of a plan.</summary>
internal static class FedFlock
{
    public static readonly LocalDate To = new(2027, 3, 31);

    /// <param name="housed">The day all go in; null: they stay out.</param>
    /// <param name="pen">Of each ewe; null: those housed have none.</param>
    public static FeedingPlan Plan(Flock flock, ImmutableArray<EwePlan> ewes, LocalDate? housed = null, Func<Ewe, string?>? pen = null)
    {
        var fed = FedEwe.Of(flock, ewes, _ => housed);
        var moves = new EweMoves(_ => null, _ => null, _ => housed, e => pen?.Invoke(e));
        var still = ewes.Select(e => e with { Standing = e.Standing == Standing.Lambed ? Standing.ToLamb : e.Standing, Ewe = e.Ewe with { Lambed = null } });
        return FeedingPlanner.Plan(
            flock, ewes, fed, FeedClasses.Of(flock, fed),
            WhereaboutsPlanner.Plan(flock, still, flock.Season.TupIn, To, moves),
            WhereaboutsPlanner.Plan(flock, ewes, flock.Season.TupIn, To, moves));
    }

    public static FeedChart Chart(this FeedingPlan plan, FeedKind kind) => Assert.Single(plan.Charts, c => c.Kind == kind);

    /// <summary>By the energy sum of the default hay, kept out until a week before lambing.</summary>
    public static Flock Stepped(ImmutableArray<EwePlan> ewes, Func<Feeds, Feeds>? change = null) =>
        FeedingSample.Flock(ewes).WithFeeds(f => (change ?? (x => x))(f with { Method = FeedMethod.Stepped, PerLamb = null }));
}
