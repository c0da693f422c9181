using System.Diagnostics;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Pens;

/// <summary>Which ewe stands in which pen, and whether the shed is big enough.</summary>
internal static class HousingPlanner
{
    /// <summary>Every ewe of the season is reckoned in at once, those that have lambed or gone too: nobody's place moves when another lambs or dies.</summary>
    /// <param name="ewes">In the order of the flock file.</param>
    /// <param name="fed">Those that were to lamb this season.</param>
    /// <param name="fedAlike">Them, by classes that are to stand together.</param>
    /// <returns>The plan, and the pen of each, by tag; null where no pens are planned.</returns>
    public static (HousingPlan Plan, IReadOnlyDictionary<string, string>? Pens) Plan(Flock flock, IReadOnlyList<EwePlan> ewes, ImmutableArray<FedEwe> fed, ImmutableArray<FeedClass> fedAlike)
    {
        var pens = flock.Housing.Pens;
        if (flock.Housing.Lambing == LambingPlace.Outdoors || pens.IsEmpty)
        {
            return (HousingPlan.None, null);
        }

        // First due, most lambs first: who is left out, if anyone, is the last to lamb.
        var carrying = fed
            .OrderBy(e => e.Due.FirstPossible)
            .ThenByDescending(e => e.Plan.Litter)
            .ToImmutableArray();
        ImmutableArray<PenRoom> empty = [.. pens.Select(PenRoom.Of)];
        var housed = EwesThatFit.Choose([.. carrying.Select(e => RoomOf(flock, e.Plan.Ewe))], empty)
            .Select(i => carrying[i])
            .ToImmutableArray();
        var penOf = Place(flock, housed, fedAlike, empty);

        var average = Average(flock, carrying);
        ImmutableArray<PenPlan> plans = [.. pens.Select((pen, p) =>
            PlanOf(flock, pen, [.. ewes.Where(e => penOf.TryGetValue(e.Ewe.Tag, out var at) && at == p).Select(e => e.Ewe)], average))];
        ImmutableArray<Ewe> without = [.. carrying.Where(e => !penOf.ContainsKey(e.Tag)).Select(e => e.Plan.Ewe)];
        return (
            new HousingPlan(plans, without) { WithLambs = LambRoom.Of(flock.Feeds.Ground, [.. housed.Select(e => (e, RoomOf(flock, e.Plan.Ewe).Floor))], plans) },
            penOf.ToDictionary(p => p.Key, p => pens[p.Value].Name, StringComparer.Ordinal));
    }

    private static Dictionary<string, int> Place(
        Flock flock, ImmutableArray<FedEwe> housed, ImmutableArray<FeedClass> fedAlike, ImmutableArray<PenRoom> empty)
    {
        // Filled trough by trough: ewes that are fed alike together, those due first first.
        ImmutableArray<ImmutableArray<FedEwe>> classes =
        [
            .. fedAlike.Select(c => housed.Where(e => c.Has(e.Plan.Ewe)).OrderBy(e => e.Due.FirstPossible).ToImmutableArray()).Where(c => !c.IsEmpty),
        ];
        if (PenAllocation.Of([.. classes.Select(c => c.Select(e => RoomOf(flock, e.Plan.Ewe)).ToImmutableArray())], empty) is { } byClass)
        {
            return classes.SelectMany((c, i) => c.Zip(byClass[i])).ToDictionary(p => p.First.Tag, p => p.Second, StringComparer.Ordinal);
        }

        // So tight that the size of each ewe decides: better a mixed pen than a ewe outside.
        ImmutableArray<(FedEwe Ewe, int Class)> all = [.. classes.SelectMany((c, i) => c.Select(e => (e, i)))];
        ImmutableArray<RoomNeeded> rooms = [.. all.Select(e => RoomOf(flock, e.Ewe.Plan.Ewe))];
        ImmutableArray<int> classOf = [.. all.Select(e => e.Class)];
        var byRoom = SortedPens.Of(rooms, classOf, empty)?.ToArray();
        if (byRoom is null)
        {
            byRoom = Packed(flock, housed, all, rooms, empty);
            Regrouping.Swap(rooms, classOf, empty, byRoom);
        }

        return all.Zip(byRoom).ToDictionary(p => p.First.Ewe.Tag, p => p.Second, StringComparer.Ordinal);
    }

    /// <summary>Class by class; where the search finds no way in that order, in the one in which they were found to fit.</summary>
    private static int[] Packed(
        Flock flock, ImmutableArray<FedEwe> housed, ImmutableArray<(FedEwe Ewe, int Class)> all, ImmutableArray<RoomNeeded> rooms, ImmutableArray<PenRoom> empty)
    {
        if (PenPacking.Of(rooms, empty) is { } found)
        {
            return [.. found];
        }

        var byRoom = housed.OrderBy(e => RoomOf(flock, e.Plan.Ewe).Floor).ThenBy(e => RoomOf(flock, e.Plan.Ewe).Trough).ToImmutableArray();
        foreach (var order in new[] { housed, byRoom })
        {
            if (PenPacking.Of([.. order.Select(e => RoomOf(flock, e.Plan.Ewe))], empty) is { } asChosen)
            {
                var penOf = order.Zip(asChosen).ToDictionary(h => h.First.Tag, h => h.Second, StringComparer.Ordinal);
                return [.. all.Select(e => penOf[e.Ewe.Tag])];
            }
        }

        // They were chosen because they fit.
        throw new UnreachableException();
    }

    private static PenPlan PlanOf(Flock flock, Pen pen, ImmutableArray<Ewe> ewes, RoomNeeded average)
    {
        var room = PenRoom.Of(pen);
        var needed = ewes.Select(e => RoomOf(flock, e)).ToList();
        return new PenPlan(
            pen, ewes, needed.Sum(n => n.Floor), room.Floor, needed.Sum(n => n.Trough), room.Trough, room.Capacity(average), RoomNeeded.EwesWithLambs(room.Floor, flock.Feeds.Ground));
    }

    private static RoomNeeded Average(Flock flock, ImmutableArray<FedEwe> carrying)
    {
        var rooms = (carrying.IsEmpty ? flock.Ewes : [.. carrying.Select(e => e.Plan.Ewe)]).Select(e => RoomOf(flock, e)).ToList();
        return rooms.Count == 0
            ? RoomNeeded.For(EweWeights.Default, flock.Feeds.Ground, IsShorn(flock))
            : new RoomNeeded(rooms.Average(r => r.Floor), rooms.Average(r => r.Trough));
    }

    /// <summary>What she wants of a pen, by her weight, the ground and whether she is shorn when she goes in.</summary>
    public static RoomNeeded RoomOf(Flock flock, Ewe ewe) =>
        RoomNeeded.For(EweWeights.Of(flock, ewe), flock.Feeds.Ground, IsShorn(flock));

    private static bool IsShorn(Flock flock) => flock.Practice.Shear == Shearing.AtHousing;
}
