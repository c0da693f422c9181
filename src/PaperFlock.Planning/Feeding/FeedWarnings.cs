using PaperFlock.Diagnostics;

namespace PaperFlock.Planning.Feeding;

/// <summary>What is odd about the rations, with its numbers.</summary>
internal static class FeedWarnings
{
    private const decimal NeedMet = 0.9m;
    private const decimal Over = 1.5m;
    private const decimal Under = 0.75m;

    /// <summary>A difference smaller than this is no more than the floor and the grain of a ration, kg.</summary>
    private const decimal Worth = 0.15m;

    /// <summary>Days over which advisers print totals.</summary>
    private const int SixWeeks = 42;

    private const int FewHeads = 2;

    private const decimal ProteinMet = 0.95m;

    /// <summary>A keeper's figure from here on is taken for pounds, kg: common practice is a pound a lamb, and half as much again is odd.</summary>
    private const decimal Kilogram = 0.7m;

    public static ImmutableArray<FeedWarning> Of(
        Flock flock, ImmutableArray<FedEwe> ewes, ImmutableArray<FeedClass> classes, ImmutableArray<FeedChart> charts) =>
    [
        .. OfFile(flock, ewes),
        // The chart of ewes that have all lambed, lost their lambs or gone is fed to nobody.
        .. classes.Zip(charts).SelectMany(c => OfChart(flock, c.First, c.Second).Where(w => w.Kind == FeedWarningKind.NoRation || c.First.All.Any(e => e.Plan.IsCarrying))),
    ];

    private static IEnumerable<FeedWarning> OfFile(Flock flock, ImmutableArray<FedEwe> ewes)
    {
        var (feeds, spans) = (flock.Feeds, flock.Feeds.Spans);
        if (ewes.IsEmpty || feeds.ForageOnly)
        {
            yield break;
        }

        if (feeds.PerLamb is { Kilograms: >= Kilogram } figure)
        {
            yield return new(FeedWarningKind.KilogramForAPound, spans.PerLamb, "", [], figure.Kilograms, Feeds.UsualPerLamb.Kilograms);
        }

        if (feeds.LargestFeed.Kilograms > FeedCaps.LargestFeed)
        {
            yield return new(FeedWarningKind.LargestFeedHeld, spans.LargestFeed, "", [], feeds.LargestFeed.Kilograms, FeedCaps.LargestFeed);
        }

        foreach (var lambs in Enumerable.Range(1, 3))
        {
            var (asked, most) = (feeds.Lambed.For(lambs).Kilograms, LambedRations.MostFor(flock, ewes, lambs));
            if (most < asked && feeds.Lambed != LambedFeeds.Usual)
            {
                yield return new(FeedWarningKind.LambedHeld, spans.Feeds, FeedCodes.Lambed, [], most, asked);
            }
        }
    }

    private static IEnumerable<FeedWarning> OfChart(Flock flock, FeedClass feeding, FeedChart chart)
    {
        var (feeds, spans) = (flock.Feeds, flock.Feeds.Spans);
        FeedWarning Warn(FeedWarningKind kind, SourceSpan span, decimal number, decimal against, IEnumerable<FedEwe>? whom = null) =>
            new(kind, span, chart.Code, whom is null ? [] : [.. whom.Select(e => e.Plan.Ewe)], number, against);

        // A file in which nobody is weighed or scanned is a beginning; one ewe scanned and without a weight among others is forgotten.
        if (flock.Ewes.Any(e => !EweWeights.IsAssumed(flock, e))
            && feeding.All.Where(e => e.Plan.IsScanned && EweWeights.IsAssumed(flock, e.Plan.Ewe)).ToList() is { Count: > 0 } unweighed)
        {
            yield return Warn(FeedWarningKind.Unweighed, unweighed[0].Plan.Ewe.Span, EweWeights.Default, EweWeights.Default, unweighed);
        }

        // While she is brought on she has less than her sum, and is meant to.
        var full = chart.Rows.Where(r => !r.IsStep).ToList();
        if (full.Count == 0)
        {
            full = [chart.Rows[^1]];
        }

        if (Worst(full, r => r.Need.Energy - r.Supply.Energy) is var shortest && shortest.Supply.Energy < NeedMet * shortest.Need.Energy)
        {
            var kind = feeds.ForageOnly ? FeedWarningKind.ForageCannotCarry
                : HeldByFigure(flock, feeding, shortest) ? FeedWarningKind.CeilingTooLow
                : FeedWarningKind.NeedNotMet;
            yield return Warn(kind, kind == FeedWarningKind.CeilingTooLow ? spans.PerLamb : spans.Forage, shortest.Supply.Energy, shortest.Need.Energy);
        }

        if (feeds.ForageOnly)
        {
            yield break;
        }

        var caps = new FeedCaps(feeds);
        foreach (var ewe in feeding.All.Where(e => caps.MostInLamb(e.Weight) < FeedCaps.Grain && chart.Rows.Any(r => r.EnergyBalanceKg > 0)))
        {
            yield return Warn(FeedWarningKind.NoRation, ewe.Plan.Ewe.Span, caps.MostInLamb(ewe.Weight), chart.Rows.Max(r => r.EnergyBalanceKg), [ewe]);
        }

        var weeks = Enumerable.Range(1, SixWeeks).Select(d => chart.On(chart.CountedFrom.PlusDays(-d))).OfType<FeedRow>().ToList();
        var (level, sum) = (weeks.Sum(r => r.PerLambKg), weeks.Sum(r => r.EnergyBalanceKg));
        var (most, least) = (Worst(full, r => r.KgPerEwePerDay - r.EnergyBalanceKg), Worst(full, r => r.EnergyBalanceKg - r.KgPerEwePerDay));
        var (largest, protein) = (Worst([.. chart.Rows], r => r.KgPerEwePerDay), Worst(full, r => r.Need.Protein - r.Supply.Protein));
        var pounds = Math.Max(Feeds.UsualPerLamb.Kilograms * chart.Lambs, ClassRation.MostOverFigure);
        (bool IsSo, FeedWarningKind Kind, SourceSpan Span, decimal Number, decimal Against)[] held =
        [
            (feeds.Method == FeedMethod.PerLamb && level >= Over * sum,
                FeedWarningKind.LevelTooMuch, spans.PerLamb, level, sum),
            (most.KgPerEwePerDay >= Over * most.EnergyBalanceKg && most.KgPerEwePerDay - most.EnergyBalanceKg >= Worth
                    && most.KgPerEwePerDay > (ClassRation.LeastPerLamb * Math.Max(2, chart.Lambs)) + FeedCaps.Grain,
                FeedWarningKind.OverEnergySum, spans.PerLamb, most.KgPerEwePerDay, most.EnergyBalanceKg),
            (least.KgPerEwePerDay < Under * least.EnergyBalanceKg && least.EnergyBalanceKg - least.KgPerEwePerDay >= Worth && HeldByFigure(flock, feeding, least),
                FeedWarningKind.UnderEnergySum, spans.PerLamb, least.KgPerEwePerDay, least.EnergyBalanceKg),
            (feeds.PerLamb is null && chart.Kind != FeedKind.NotScanned && largest.KgPerEwePerDay > pounds + FeedCaps.Grain,
                FeedWarningKind.OverAPoundALamb, spans.Forage, largest.KgPerEwePerDay / chart.Lambs, Feeds.UsualPerLamb.Kilograms),
            (largest.ConcentrateShare >= FeedCaps.NotedConcentrateShare,
                FeedWarningKind.MuchConcentrate, spans.Forage, largest.ConcentrateShare, FeedCaps.NotedConcentrateShare),
            (largest.FedAt.Length > FeedCaps.UsualFeeds,
                FeedWarningKind.ManyFeeds, spans.LargestFeed, largest.FedAt.Length, FeedCaps.UsualFeeds),
            (protein.Supply.Protein < ProteinMet * protein.Need.Protein,
                FeedWarningKind.ShortOfProtein, spans.Feeds, protein.Supply.Protein, protein.Need.Protein),
        ];
        foreach (var warning in held.Where(h => h.IsSo).Select(h => Warn(h.Kind, h.Span, h.Number, h.Against)).Concat(OfScoops(flock, chart)).Concat(OfSharing(flock, feeding, chart)))
        {
            yield return warning;
        }
    }

    private static IEnumerable<FeedWarning> OfScoops(Flock flock, FeedChart chart)
    {
        // For one or two no scoop suits, and the scales are at hand.
        if (flock.Feeds is { Scales: true, Concentrate.Scoop: { } scoop } && chart.MostHeads > FewHeads
            && chart.Rows.Where(r => !r.FedAt.IsEmpty).Select(r => r.KgPerEwePerDay / r.FedAt.Length * chart.MostHeads).DefaultIfEmpty(scoop.Kilograms).Max() is var largest
            && largest < scoop.Kilograms / 2)
        {
            yield return new(FeedWarningKind.ScoopOverTrough, flock.Feeds.Spans.Scoop, chart.Code, [], largest, scoop.Kilograms / 2);
        }

        if (new TroughAmounts(flock.Feeds, flock.Print.Units).HalfScoop is not { } half)
        {
            yield break;
        }

        var each = chart.Rows.Where(r => !r.FedAt.IsEmpty)
            .SelectMany(r => r.KgPerFeedByHeads.Select((kg, i) => (Given: kg, Meant: r.KgPerEwePerDay / r.FedAt.Length * (i + 1)))).ToList();
        var smallest = each.Select(e => e.Meant).DefaultIfEmpty(half).Min();
        if (smallest < half)
        {
            yield return new(FeedWarningKind.ScoopTooLarge, flock.Feeds.Spans.Scoop, chart.Code, [], smallest, half);
        }

        if (each.Where(e => e.Meant >= half && e.Meant - e.Given > e.Meant / 10).ToList() is { Count: > 0 } inexact)
        {
            var worst = inexact.MaxBy(e => (e.Meant - e.Given) / e.Meant);
            yield return new(FeedWarningKind.ScoopInexact, flock.Feeds.Spans.Scoop, chart.Code, [], worst.Given, worst.Meant);
        }
    }

    /// <summary>Who gets less than her own kind would, by how much at the worst.</summary>
    private static IEnumerable<FeedWarning> OfSharing(Flock flock, FeedClass feeding, FeedChart chart)
    {
        foreach (var ewe in feeding.Joined.Where(e => e.Plan.IsCarrying))
        {
            var (given, own) = Lack(flock, chart, [ewe], ewe.Kind);
            if (given != own)
            {
                yield return new(FeedWarningKind.Joined, ewe.Plan.Ewe.Span, chart.Code, [ewe.Plan.Ewe], given, own);
            }
        }

        foreach (var kind in feeding.Kind == FeedKind.Mixed ? feeding.Own.Where(e => e.Plan.IsCarrying).GroupBy(e => e.Kind) : [])
        {
            var (given, own) = Lack(flock, chart, [.. kind], kind.Key);
            if (given < own)
            {
                yield return new(FeedWarningKind.Shared, kind.First().Plan.Ewe.Span, chart.Code, [.. kind.Select(e => e.Plan.Ewe)], given, own) { Of = kind.Key };
            }
        }
    }

    private static (decimal Given, decimal Own) Lack(Flock flock, FeedChart chart, ImmutableArray<FedEwe> ewes, FeedKind kind)
    {
        var anchor = ewes.Min(e => e.Anchor);
        var own = new ClassRation(flock, kind, ewes, anchor, new FeedCaps(flock.Feeds).MostInLamb(ewes.Min(e => e.Weight)));
        return chart.Rows.Where(r => r.From >= own.Start && !r.IsStep && r.From <= anchor)
            .Select(r => (r.KgPerEwePerDay, own.In(r.From).Ration))
            .DefaultIfEmpty((chart.Rows[^1].KgPerEwePerDay, own.In(anchor).Ration))
            .MaxBy(r => r.Ration - r.KgPerEwePerDay);
    }

    private static bool HeldByFigure(Flock flock, FeedClass feeding, FeedRow row) =>
        flock.Feeds.Method != FeedMethod.EnergyBalance && (flock.Feeds.PerLamb is not null || flock.Feeds.Method == FeedMethod.PerLamb)
        && row.KgPerEwePerDay + FeedCaps.Grain <= new FeedCaps(flock.Feeds).MostInLamb(feeding.All.Min(e => e.Weight));

    private static FeedRow Worst(List<FeedRow> rows, Func<FeedRow, decimal> by) => rows.MaxBy(by)!;
}
