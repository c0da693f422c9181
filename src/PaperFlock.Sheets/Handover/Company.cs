namespace PaperFlock.Sheets.Handover;

/// <summary>Ewes that eat together for some days.</summary>
/// <param name="Chart">Null for ewes that get forage alone, and for ewes with lambs.</param>
/// <param name="WithLambs">Each is fed by the lambs at her feet, wherever she stands.</param>
/// <param name="Ewes">In the order of the flock file.</param>
internal sealed record Company(Place Place, FeedChart? Chart, bool WithLambs, ImmutableArray<EwePlan> Ewes)
{
    /// <summary>In the order of the walk, but ewes that are not fed after the others, and ewes with lambs at the end.</summary>
    public static ImmutableArray<Company> On(SeasonPlan plan, LocalDate day, LocalDate lastDay)
    {
        var walk = new Walk(plan.Flock);
        return
        [
            .. plan.Ewes.Select(e => (Ewe: e, Stay: StayOn(plan, e.Ewe, day)))
                .Where(e => e.Stay.Place.Kind != PlaceKind.Gone)
                .Select(e => e.Stay.Place.Kind is PlaceKind.LambingPen or PlaceKind.WithLambs
                    ? (e.Ewe, Place: new Place(PlaceKind.WithLambs, null), Chart: null, WithLambs: true)
                    : (e.Ewe, e.Stay.Place, Chart: Fed(plan, e.Ewe, e.Stay, lastDay), WithLambs: false))
                .GroupBy(e => (e.Place, e.Chart, e.WithLambs), e => e.Ewe)
                .Select(g => new Company(g.Key.Place, g.Key.Chart, g.Key.WithLambs, [.. g]))
                .OrderBy(c => c.WithLambs).ThenBy(c => c.Chart is null).ThenBy(c => walk.Order(c.Place)),
        ];
    }

    /// <summary>Where she is; beyond the days of the plan where she is on the nearest of them.</summary>
    public static Stay StayOn(SeasonPlan plan, Ewe ewe, LocalDate day) =>
        plan.Whereabouts.On(ewe, LocalDate.Max(plan.Whereabouts.From, LocalDate.Min(day, plan.Whereabouts.To)))!;

    public bool IsSame(Company other) => Place == other.Place && Chart?.Code == other.Chart?.Code && Ewes.Select(e => e.Ewe.Tag).SequenceEqual(other.Ewes.Select(e => e.Ewe.Tag));

    /// <summary>What they get on some days, both included, one after another; days without a feed among them.</summary>
    public ImmutableArray<FeedRow> Feeds(LocalDate from, LocalDate to) => Chart is null ? [] : [.. Chart.Steps.Where(s => s.From <= to && from <= s.To)];

    private static FeedChart? Fed(SeasonPlan plan, EwePlan ewe, Stay stay, LocalDate lastDay) =>
        stay.State == EweState.InLamb && plan.Feeding.ChartOf(ewe) is { } chart && chart.Rows.Any(r => r.From <= lastDay && !r.FedAt.IsEmpty) ? chart : null;
}
