namespace PaperFlock.Planning.Tests;

internal static class PlanAssert
{
    /// <summary>Every fact of two plans. Records compare the arrays in them by reference, so each array is taken
    /// out and compared by what it holds.</summary>
    public static void Same(SeasonPlan one, SeasonPlan other)
    {
        Assert.Equal((one.AsOf, one.Dates, one.From, one.To), (other.AsOf, other.Dates, other.From, other.To));
        Assert.Equal(one.Groups, other.Groups);
        Assert.Equal(one.Ewes.Select(Bare), other.Ewes.Select(Bare));
        Assert.Equal(one.Ewes.SelectMany(e => e.Advice.Findings), other.Ewes.SelectMany(e => e.Advice.Findings));
        Assert.Equal(one.Ewes.SelectMany(e => e.Sires), other.Ewes.SelectMany(e => e.Sires));
        Assert.Equal(one.Ewes.SelectMany(Chances), other.Ewes.SelectMany(Chances));
        Assert.Equal(one.Jobs, other.Jobs);
        Assert.Equal(
            one.Gatherings.SelectMany(g => g.Jobs.Select(j => (g.Date, j))),
            other.Gatherings.SelectMany(g => g.Jobs.Select(j => (g.Date, j))));
        Assert.Equal(one.Feeding.Charts.Select(Bare), other.Feeding.Charts.Select(Bare));
        Assert.Equal(one.Feeding.Charts.SelectMany(c => c.Rows.Select(Bare)), other.Feeding.Charts.SelectMany(c => c.Rows.Select(Bare)));
        Assert.Equal(one.Feeding.Charts.SelectMany(c => c.Rows.SelectMany(r => r.KgPerFeedByHeads)), other.Feeding.Charts.SelectMany(c => c.Rows.SelectMany(r => r.KgPerFeedByHeads)));
        Assert.Equal(one.Feeding.Troughs.Select(t => t with { Ewes = [] }), other.Feeding.Troughs.Select(t => t with { Ewes = [] }));
        Assert.Equal(one.Feeding.Troughs.SelectMany(t => t.Ewes), other.Feeding.Troughs.SelectMany(t => t.Ewes));
        Assert.Equal(one.Feeding.Lambed.Select(r => r with { FedAt = [] }), other.Feeding.Lambed.Select(r => r with { FedAt = [] }));
        Assert.Equal(one.Feeding.Warnings.Select(w => w with { Ewes = [] }), other.Feeding.Warnings.Select(w => w with { Ewes = [] }));
        Assert.Equal(one.Whereabouts.Ewes.SelectMany(e => e.Stays), other.Whereabouts.Ewes.SelectMany(e => e.Stays));
        Assert.Equal(one.Stores.Select(s => s with { Weeks = [] }), other.Stores.Select(s => s with { Weeks = [] }));
        Assert.Equal(one.Stores.SelectMany(s => s.Weeks), other.Stores.SelectMany(s => s.Weeks));
        Assert.Equal(one.Lambing with { Days = [], BusiestNights = [] }, other.Lambing with { Days = [], BusiestNights = [] });
        Assert.Equal(one.Lambing.Days, other.Lambing.Days);
        Assert.Equal(one.Lambing.BusiestNights, other.Lambing.BusiestNights);
        Assert.Equal(one.Housing.WithoutRoom, other.Housing.WithoutRoom);
        Assert.Equal(one.Housing.WithLambs, other.Housing.WithLambs);
        Assert.Equal(one.Housing.Pens.Select(p => p with { Ewes = [] }), other.Housing.Pens.Select(p => p with { Ewes = [] }));
        Assert.Equal(one.Housing.Pens.SelectMany(p => p.Ewes), other.Housing.Pens.SelectMany(p => p.Ewes));
        Assert.Equal(one.Rounds.Select(r => r with { Times = [] }), other.Rounds.Select(r => r with { Times = [] }));
        Assert.Equal(one.Rounds.SelectMany(r => r.Times), other.Rounds.SelectMany(r => r.Times));
        Assert.Equal(one.Warnings.Select(Bare), other.Warnings.Select(Bare));
    }

    private static FeedChart Bare(FeedChart chart) => chart with { Ewes = [], Joined = [], Rows = [] };

    private static FeedRow Bare(FeedRow row) => row with { FedAt = [], KgPerFeedByHeads = [] };

    private static EwePlan Bare(EwePlan ewe) => ewe with { Advice = NoAdvice, Sires = [], Due = ewe.Due is { } due ? due with { Chances = NoChances } : null };

    private static PlanWarning Bare(PlanWarning warning) => warning is PlanWarning.UnfitForTup unfit ? unfit with { Ewe = Bare(unfit.Ewe) } : warning;

    private static IEnumerable<double> Chances(EwePlan ewe) => ewe.Due?.Chances.Chances ?? [];

    private static TupAdvice NoAdvice { get; } = new([]);

    private static DayDistribution NoChances { get; } = new(default, []);
}
