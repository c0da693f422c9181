using PaperFlock.Planning.Dates;
using PaperFlock.Planning.Pens;

namespace PaperFlock.Planning.Feeding;

/// <summary>Who is fed with whom, where, how much and when.</summary>
internal static class FeedingPlanner
{
    /// <param name="fed">Ewes that were to lamb this season.</param>
    /// <param name="inFields">Their classes before they are housed.</param>
    /// <param name="ifNobodyLambed">Where each of them would stand: charts are made by it, so that a lambing moves none.</param>
    /// <param name="whereabouts">Where each stands as the file has it: troughs are filled by it.</param>
    public static FeedingPlan Plan(
        Flock flock, ImmutableArray<EwePlan> ewes, ImmutableArray<FedEwe> fed, ImmutableArray<FeedClass> inFields, Whereabouts ifNobodyLambed, Whereabouts whereabouts)
    {
        var classes = Classes(flock, fed, inFields, ifNobodyLambed);
        var numbers = Numbers(flock, classes);
        var charts = classes.Select((c, i) => (Class: c, Number: numbers[i])).ToList();
        var codeOf = charts.SelectMany(c => c.Class.All.Select(e => (e.Tag, Code: FeedCodes.Of(c.Class.Kind, c.Number))))
            .ToDictionary(c => c.Tag, c => c.Code, StringComparer.Ordinal);
        ImmutableArray<EwePlan> placed = [.. ewes.Select(e => e with { Chart = codeOf.GetValueOrDefault(e.Ewe.Tag) })];
        var planOf = placed.ToDictionary(e => e.Ewe.Tag, StringComparer.Ordinal);
        ImmutableArray<FeedChart> made = [.. charts.Select(c => Chart(flock, c.Class, c.Number, planOf, ifNobodyLambed))];
        ImmutableArray<EwePlan> without = [.. placed.Where(e => e.Standing is (Standing.Empty or Standing.LeftOut or Standing.LostLambs) || (e.Standing == Standing.Lambed && e.LambsAtFoot == 0))];
        return new(
            made,
            Troughs.Of(flock, placed, made, whereabouts),
            LambedRations.Of(flock, fed, made),
            without,
            Sorts(placed, whereabouts),
            FeedWarnings.Of(flock, fed, classes, made));
    }

    /// <summary>Who is fed alike, by who stands together.</summary>
    /// <param name="classes">To begin with.</param>
    public static ImmutableArray<FeedClass> Classes(Flock flock, ImmutableArray<FedEwe> fed, ImmutableArray<FeedClass> classes, Whereabouts ifNobodyLambed)
    {
        // Who has not begun yet stands there all the same, and eats with her class when it does.
        var first = fed.Select(e => FedFrom(flock, e)).DefaultIfEmpty(ifNobodyLambed.From).Min();
        var together = Together.Spans(
            from ewe in fed
            from stay in ifNobodyLambed.Of(ewe.Plan.Ewe)
            where stay.State == EweState.InLamb && stay.To >= first
            select (stay.Place, LocalDate.Max(stay.From, first), stay.To, ewe.Plan.Ewe));
        List<(Place Place, ImmutableArray<Ewe> Ewes)> companies =
            [.. together.Select(t => (t.Key, t.Ewes)).DistinctBy(t => (t.Key, string.Join('\n', t.Ewes.Select(e => e.Tag))))];
        return FeedClasses.Settled(flock, classes, companies, (place, company, troughs) => FitsParted(flock, place, company, troughs));
    }

    private static LocalDate FedFrom(Flock flock, FedEwe ewe) =>
        KeeperWeek.FirstDay(ewe.Anchor.PlusWeeks(-flock.Practice.FeedWeeksBeforeLambing.Most), flock.ChangeDay);

    private static bool FitsParted(Flock flock, Place place, ImmutableArray<Ewe> company, int troughs)
    {
        if (place.Kind != PlaceKind.Pen || flock.Housing.Pens.FirstOrDefault(p => p.Name == place.Name) is not { } pen)
        {
            return true;
        }

        var left = company.Aggregate(PenRoom.Of(pen), (room, e) => room.Less(HousingPlanner.RoomOf(flock, e)));
        return left.TakesHurdles(troughs - 1);
    }

    /// <summary>Read off where they go: from one field to another after the tup.</summary>
    private static ImmutableArray<FieldSort> Sorts(ImmutableArray<EwePlan> ewes, Whereabouts whereabouts) =>
    [
        .. from ewe in ewes
           let stays = whereabouts.Of(ewe.Ewe)
           from turn in stays.Zip(stays.Skip(1))
           where turn.Second.From != ewe.Ewe.LostLambs && turn.First.Place.Kind == PlaceKind.Field && turn.Second.Place is { Kind: PlaceKind.Field, Name: not null } && turn.Second.Place != turn.First.Place
               && turn.Second.State is EweState.InLamb or EweState.NotInLamb
           group ewe by (turn.Second.From, Field: turn.Second.Place.Name!, Kind: turn.Second.State == EweState.InLamb ? FedEwe.KindOf(ewe.Litter) : (FeedKind?)null) into sorted
           orderby sorted.Key.From, sorted.Key.Field
           select new FieldSort(sorted.Key.From, sorted.Key.Field, sorted.Key.Kind, [.. sorted.Select(e => e.Ewe)]),
    ];

    /// <summary>By due week, counted from the one in which the first lambs of the season can be looked for; one already taken goes on to the next that is free.</summary>
    private static ImmutableArray<int> Numbers(Flock flock, ImmutableArray<FeedClass> classes)
    {
        var week = KeeperWeek.FirstDay(flock.Groups.Min(g => g.TupIn).PlusDays(flock.Season.GestationDays), flock.ChangeDay);
        var taken = new HashSet<(FeedKind, int)>();
        return
        [
            .. classes.Select(c =>
            {
                var number = Math.Max(1, 1 + (Period.DaysBetween(week, KeeperWeek.FirstDay(c.FirstOwn, flock.ChangeDay)) / NodaConstants.DaysPerWeek));
                while (!taken.Add((c.Kind, number)))
                {
                    number++;
                }

                return number;
            }),
        ];
    }

    private static FeedChart Chart(Flock flock, FeedClass feeding, int number, Dictionary<string, EwePlan> planOf, Whereabouts ifNobodyLambed)
    {
        var heads = Together.Spans(
                from ewe in feeding.All
                from stay in ifNobodyLambed.Of(ewe.Plan.Ewe)
                where stay.State == EweState.InLamb
                select (stay.Place, stay.From, stay.To, ewe.Plan.Ewe))
            .Max(t => t.Ewes.Length);
        var tags = feeding.All.Select(e => e.Tag).ToHashSet(StringComparer.Ordinal);
        var dues = feeding.All.Select(e => e.Due.Likely).ToList();
        return new(
            feeding.Kind,
            number,
            decimal.Round(feeding.Rank, 2),
            [.. planOf.Values.Where(e => tags.Contains(e.Ewe.Tag))],
            [.. feeding.Joined.Select(e => planOf[e.Tag])],
            dues.Min(),
            dues.Max(),
            feeding.Anchor,
            heads,
            ChartRows.Of(flock, feeding, heads, ifNobodyLambed.To));
    }
}
