using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Feeding;

/// <summary>Who is fed by one chart: by lambs and due week, so that no ewe is parted alone and nobody shares a trough with a ewe of
/// another chart.</summary>
internal static class FeedClasses
{
    /// <summary>Classes whose rations are never so far apart are one, kg a day.</summary>
    private const decimal Alike = 0.1m;

    /// <param name="ewes">In the order of the flock file.</param>
    /// <param name="companies">Who is together in one place, ewes that have lambed since included.</param>
    /// <param name="fitsParted">Whether so many ewes of a place can be parted into so many troughs.</param>
    public static ImmutableArray<FeedClass> Of(
        Flock flock, ImmutableArray<FedEwe> ewes, IReadOnlyList<(Place Place, ImmutableArray<Ewe> Ewes)> companies, Func<Place, ImmutableArray<Ewe>, int, bool> fitsParted)
    {
        var classes = ewes.GroupBy(e => e.Kind).OrderBy(g => g.Key).SelectMany(g => ByDueWeek(flock, [.. g])).ToList();
        if (flock.Feeds.Parted == Parting.ByLambs)
        {
            NobodyAlone(classes, companies);
        }

        foreach (var (place, company) in companies)
        {
            if (flock.Feeds.Parted == Parting.No || !fitsParted(place, company, classes.Count(c => company.Any(c.Has))))
            {
                Unite(classes, company);
            }
        }

        if (flock.Feeds.Parted == Parting.ByLambs)
        {
            NobodyAlone(classes, companies);
        }

        return [.. classes.OrderBy(c => c.Kind).ThenBy(c => c.FirstOwn)];
    }

    private static IEnumerable<FeedClass> ByDueWeek(Flock flock, ImmutableArray<FedEwe> ewes)
    {
        FeedClass? last = null;
        foreach (var week in ewes.GroupBy(e => KeeperWeek.FirstDay(e.Anchor, flock.ChangeDay)).OrderBy(g => g.Key))
        {
            var next = new FeedClass(ewes[0].Kind, [.. week], []);
            if (last is not null && Differ(flock, last, next) >= Alike)
            {
                yield return last;
                last = next;
            }
            else
            {
                last = last?.With(next) ?? next;
            }
        }

        if (last is not null)
        {
            yield return last;
        }
    }

    /// <summary>The furthest their rations are apart on any day, kg.</summary>
    private static decimal Differ(Flock flock, FeedClass a, FeedClass b)
    {
        var (first, second) = (a.Parts(flock)[0], b.Parts(flock)[0]);
        var most = 0m;
        for (var week = first.Start < second.Start ? second.Start : first.Start; week <= b.Anchor.PlusWeeks(1); week = week.PlusWeeks(1))
        {
            most = Math.Max(most, Math.Abs(first.In(week).Plain - second.In(week).Plain));
        }

        return most;
    }

    private static void NobodyAlone(List<FeedClass> classes, IReadOnlyList<(Place Place, ImmutableArray<Ewe> Ewes)> companies)
    {
        // Every round makes two classes one, or moves a ewe that was not moved before.
        for (var i = 0; i < companies.Count; i++)
        {
            if (Alone(classes, companies[i].Ewes) is not { } alone)
            {
                continue;
            }

            Join(classes, alone.Class, alone.Ewe, alone.With);
            i = -1;
        }
    }

    private static void Join(List<FeedClass> classes, FeedClass left, FedEwe ewe, FeedClass with)
    {
        classes.Remove(left);
        classes.Remove(with);
        if (left.Kind == with.Kind || left.Kind == FeedKind.Mixed || left.Joined.Contains(ewe))
        {
            classes.Add(with.With(left));
            return;
        }

        var stays = left.Own.Remove(ewe);
        classes.Add(with with { Joined = [.. with.Joined, ewe, .. stays.IsEmpty ? left.Joined : []] });
        if (!stays.IsEmpty)
        {
            classes.Add(left with { Own = stays });
        }
    }

    /// <summary>A ewe that would eat by herself beside others, and whom she eats with instead: her own kind, else the one above, else the one below.</summary>
    private static (FeedClass Class, FedEwe Ewe, FeedClass With)? Alone(List<FeedClass> classes, ImmutableArray<Ewe> company)
    {
        var here = classes.Select(c => (Class: c, Ewes: c.All.Where(e => company.Any(o => o.Tag == e.Tag)).ToList())).Where(c => c.Ewes.Count > 0).ToList();
        if (here.Count < 2 || here.FirstOrDefault(c => c.Ewes.Count == 1) is not { Class: { } left } lonely)
        {
            return null;
        }

        var others = here.Select(c => c.Class).Where(c => !ReferenceEquals(c, left)).ToList();
        FeedClass Nearest(IEnumerable<FeedClass> of) => of.MinBy(c => Math.Abs(Period.DaysBetween(c.Anchor, lonely.Ewes[0].Anchor)))!;
        var with = others.Any(c => c.Kind == left.Kind) ? Nearest(others.Where(c => c.Kind == left.Kind))
            : others.Any(c => c.Rank > left.Rank) ? Nearest(others.GroupBy(c => c.Rank).Where(g => g.Key > left.Rank).MinBy(g => g.Key)!)
            : Nearest(others.GroupBy(c => c.Rank).MaxBy(g => g.Key)!);
        return (left, lonely.Ewes[0], with);
    }

    /// <summary>Makes one class of all ewes of a company, whatever class they were in; who stands elsewhere keeps hers.</summary>
    private static void Unite(List<FeedClass> classes, ImmutableArray<Ewe> company)
    {
        var here = classes.Where(c => company.Any(c.Has)).ToList();
        if (here.Count < 2)
        {
            return;
        }

        var moved = new List<FedEwe>();
        foreach (var each in here)
        {
            classes.Remove(each);

            // Mixed ewes stay together wherever they stand, or the next company would undo what this one did.
            var stays = each.Kind == FeedKind.Mixed ? [] : each.Own.Where(e => company.All(o => o.Tag != e.Tag)).ToImmutableArray();
            moved.AddRange(each.All.Except(stays));
            if (!stays.IsEmpty)
            {
                classes.Add(new FeedClass(each.Kind, stays, []));
            }
        }

        var kinds = moved.Select(e => e.Kind).Distinct().ToList();
        classes.Add(new FeedClass(kinds.Count == 1 ? kinds[0] : FeedKind.Mixed, [.. moved], []));
    }
}
