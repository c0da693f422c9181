using PaperFlock.Planning.Dates;
using PaperFlock.Planning.Feeding;
using PaperFlock.Planning.Jobs;
using PaperFlock.Planning.Lambing;
using PaperFlock.Planning.Pens;
using PaperFlock.Planning.Places;
using PaperFlock.Planning.Rounds;
using PaperFlock.Planning.Stores;
using PaperFlock.Planning.Warnings;

namespace PaperFlock.Planning;

/// <summary>The front door of this room: a flock and a day in, the whole plan out. Pure.</summary>
public static class SeasonPlanner
{
    /// <summary>The paper goes on this long after the last lambs are due, for those that come late and for the lambs' first weeks.</summary>
    private const int DaysAfterLastDue = 30;

    /// <param name="asOf">Stands in for today: it decides what there is to warn of, never a date.</param>
    public static SeasonPlan Plan(Flock flock, LocalDate asOf)
    {
        var dated = EwePlans.Of(flock);
        var due = flock.Groups.Select(g => new GroupPlan(g, Due(flock, g, dated), Housed: null)).ToList();
        var jobs = JobPlanner.Plan(flock, due);
        ImmutableArray<GroupPlan> groups = [.. due.Select(g => g with { Housed = HousedOn(g.Group, jobs) })];
        var dates = new SeasonDates(
            flock.Groups.Min(g => g.TupIn),
            flock.Groups.Max(g => g.TupOut),
            groups.Min(g => g.FirstDue),
            groups.Max(g => g.LastDue));

        // Each of these stands on those before it: pens decide who is fed together, and the feeding what is to be bought.
        var housedOn = groups.ToDictionary(g => g.Group.Name, g => g.Housed, StringComparer.Ordinal);
        var fed = FedEwe.Of(flock, dated, ewe => housedOn[ewe.Ewe.Group]);
        var (from, to) = Covered(flock, jobs, dates.LastDue);
        var known = LocalDate.Min(from, asOf);
        ImmutableArray<EwePlan> stillInLamb = [.. dated.Select(EwePlans.InLambStill)];
        var sorted = Sorting.Moves(flock, fed, jobs);
        var inFields = FeedingPlanner.Classes(flock, fed, FeedClasses.Of(flock, fed), WhereaboutsPlanner.Plan(flock, stillInLamb, known, to, sorted));
        var (housing, pens) = HousingPlanner.Plan(flock, dated, fed, inFields);
        var moves = sorted.Into(pens, ewe => housedOn[ewe.Group]);
        var whereabouts = WhereaboutsPlanner.Plan(flock, dated, known, to, moves);
        var feeding = FeedingPlanner.Plan(flock, dated, fed, inFields, WhereaboutsPlanner.Plan(flock, stillInLamb, known, to, moves), whereabouts);
        ImmutableArray<EwePlan> ewes = [.. dated.Select(e => e with { Chart = feeding.CodeOf(e.Ewe), Pen = e.IsCarrying ? pens?.GetValueOrDefault(e.Ewe.Tag) : null })];
        var stores = StoresPlanner.Plan(flock, feeding, fed);
        var all = JobPlanner.Sorted(flock, [.. jobs, .. FeedJobs.Of(feeding)]);
        return new(flock, asOf)
        {
            Dates = dates,
            From = from,
            To = to,
            Groups = groups,
            Ewes = ewes,
            Jobs = all,
            Gatherings = Gathering.Of(all),
            Whereabouts = whereabouts,
            Feeding = feeding,
            Stores = stores,
            Lambing = LambingCurvePlanner.Plan(flock, ewes),
            Outcome = SeasonOutcome.Of(flock, ewes),
            Housing = housing,
            Rounds = RoundPlanner.Plan(flock, dates, from, to, Lambing(fed, dates.LastDue), feeding.FedAt),
            Warnings = PlanWarnings.Of(flock, asOf, groups, ewes, jobs, housing),
        };
    }

    /// <summary>Ewes that have lambed count as if they had not, so that a lambing moves no round.</summary>
    private static DateInterval? Lambing(ImmutableArray<FedEwe> ewes, LocalDate? lastDue) =>
        ewes.IsEmpty ? null : new(ewes.Min(e => e.Due.Earliest), ewes.Select(e => e.Due.Latest).Append(lastDue ?? LocalDate.MinIsoValue).Max());

    /// <summary>Nothing is due any more in a group of which no ewe is left to lamb, or with lambs; as long as there is one, losses move no job.</summary>
    private static GroupDueDates? Due(Flock flock, TuppingGroup group, ImmutableArray<EwePlan> ewes) =>
        ewes.Any(e => e.Ewe.Group == group.Name && e.Standing is Standing.ToLamb or Standing.Lambed) ? GroupDueDates.Of(flock, group, ewes) : null;

    private static LocalDate? HousedOn(TuppingGroup group, ImmutableArray<Job> jobs) =>
        jobs.FirstOrDefault(j => j.Kind == JobKind.House && j.Group == group)?.ShownOn;

    /// <summary>Whole weeks at the start, so that the planner's first row is full; at the end the day itself.</summary>
    private static (LocalDate From, LocalDate To) Covered(Flock flock, ImmutableArray<Job> jobs, LocalDate? lastDue)
    {
        var from = KeeperWeek.FirstDay(jobs[0].ShownOn, flock.Print.WeekStarts);
        var last = jobs[^1].ShownOn;
        return (from, lastDue?.PlusDays(DaysAfterLastDue) is { } after && after > last ? after : last);
    }
}
