using System.Collections.Immutable;
using System.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Pens;

/// <summary>Which ewe stands in which pen, and whether the shed is big enough.</summary>
internal static class HousingPlanner
{
    /// <summary>Every ewe still to lamb is reckoned in at once: a pen is not counted on to empty before the next ewes come in.</summary>
    /// <param name="ewes">In the order of the flock file.</param>
    public static HousingPlan Plan(Flock flock, IReadOnlyList<EwePlan> ewes)
    {
        var pens = flock.Housing.Pens;
        if (flock.Housing.Lambing == LambingPlace.Outdoors || pens.IsEmpty)
        {
            return HousingPlan.None;
        }

        // First due, most lambs first: who is left out, if anyone, is the last to lamb.
        var carrying = ewes.Where(e => e.IsCarrying)
            .OrderBy(e => e.DueOrThrow().FirstPossible)
            .ThenByDescending(e => e.Litter)
            .ToImmutableArray();
        ImmutableArray<PenRoom> empty = [.. pens.Select(PenRoom.Of)];
        var housed = EwesThatFit.Choose([.. carrying.Select(e => RoomOf(flock, e.Ewe))], empty)
            .Select(i => carrying[i])
            .ToImmutableArray();
        var penOf = Place(flock, housed, empty);

        var average = Average(flock, carrying);
        ImmutableArray<PenPlan> plans = [.. pens.Select((pen, p) =>
            PlanOf(flock, pen, [.. ewes.Where(e => penOf.TryGetValue(e.Ewe.Tag, out var at) && at == p).Select(e => e.Ewe)], average))];
        return new(plans, [.. carrying.Select(e => e.Ewe).Where(e => !penOf.ContainsKey(e.Tag))], FeedingClass.Of(flock, ewes));
    }

    private static Dictionary<string, int> Place(Flock flock, ImmutableArray<EwePlan> housed, ImmutableArray<PenRoom> empty)
    {
        var place = new Dictionary<string, int>(StringComparer.Ordinal);
        ImmutableArray<ImmutableArray<EwePlan>> classes =
            [.. FeedingClass.Of(flock, housed).Select(c => c.Ewes.OrderBy(e => e.DueOrThrow().FirstPossible).ToImmutableArray())];
        if (PenAllocation.Of([.. classes.Select(c => c.Select(e => RoomOf(flock, e.Ewe)).ToImmutableArray())], empty) is { } byClass)
        {
            foreach (var (ewe, pen) in classes.SelectMany((c, i) => c.Zip(byClass[i])))
            {
                place[ewe.Ewe.Tag] = pen;
            }

            return place;
        }

        // So tight that the size of each ewe decides: better a mixed pen than a ewe outside.
        ImmutableArray<(EwePlan Ewe, int Class)> all = [.. classes.SelectMany((c, i) => c.Select(e => (e, i)))];
        ImmutableArray<RoomNeeded> rooms = [.. all.Select(e => RoomOf(flock, e.Ewe.Ewe))];
        ImmutableArray<int> classOf = [.. all.Select(e => e.Class)];
        var byRoom = SortedPens.Of(rooms, classOf, empty)?.ToArray();
        if (byRoom is null)
        {
            byRoom = PenPacking.Of(rooms, empty)?.ToArray()
                // They were chosen because they fit.
                ?? throw new UnreachableException();
            Regrouping.Swap(rooms, classOf, empty, byRoom);
        }

        foreach (var (ewe, pen) in all.Zip(byRoom))
        {
            place[ewe.Ewe.Ewe.Tag] = pen;
        }

        return place;
    }

    private static PenPlan PlanOf(Flock flock, Pen pen, ImmutableArray<Ewe> ewes, RoomNeeded average)
    {
        var room = PenRoom.Of(pen);
        var needed = ewes.Select(e => RoomOf(flock, e)).ToList();
        return new PenPlan(
            pen, ewes, needed.Sum(n => n.Floor), room.Floor, needed.Sum(n => n.Trough), room.Trough, room.Capacity(average));
    }

    private static RoomNeeded Average(Flock flock, ImmutableArray<EwePlan> carrying)
    {
        var rooms = (carrying.IsEmpty ? flock.Ewes : [.. carrying.Select(e => e.Ewe)]).Select(e => RoomOf(flock, e)).ToList();
        return rooms.Count == 0
            ? RoomNeeded.For(EweWeights.Default, flock.Feeds.Ground, IsShorn(flock))
            : new RoomNeeded(rooms.Average(r => r.Floor), rooms.Average(r => r.Trough));
    }

    private static RoomNeeded RoomOf(Flock flock, Ewe ewe) =>
        RoomNeeded.For(EweWeights.Of(flock, ewe), flock.Feeds.Ground, IsShorn(flock));

    private static bool IsShorn(Flock flock) => flock.Practice.Shear == Shearing.AtHousing;
}
