using static PaperFlock.Packs.Figures.Shown;

namespace PaperFlock.Packs.Figures;

/// <summary>From the plan to the shape other programs know, rounding on the way and never working anything out.</summary>
internal static class FiguresBuilder
{
    public static PlanFigures Of(SeasonPlan plan) => new(
        plan.Flock.Holding.Name,
        Date(plan.AsOf),
        plan.Flock.Holding.TimeZone.Id,
        new SeasonFigures(Date(plan.Dates.TupIn), Date(plan.Dates.TupOut), Date(plan.Dates.FirstDue), Date(plan.Dates.LastDue)),
        [.. plan.Groups.Select(Group)],
        [.. plan.Jobs.Select(j => Job(j, plan))],
        [.. plan.Gatherings.Select(g => new GatheringFigures(Date(g.Date), [.. g.Jobs.Select(j => Codes.Of(j.Kind))]))],
        [.. plan.Ewes.Select(Ewe)],
        FeedingBuilder.Whereabouts(plan),
        FeedingBuilder.Troughs(plan),
        FeedingBuilder.Rows(plan),
        [.. plan.Stores.OrderBy(s => s.NeededFrom).Select(s => Store(s, plan.Flock))],
        [.. plan.Lambing.Days.Select(Lambing)],
        new LambingSummaryFigures([.. plan.Lambing.BusiestNights.Select(d => Date(d))], Chance(plan.Lambing.ChanceTooFewPens), Chance(plan.Lambing.ChanceTooFewPensOnSomeNight), LambingText.Of(plan.Lambing, plan.Flock.Housing)),
        Housing(plan),
        [.. plan.Rounds.Select(Rounds)]);

    private static GroupFigures Group(GroupPlan group) => new(
        group.Group.Name,
        group.Group.Tup,
        Date(group.Group.TupIn),
        Date(group.Group.TupOut),
        Date(group.FirstDue),
        Date(group.LastDue),
        Date(group.Housed));

    private static JobFigures Job(Job job, SeasonPlan plan) => new(
        Codes.Of(job.Kind),
        JobText.Title(job, plan.Flock),
        job.Group?.Name,
        [.. plan.BatchOf(job).Select(e => e.Ewe.Tag)],
        Date(job.Earliest),
        Date(job.Best),
        Date(job.Date),
        Date(job.Latest),
        job.Handled,
        job.IsFixed,
        job.Minutes,
        JobText.Why(job, plan),
        FigureSourceText.Of(job.Rule.Source),
        JobText.Trouble(job) is { } trouble ? new TroubleFigures(trouble, Date(job.NearestDay)) : null);

    private static EweFigures Ewe(EwePlan ewe) => new(
        ewe.Ewe.Tag,
        ewe.Ewe.Name,
        ewe.Ewe.Group,
        Codes.Of(ewe.Standing),
        ewe.Litter,
        ewe.IsScanned,
        ewe.Due is { } dated ? Codes.Of(dated.Evidence.Kind) : ewe.Standing == Standing.Lambed ? Codes.Of(Evidence.Lambed) : null,
        ewe.Due is { } known ? EvidenceText.Of(known.Evidence) : null,
        ewe.Due is { } due
            ? new DueFigures(Date(due.Earliest), Date(due.Likely), Date(due.Latest), Date(due.FirstPossible), Date(due.LastPossible))
            : null,
        Codes.Of(ewe.Advice.Verdict),
        TupAdviceText.Of(ewe),
        ewe.Chart,
        ewe.Pen);

    private static StoreFigures Store(StoreItem item, Flock flock) => new(
        StoreText.Name(item, flock),
        item.Kg is { } kg ? Decimals(kg, 1) : null,
        item.Packs,
        item.Pack?.ToString().ToLowerInvariant() ?? "",
        item.PackKg is { } packKg ? Decimals(packKg, 2) : null,
        Date(item.OrderBy),
        Date(item.NeededFrom),
        Date(item.NeededTo),
        [.. item.Weeks.Select(w => new StoreWeekFigures(Date(w.WeekBeginning), Decimals(w.Amount, 1)))],
        StoreText.Basis(item, flock));

    private static LambingFigures Lambing(LambingDay day) => new(
        Date(day.Date),
        Math.Round(day.ExpectedEwes, 6),
        day.P10,
        day.P90,
        day.PensNeededP90,
        Chance(day.ChanceOverPens));

    private static HousingFigures Housing(SeasonPlan plan) => new(
        [
            .. plan.Housing.Pens.Select(p => new PenFigures(
                p.Pen.Name,
                [.. p.Ewes.Select(e => e.Tag)],
                Decimals(p.FloorNeeded, 2),
                Decimals(p.FloorThere, 2),
                Decimals(p.TroughNeeded, 2),
                p.TroughThere is { } there ? Decimals(there, 2) : null,
                p.Capacity,
                p.CapacityWithLambs)),
        ],
        plan.Housing.WithoutRoom.Length,
        HousingText.Of(plan.Housing, plan.Flock.Housing).ToString(),
        FigureSourceText.Of(FigureSource.HousingRoom));

    private static RoundFigures Rounds(RoundDay day) => new(
        Date(day.Date),
        Time(day.Dawn),
        Time(day.Sunrise),
        Time(day.Sunset),
        Time(day.Dusk),
        [.. day.Times.Select(r => DateText.Clock(r.At))],
        [.. day.Times.Select(RoundText.Name)]);
}
