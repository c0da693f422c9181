using static PaperFlock.Packs.Figures.Shown;

namespace PaperFlock.Packs.Figures;

/// <summary>Places, troughs and rations in the shape other programs know.</summary>
internal static class FeedingBuilder
{
    /// <summary>From today to the end of the plan, ewe by ewe.</summary>
    public static ImmutableArray<StayFigures> Whereabouts(SeasonPlan plan) =>
    [
        .. from ewe in plan.Whereabouts.Ewes
           from stay in ewe.Stays
           where stay.To >= plan.AsOf
           select new StayFigures(
               ewe.Ewe.Tag, Date(LocalDate.Max(stay.From, plan.AsOf)), Date(stay.To), FeedText.Place(stay.Place), Codes.Of(stay.Place.Kind), Codes.Of(stay.State)),
    ];

    public static ImmutableArray<TroughFigures> Troughs(SeasonPlan plan) =>
        [.. plan.Feeding.Troughs.Select(t => new TroughFigures(FeedText.Trough(t, plan.Feeding), FeedText.Place(t.Place), t.Chart, Date(t.From), Date(t.To), Tags(t.Ewes)))];

    public static ImmutableArray<FeedingFigures> Rows(SeasonPlan plan) =>
    [
        .. plan.Feeding.Charts.SelectMany(c => c.Rows.Select(r => Row(plan, c, r))).Concat(NotInLamb(plan)).OrderBy(f => f.From, StringComparer.Ordinal),
        .. plan.Feeding.Lambed.Select(r => Row(plan, r)),
    ];

    private static FeedingFigures Row(SeasonPlan plan, FeedChart chart, FeedRow row) => new(
        chart.Code,
        FeedText.Class(chart),
        Codes.Of(EweState.InLamb),
        chart.Lambs,
        Date(row.From),
        Date(row.To),
        null,
        null,
        [.. chart.Ewes.Where(e => InLambIn(plan, e.Ewe, row)).Select(e => e.Ewe.Tag)],
        Decimals(row.KgPerEwePerDay, 3),
        [.. row.FedAt.Select(FeedText.Time)],
        [.. row.KgPerFeedByHeads.Select(k => Decimals(k, 3))],
        row.Need.Energy,
        row.Supply.Energy,
        row.Need.Protein,
        row.Supply.Protein,
        row.DryMatterShare,
        row.ConcentrateShare,
        row.PerLambKg,
        Decimals(row.EnergyBalanceKg, 3));

    private static bool InLambIn(SeasonPlan plan, Ewe ewe, FeedRow row) =>
        plan.Whereabouts.Of(ewe).Any(s => s.State == EweState.InLamb && s.From <= row.To && row.From <= s.To);

    private static FeedingFigures Row(SeasonPlan plan, LambedRow row) => new(
        FeedCodes.Lambed,
        FeedText.AtFoot(row.Lambs),
        Codes.Of(EweState.Lambed),
        row.Lambs,
        null,
        null,
        row.DayFrom,
        row.DayTo,
        [.. plan.Feeding.Troughs.Where(t => t.LambsAtFoot == row.Lambs).SelectMany(t => t.Ewes.Select(e => e.Tag)).Distinct()],
        row.KgPerDay is { } kilograms ? Decimals(kilograms, 3) : null,
        [.. row.FedAt.Select(FeedText.Time)],
        row.KgPerFeed is { } feed ? [Decimals(feed, 3)] : [],
        null, null, null, null, null, null, null, null);

    /// <summary>From the first day anybody is fed to the end of the plan.</summary>
    private static IEnumerable<FeedingFigures> NotInLamb(SeasonPlan plan)
    {
        var troughs = plan.Feeding.Troughs.Where(t => t.Chart == FeedCodes.NotInLamb).ToList();
        return troughs.Count == 0
            ? []
            :
            [
                new FeedingFigures(
                    FeedCodes.NotInLamb, "Not in lamb", Codes.Of(EweState.NotInLamb), 0, Date(troughs.Min(t => t.From)), Date(troughs.Max(t => t.To)), null, null,
                    [.. troughs.SelectMany(t => t.Ewes.Select(e => e.Tag)).Distinct()], 0, [], [], null, null, null, null, null, null, null, null),
            ];
    }

    private static ImmutableArray<string> Tags(ImmutableArray<Ewe> ewes) => [.. ewes.Select(e => e.Tag)];
}
