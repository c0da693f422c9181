using static PaperFlock.Packs.Figures.Shown;

namespace PaperFlock.Packs.Figures;

/// <summary>Places, troughs and rations in the shape other programs know. Both ends of a stretch of days are days of it.</summary>
internal static class FeedingFigures
{
    /// <summary>From today to the end of the plan, ewe by ewe.</summary>
    public static JsonArray Whereabouts(SeasonPlan plan) => List(
        from ewe in plan.Whereabouts.Ewes from stay in ewe.Stays where stay.To >= plan.AsOf select (ewe.Ewe.Tag, Stay: stay),
        of => new JsonObject
        {
            ["tag"] = of.Tag,
            ["from"] = Date(LocalDate.Max(of.Stay.From, plan.AsOf)),
            ["to"] = Date(of.Stay.To),
            ["place"] = FeedText.Place(of.Stay.Place),
            ["kind"] = Codes.Of(of.Stay.Place.Kind),
            ["state"] = Codes.Of(of.Stay.State),
        });

    /// <summary>Ewes that eat together.</summary>
    public static JsonArray Troughs(SeasonPlan plan) => List(plan.Feeding.Troughs, t => new JsonObject
    {
        ["name"] = FeedText.Trough(t, plan.Feeding),
        ["place"] = FeedText.Place(t.Place),
        ["chart"] = t.Chart,
        ["from"] = Date(t.From),
        ["to"] = Date(t.To),
        ["tags"] = List(t.Ewes, e => e.Tag),
    });

    /// <summary>The steps of every chart.</summary>
    public static JsonArray Rows(SeasonPlan plan) => new(
    [
        .. plan.Feeding.Charts.SelectMany(c => c.Rows.Select(r => (r.From, Row: InLamb(plan, c, r)))).Concat(NotInLamb(plan)).OrderBy(f => f.From).Select(f => f.Row),
        .. plan.Feeding.Lambed.Select(r => Lambed(plan, r)),
    ]);

    private static JsonObject InLamb(SeasonPlan plan, FeedChart chart, FeedRow row)
    {
        var ewes = chart.Ewes.Select(e => e.Ewe).Where(ewe => plan.Whereabouts.Of(ewe).Any(s => s.State == EweState.InLamb && s.From <= row.To && row.From <= s.To));
        return Row(
            plan, chart.Code, FeedText.Class(chart), EweState.InLamb, chart.Lambs, ewes, Decimals(row.KgPerEwePerDay, 3), row.FedAt, row.KgPerFeedByHeads, (row.From, row.To), reckoned: row);
    }

    private static JsonObject Lambed(SeasonPlan plan, LambedRow row)
    {
        var ewes = plan.Feeding.Troughs.Where(t => t.LambsAtFoot == row.Lambs).SelectMany(t => t.Ewes);
        ImmutableArray<decimal> feeds = row.KgPerFeed is { } feed ? [feed] : [];
        return Row(
            plan, FeedCodes.Lambed, FeedText.AtFoot(row.Lambs), EweState.Lambed, row.Lambs, ewes, Decimals(row.KgPerDay, 3), row.FedAt, feeds, daysLambed: (row.DayFrom, row.DayTo));
    }

    /// <summary>From the first day anybody is fed to the end of the plan.</summary>
    private static IEnumerable<(LocalDate From, JsonObject Row)> NotInLamb(SeasonPlan plan)
    {
        var troughs = plan.Feeding.Troughs.Where(t => t.Chart == FeedCodes.NotInLamb).ToList();
        if (troughs.Count > 0)
        {
            var (from, to) = (troughs.Min(t => t.From), troughs.Max(t => t.To));
            yield return (from, Row(plan, FeedCodes.NotInLamb, "Not in lamb", EweState.NotInLamb, 0, troughs.SelectMany(t => t.Ewes), 0, [], [], (from, to)));
        }
    }

    private static JsonObject Row(
        SeasonPlan plan,
        string chart,
        string fed,
        EweState state,
        decimal lambs,
        IEnumerable<Ewe> ewes,
        decimal? kilograms,
        ImmutableArray<FeedTime> fedAt,
        ImmutableArray<decimal> kilogramsByHeads,
        (LocalDate From, LocalDate To)? days = null,
        (int From, int? To)? daysLambed = null,
        FeedRow? reckoned = null) => new()
        {
            ["chart"] = chart,
            ["class"] = fed,
            ["state"] = Codes.Of(state),
            // Lambs carried, on average; lambs at foot where she has lambed.
            ["litter"] = lambs,
            // Null where days are counted from lambing, the day itself being 0; the last step then goes on to turnout, and has no last day.
            ["from"] = Date(days?.From),
            ["to"] = Date(days?.To),
            ["dayFrom"] = daysLambed?.From,
            ["dayTo"] = daysLambed?.To,
            ["tags"] = List(ewes.Select(e => e.Tag).Distinct(), tag => tag),
            // Null where she goes on with what she had before.
            ["kgPerEwePerDay"] = kilograms,
            ["fedAt"] = List(fedAt, time => FeedText.Time(time, plan.Flock.Holding)),
            // For one head, two, and so on, all together.
            ["kgPerFeedByHeads"] = List(kilogramsByHeads, kg => Decimals(kg, 3)),
            ["energyNeedMJ"] = reckoned?.Need.Energy,
            ["energySupplyMJ"] = reckoned?.Supply.Energy,
            ["proteinNeedG"] = reckoned?.Need.Protein,
            ["proteinSupplyG"] = reckoned?.Supply.Protein,
            // For the lightest of them, as a fraction.
            ["dryMatterShareOfWeight"] = reckoned?.DryMatterShare,
            ["concentrateShareOfDryMatter"] = reckoned?.ConcentrateShare,
            // A ewe a day: by so much a lamb, and by the energy sum.
            ["perLambKg"] = reckoned?.PerLambKg,
            ["energyBalanceKg"] = Decimals(reckoned?.EnergyBalanceKg, 3),
        };
}
