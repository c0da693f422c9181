using PaperFlock.Flocks;
using PaperFlock.Planning;
using PaperFlock.Sheets;
using static PaperFlock.Cli.Figures.Shown;

namespace PaperFlock.Cli.Figures;

/// <summary>From the plan to the shape other programs know, rounding on the way and never working anything out.</summary>
internal static class FiguresBuilder
{
    public static PlanFigures Of(SeasonPlan plan) => new(
        plan.Flock.Holding.Name,
        Date(plan.AsOf),
        plan.Flock.Holding.TimeZone.Id,
        new SeasonFigures(Date(plan.Dates.TupIn), Date(plan.Dates.TupOut), Date(plan.Dates.FirstDue), Date(plan.Dates.LastDue)),
        [.. plan.Groups.Select(Group)],
        [.. plan.Jobs.OrderBy(j => j.ShownOn).Select(Job)],
        [.. plan.Gatherings.OrderBy(g => g.Date).Select(g => new GatheringFigures(Date(g.Date), [.. g.Jobs.Select(j => j.Id)]))],
        [.. plan.Ewes.Select(Ewe)],
        FeedingBuilder.Whereabouts(plan),
        FeedingBuilder.Troughs(plan),
        FeedingBuilder.Rows(plan),
        [.. plan.Stores.OrderBy(s => s.NeededFrom).Select(s => Store(s, plan.Flock))],
        [.. plan.Lambing.Days.Select(Lambing)],
        new LambingSummaryFigures([.. plan.Lambing.BusiestNights.Select(d => Date(d))], Chance(plan.Lambing.ChanceTooFewPens), plan.Lambing.Words),
        Housing(plan.Housing),
        [.. plan.Rounds.OrderBy(r => r.Date).Select(Rounds)]);

    private static GroupFigures Group(GroupPlan group) => new(
        group.Group.Name,
        group.Group.Tup,
        Date(group.Group.TupIn),
        Date(group.Group.TupOut),
        Date(group.FirstDue),
        Date(group.LastDue),
        Date(group.Housed));

    private static JobFigures Job(PlannedJob job) => new(
        job.Id,
        job.Title,
        job.Group?.Name,
        Date(job.Earliest),
        Date(job.Best),
        Date(job.Date),
        Date(job.Latest),
        job.Handled,
        job.Fixed,
        job.Minutes,
        job.Why,
        job.Source,
        job.Trouble is { } trouble ? new TroubleFigures(trouble.Words, Date(trouble.NearestDay)) : null);

    private static EweFigures Ewe(EwePlan ewe) => new(
        ewe.Ewe.Tag,
        ewe.Ewe.Name,
        ewe.Ewe.Group,
        Codes.Of(ewe.Standing),
        ewe.Litter,
        ewe.IsScanned,
        ewe.Due is { } dated ? Codes.Of(dated.Evidence) : ewe.Standing == Standing.Lambed ? Codes.Of(Evidence.Lambed) : null,
        ewe.Due?.Words,
        ewe.Due is { } due
            ? new DueFigures(Date(due.Earliest), Date(due.Likely), Date(due.Latest), Date(due.FirstPossible), Date(due.LastPossible))
            : null,
        Codes.Of(ewe.Advice.Verdict),
        Messages.Advice(ewe.Advice),
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

    private static HousingFigures Housing(HousingPlan housing) => new(
        [
            .. housing.Pens.Select(p => new PenFigures(
                p.Pen.Name,
                [.. p.Ewes.Select(e => e.Tag)],
                Decimals(p.FloorNeeded, 2),
                Decimals(p.FloorThere, 2),
                Decimals(p.TroughNeeded, 2),
                p.TroughThere is { } there ? Decimals(there, 2) : null,
                p.Capacity,
                p.CapacityWithLambs)),
        ],
        housing.EwesWithoutRoom,
        housing.Words,
        housing.Source);

    private static RoundFigures Rounds(RoundDay day) => new(
        Date(day.Date),
        Time(day.Dawn),
        Time(day.Sunrise),
        Time(day.Sunset),
        Time(day.Dusk),
        [.. day.Times.Select(r => Time(r.At))],
        [.. day.Times.Select(r => r.Name)]);
}
