namespace PaperFlock.Planning.Feeding;

/// <summary>Who is fed by one chart: by lambs and due week, so that no ewe is parted alone and nobody shares a trough with a ewe of
/// another chart. Few classes, and by whole weeks: each is a trough to fill and a chart to read, and a ewe scanned again should leave the others as they are.</summary>
internal sealed class FeedClasses
{
    /// <summary>Ewes due in fewer weeks than these are fed alike; about as far apart as a tup's two rounds of the flock. Common practice, no source.</summary>
    private const int WeeksAlike = 2;

    /// <summary>Classes whose rations are never so far apart are one, kg a day.</summary>
    private const decimal Alike = 0.1m;

    /// <summary>Fewer ewes have no trough of their own beside others of their kind; common practice, no source.</summary>
    private const int Fewest = 3;

    /// <summary>A ewe that has been moved so often and is still alone brings the two classes together.</summary>
    private const int MostMoves = 2;

    private readonly List<FeedClass> _classes;
    private readonly Dictionary<string, int> _moves = new(StringComparer.Ordinal);

    private FeedClasses(IEnumerable<FeedClass> classes) => _classes = [.. classes];

    /// <summary>By lambs and due week, wherever they stand.</summary>
    /// <param name="ewes">In the order of the flock file.</param>
    public static ImmutableArray<FeedClass> Of(Flock flock, ImmutableArray<FedEwe> ewes) =>
        [.. ewes.GroupBy(e => e.Kind).OrderBy(g => g.Key).SelectMany(g => ByDueWeek(flock, [.. g]))];

    /// <summary>The same, once it is seen who stands together.</summary>
    /// <param name="companies">Who is together in one place, ewes that have lambed since included.</param>
    /// <param name="fitsParted">Whether so many ewes of a place can be parted into so many troughs.</param>
    public static ImmutableArray<FeedClass> Settled(
        Flock flock,
        ImmutableArray<FeedClass> classes,
        IReadOnlyList<(Place Place, ImmutableArray<Ewe> Ewes)> companies,
        Func<Place, ImmutableArray<Ewe>, int, bool> fitsParted)
    {
        var settling = new FeedClasses(classes);
        var parted = flock.Feeds.Parted == Parting.ByLambs;
        settling.NobodyAlone(parted ? companies : []);
        foreach (var (place, company) in companies)
        {
            while (settling.In(company) is { Count: > 1 } here && !(parted && fitsParted(place, company, here.Count)))
            {
                settling.Unite(company, parted ? Nearest(here) : here, whole: !parted);
            }
        }

        settling.NobodyAlone(parted ? companies : []);
        return [.. settling._classes.OrderBy(c => c.Kind).ThenBy(c => c.FirstOwn)];
    }

    private List<FeedClass> In(ImmutableArray<Ewe> company) => [.. _classes.Where(c => company.Any(c.Has))];

    /// <summary>The two whose ewes want the most alike.</summary>
    private static List<FeedClass> Nearest(List<FeedClass> classes)
    {
        var byNeed = classes.OrderBy(c => c.Rank).ThenByDescending(c => c.Anchor).ToList();
        return [.. byNeed.Zip(byNeed.Skip(1)).MinBy(p => p.Second.Rank - p.First.Rank) is var (first, second) ? new[] { first, second } : []];
    }

    private static IEnumerable<FeedClass> ByDueWeek(Flock flock, ImmutableArray<FedEwe> ewes)
    {
        List<FeedClass> weeks = [.. ewes.GroupBy(e => e.Anchor).OrderBy(g => g.Key).Select(g => new FeedClass(ewes[0].Kind, [.. g], []))];
        var last = weeks[0];
        for (var i = 1; i < weeks.Count; i++)
        {
            var next = weeks[i];
            var later = weeks.Skip(i).Sum(w => w.Own.Length);
            if (next.Anchor >= last.Anchor.PlusWeeks(WeeksAlike) && last.Own.Length >= Fewest && later >= Fewest && Differ(flock, last, next) >= Alike)
            {
                yield return last;
                last = next;
            }
            else
            {
                last = last.With(next);
            }
        }

        yield return last;
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

    private void NobodyAlone(IReadOnlyList<(Place Place, ImmutableArray<Ewe> Ewes)> companies)
    {
        // Every round makes two classes one, or moves a ewe that may be moved.
        for (var i = 0; i < companies.Count; i++)
        {
            if (Alone(companies[i].Ewes) is { } alone)
            {
                Join(alone.Class, alone.Ewe, alone.With);
                i = -1;
            }
        }
    }

    private void Join(FeedClass left, FedEwe ewe, FeedClass with)
    {
        _classes.Remove(left);
        _classes.Remove(with);
        if (_moves.GetValueOrDefault(ewe.Tag) >= MostMoves)
        {
            _classes.Add(with.With(left));
            return;
        }

        _moves[ewe.Tag] = _moves.GetValueOrDefault(ewe.Tag) + 1;
        var stays = left with { Own = left.Own.Remove(ewe), Joined = left.Joined.Remove(ewe) };
        var grown = with.Kind == ewe.Kind ? with with { Own = [.. with.Own, ewe] } : with with { Joined = [.. with.Joined, ewe] };
        _classes.AddRange(stays.Own.IsEmpty ? [grown with { Joined = [.. grown.Joined, .. stays.Joined] }] : [grown, stays]);
    }

    /// <summary>A ewe that would eat by herself beside others, or one of a few beside more of their kind, and whom she eats with instead: her own kind, else the one above, else the one below.</summary>
    private (FeedClass Class, FedEwe Ewe, FeedClass With)? Alone(ImmutableArray<Ewe> company)
    {
        var here = _classes.Select(c => (Class: c, Ewes: c.All.Where(e => company.Any(o => o.Tag == e.Tag)).ToList())).Where(c => c.Ewes.Count > 0).ToList();
        if (here.Count < 2 || here.FirstOrDefault(c => c.Ewes.Count < (here.Any(o => o != c && o.Class.Kind == c.Class.Kind) ? Fewest : 2)) is not { Class: { } left } lonely)
        {
            return null;
        }

        var ewe = lonely.Ewes[0];
        var others = here.Select(c => c.Class).Where(c => !ReferenceEquals(c, left)).ToList();
        FeedClass Closest(IEnumerable<FeedClass> of) => of.MinBy(c => Math.Abs(Period.DaysBetween(c.Anchor, ewe.Anchor)))!;
        var with = others.Any(c => c.Kind == ewe.Kind) ? Closest(others.Where(c => c.Kind == ewe.Kind))
            : others.Any(c => c.Rank > ewe.Lambs) ? Closest(others.GroupBy(c => c.Rank).Where(g => g.Key > ewe.Lambs).MinBy(g => g.Key)!)
            : Closest(others.GroupBy(c => c.Rank).MaxBy(g => g.Key)!);
        return (left, ewe, with);
    }

    /// <summary>Makes one class of those ewes of a company that are in some classes; who stands elsewhere keeps hers, unless all are of one kind.</summary>
    /// <param name="whole">Nobody keeps hers: where no place is parted, one that stays behind would share a trough again elsewhere.</param>
    private void Unite(ImmutableArray<Ewe> company, List<FeedClass> here, bool whole)
    {
        if (whole || here.All(c => c.Kind == here[0].Kind))
        {
            _classes.RemoveAll(here.Contains);
            _classes.Add(here.Aggregate((one, other) => one.With(other)));
            return;
        }

        var moved = new List<FedEwe>();
        foreach (var each in here)
        {
            _classes.Remove(each);

            // Mixed ewes stay together wherever they stand, or the next company would undo what this one did.
            var stays = each.Kind == FeedKind.Mixed ? [] : each.Own.Where(e => company.All(o => o.Tag != e.Tag)).ToImmutableArray();
            moved.AddRange(each.All.Except(stays));
            if (!stays.IsEmpty)
            {
                _classes.Add(new FeedClass(each.Kind, stays, []));
            }
        }

        var kinds = moved.Select(e => e.Kind).Distinct().ToList();
        _classes.Add(new FeedClass(kinds.Count == 1 ? kinds[0] : FeedKind.Mixed, [.. moved], []));
    }
}
