namespace PaperFlock.Sheets.RoundLog;

/// <summary>What is counted by itself: the ewes of a place, or those at one trough in it.</summary>
/// <param name="Place">What the place is called.</param>
/// <param name="Kind">Which of its ewes, where the place has several.</param>
/// <param name="Chart">The chart they are fed by; null where nothing is weighed out.</param>
internal sealed record LogColumn(string Place, string? Kind, string? Chart)
{
    public bool IsFedAt(SeasonPlan plan, LocalDate day, Round round) =>
        Chart is not null && plan.Feeding.FedAt(Chart, day).Any(feed => plan.Rounds[Period.DaysBetween(plan.From, day)].At(feed) == round);

    /// <summary>All that is to be counted on a day. Pens for ewes that lamb are there before the first has lambed, so that a lambing changes no log.</summary>
    public static ImmutableArray<LogColumn> On(SeasonPlan plan, LocalDate day)
    {
        var troughs = plan.Feeding.On(day).Where(t => plan.Feeding.FedAt(t.Chart, t.To).Any()).ToLookup(t => t.Place);
        var walk = new Walk(plan.Flock);
        var places = plan.Whereabouts.On(day).Where(p => p.Place.Kind != PlaceKind.Gone).OrderBy(p => walk.Order(p.Place)).ToList();
        var inLamb = places.Where(p => p.Place.Kind < PlaceKind.LambingPen).SelectMany(p => Of(plan, p.Place, p.Ewes.Length, [.. troughs[p.Place].OrderBy(t => t.Chart, StringComparer.Ordinal)]));
        var withLambs = places.Where(p => p.Place.Kind >= PlaceKind.LambingPen).Select(p => p.Place).Concat(Expected(plan, day)).Distinct()
            .OrderBy(p => p.Kind).ThenBy(p => p.Name, StringComparer.Ordinal).Select(p => WithLambs(p, troughs[p].Any() || IsExpectedToFeed(plan, p)));
        return [.. inLamb.Concat(withLambs).GroupBy(c => c.Place).SelectMany(g => g)];
    }

    /// <summary>The days on which there may be other columns than on the day before.</summary>
    public static HashSet<LocalDate> Changes(SeasonPlan plan) =>
    [
        .. plan.Whereabouts.Ewes.SelectMany(e => e.Stays).Select(s => s.From),
        .. plan.Feeding.Troughs.SelectMany(t => new[] { t.From, t.To.PlusDays(1) }),
        .. FirstLambing(plan) is { } first ? [first, ToGrass(plan, first)] : Array.Empty<LocalDate>(),
    ];

    private static IEnumerable<LogColumn> Of(SeasonPlan plan, Place place, int ewes, ImmutableArray<Trough> troughs)
    {
        var (name, all) = (FeedText.Place(place), troughs.Sum(t => t.Ewes.Length));
        var several = troughs.Length > 1 || (troughs.Length == 1 && all < ewes);
        foreach (var trough in troughs)
        {
            yield return new LogColumn(name, several ? FeedText.Class(trough, plan.Feeding) : null, trough.Chart);
        }

        if (all < ewes)
        {
            yield return new LogColumn(name, several ? "others" : null, null);
        }
    }

    private static LogColumn WithLambs(Place place, bool fed) => place.Kind == PlaceKind.LambingPen
        ? new LogColumn("pens", null, null)
        : new LogColumn(place.Name ?? "with lambs", place.Name is null ? null : "with lambs", fed ? FeedCodes.Lambed : null);

    /// <summary>Where ewes that lamb go, from the first day on which they may; to grass some days later.</summary>
    private static IEnumerable<Place> Expected(SeasonPlan plan, LocalDate day)
    {
        if (FirstLambing(plan) is not { } first || day < first)
        {
            yield break;
        }

        if (plan.Flock.Housing.Lambing == LambingPlace.Indoors)
        {
            yield return new Place(PlaceKind.LambingPen, null);
            yield return new Place(PlaceKind.WithLambs, null);
        }

        if (plan.Flock.Fields.WithLambs is { } grass && day >= ToGrass(plan, first))
        {
            yield return new Place(PlaceKind.WithLambs, grass);
        }
    }

    private static LocalDate? FirstLambing(SeasonPlan plan) => plan.Rounds.FirstOrDefault(r => r.Why == RoundReason.Lambing)?.Date;

    private static LocalDate ToGrass(SeasonPlan plan, LocalDate first) =>
        first.PlusDays(plan.Flock.Housing.Lambing == LambingPlace.Indoors ? plan.Flock.Housing.TurnoutDaysAfterLambing : 0);

    /// <summary>Turned out from the shed they get grass alone.</summary>
    private static bool IsExpectedToFeed(SeasonPlan plan, Place place) =>
        place.Kind == PlaceKind.WithLambs && (place.Name is null) == (plan.Flock.Housing.Lambing == LambingPlace.Indoors) && plan.Feeding.Lambed.Any(row => !row.FedAt.IsEmpty);
}
