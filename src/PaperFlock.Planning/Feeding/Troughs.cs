namespace PaperFlock.Planning.Feeding;

/// <summary>Who eats together, where, and from when to when.</summary>
internal static class Troughs
{
    public static ImmutableArray<Trough> Of(Flock flock, ImmutableArray<EwePlan> ewes, ImmutableArray<FeedChart> charts, Whereabouts whereabouts)
    {
        var chartOf = charts.SelectMany(c => c.Ewes.Select(e => (e.Ewe.Tag, Chart: c))).ToDictionary(c => c.Tag, c => c.Chart, StringComparer.Ordinal);
        var season = charts.Select(c => c.Start).DefaultIfEmpty(whereabouts.From).Min();
        var spans = Together.Spans(
            from ewe in ewes
            from stay in whereabouts.Of(ewe.Ewe)
            from part in Parts(flock, ewe, stay, chartOf.GetValueOrDefault(ewe.Ewe.Tag), season)
            where part.From <= part.To
            select (part.Key, part.From, part.To, ewe.Ewe));
        return
        [
            .. spans.Select(s => new Trough(s.Key.Place, s.Key.Chart, s.Key.Kind, s.Key.Lambs, s.From, s.To, s.Ewes))
                .OrderBy(t => t.From).ThenBy(t => t.Place.Kind).ThenBy(t => t.Place.Name, StringComparer.Ordinal).ThenBy(t => t.Chart, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<(Key Key, LocalDate From, LocalDate To)> Parts(Flock flock, EwePlan ewe, Stay stay, FeedChart? chart, LocalDate season)
    {
        switch (stay.State)
        {
            case EweState.InLamb when chart is not null:
                yield return (new Key(stay.Place, chart.Code, chart.Kind, null, null), LocalDate.Max(stay.From, chart.Start), stay.To);
                break;
            case EweState.Lambed when ewe.LambsAtFoot > 0:
                // She and her lambs have a lambing pen to themselves.
                var alone = stay.Place.Kind == PlaceKind.LambingPen ? ewe.Ewe.Tag : null;
                var lastFed = ewe.Ewe.Lambed!.Value.PlusDays(Math.Max(0, flock.Housing.TurnoutDaysAfterLambing - 1));
                yield return (new Key(stay.Place, FeedCodes.Lambed, null, Math.Min(3, ewe.LambsAtFoot), alone), stay.From, LocalDate.Min(stay.To, lastFed));
                break;
            case EweState.NotInLamb or EweState.LeftOut or EweState.Lambed when ewe.Standing != Standing.ToLamb:
                yield return (new Key(stay.Place, FeedCodes.NotInLamb, null, null, null), LocalDate.Max(stay.From, season), stay.To);
                break;
        }
    }

    private sealed record Key(Place Place, string Chart, FeedKind? Kind, int? Lambs, string? Alone);
}
