using System.Text.Encodings.Web;
using System.Text.Json;
using static PaperFlock.Packs.Figures.Shown;

namespace PaperFlock.Packs.Figures;

/// <summary>
/// The plan as other programs read it, rounded on the way and never worked out. Keys are never renamed; more may be added. Dates are
/// <c>YYYY-MM-DD</c>, times of day <c>HH:MM</c> in the holding's time zone, masses kilograms. Null means there is none, and is written.
/// </summary>
internal static class FiguresJson
{
    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        // The figures are read by people too: a name with an accent stays a name. Nothing here goes into a web page.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <returns>One indented object, LF between lines, no line break at the end.</returns>
    public static string Of(SeasonPlan plan) => new JsonObject
    {
        ["holding"] = plan.Flock.Holding.Name,
        ["asOf"] = Date(plan.AsOf),
        ["timeZone"] = plan.Flock.Holding.TimeZone.Id,
        ["season"] = new JsonObject
        {
            ["tupIn"] = Date(plan.Dates.TupIn),
            ["tupOut"] = Date(plan.Dates.TupOut),
            ["firstDue"] = Date(plan.Dates.FirstDue),
            ["lastDue"] = Date(plan.Dates.LastDue),
        },
        ["groups"] = List(plan.Groups, Group),
        ["jobs"] = List(plan.Jobs, j => Job(j, plan)),
        ["gatherings"] = List(plan.Gatherings, g => new JsonObject { ["date"] = Date(g.Date), ["jobs"] = List(g.Jobs, j => Codes.Of(j.Kind)) }),
        ["ewes"] = List(plan.Ewes, Ewe),
        ["whereabouts"] = FeedingFigures.Whereabouts(plan),
        ["troughs"] = FeedingFigures.Troughs(plan),
        ["feeding"] = FeedingFigures.Rows(plan),
        ["stores"] = List(plan.Stores.OrderBy(s => s.NeededFrom), s => Store(s, plan.Flock)),
        ["lambing"] = List(plan.Lambing.Days, Lambing),
        ["lambingSummary"] = new JsonObject
        {
            ["busiestNights"] = List(plan.Lambing.BusiestNights, d => Date(d)),
            ["chanceTooFewPens"] = Chance(plan.Lambing.ChanceTooFewPens),
            ["chanceTooFewPensOnSomeNight"] = Chance(plan.Lambing.ChanceTooFewPensOnSomeNight),
            ["words"] = LambingText.Of(plan.Lambing, plan.Flock.Housing),
        },
        ["outcome"] = Outcome(plan.Outcome),
        ["housing"] = Housing(plan),
        ["rounds"] = List(plan.Rounds, Rounds),
    }.ToJsonString(Layout);

    private static JsonObject Group(GroupPlan group) => new()
    {
        ["name"] = group.Group.Name,
        ["tup"] = group.Group.Tup,
        ["tupIn"] = Date(group.Group.TupIn),
        ["tupOut"] = Date(group.Group.TupOut),
        ["firstDue"] = Date(group.FirstDue),
        ["lastDue"] = Date(group.LastDue),
        // The day they come in; null when they lamb outdoors.
        ["housed"] = Date(group.Housed),
    };

    private static JsonObject Job(Job job, SeasonPlan plan) => new()
    {
        ["id"] = Codes.Of(job.Kind),
        ["title"] = JobText.Title(job, plan.Flock),
        // Empty for the one group of a file without groups, null for a job of the whole flock.
        ["group"] = job.Group?.Name,
        // Tags of those it is for; empty for a job of a whole group.
        ["ewes"] = List(plan.BatchOf(job), e => e.Ewe.Tag),
        ["earliest"] = Date(job.Earliest),
        ["best"] = Date(job.Best),
        // Null when there is no day for it: then there is trouble.
        ["date"] = Date(job.Date),
        ["latest"] = Date(job.Latest),
        ["handled"] = job.Handled,
        ["fixed"] = job.IsFixed,
        ["minutes"] = job.Minutes,
        ["why"] = JobText.Why(job, plan),
        ["source"] = FigureSourceText.Of(job.Rule.Source),
        ["trouble"] = JobText.Trouble(job) is { } trouble ? new JsonObject { ["words"] = trouble, ["nearest"] = Date(job.NearestDay) } : null,
    };

    private static JsonObject Ewe(EwePlan ewe) => new()
    {
        ["tag"] = ewe.Ewe.Tag,
        ["name"] = ewe.Ewe.Name,
        ["group"] = ewe.Ewe.Group,
        ["standing"] = Codes.Of(ewe.Standing),
        ["litter"] = ewe.Litter,
        ["scanned"] = ewe.IsScanned,
        // Null when she has no due date.
        ["evidence"] = ewe.Due is { } dated ? Codes.Of(dated.Evidence.Kind) : ewe.Standing == Standing.Lambed ? Codes.Of(Evidence.Lambed) : null,
        ["evidenceWords"] = ewe.Due is { } known ? EvidenceText.Of(known.Evidence) : null,
        ["due"] = ewe.Due is not { } due ? null : new JsonObject
        {
            // The 5, 50 and 95 % points, and gestation after the first and the last day the evidence allows.
            ["earliest"] = Date(due.Earliest),
            ["likely"] = Date(due.Likely),
            ["latest"] = Date(due.Latest),
            ["firstPossible"] = Date(due.FirstPossible),
            ["lastPossible"] = Date(due.LastPossible),
        },
        // Likeliest first; one with chance 1 where that is certain.
        ["sires"] = List(ewe.Sires, s => new JsonObject { ["tup"] = s.Tup, ["chance"] = Math.Round(s.Chance, 6) }),
        ["lostLambs"] = Date(ewe.Ewe.LostLambs),
        ["gone"] = ewe.Ewe.Gone is { } gone ? new JsonObject { ["on"] = Date(gone.On), ["why"] = Codes.Of(gone.Why) } : null,
        ["verdict"] = Codes.Of(ewe.Advice.Verdict),
        ["advice"] = TupAdviceText.Of(ewe),
        ["chart"] = ewe.Chart,
        ["pen"] = ewe.Pen,
    };

    private static JsonObject Outcome(SeasonOutcome outcome) => new()
    {
        ["toLamb"] = outcome.ToLamb,
        ["stillToLamb"] = outcome.StillToLamb,
        ["lambed"] = outcome.Lambings.Length,
        // In the days on which nine in ten were to lamb, and by how many days the likely day was out on average; null before the first lambing.
        ["insideSpan"] = outcome.InsideSpan,
        ["meanDaysOut"] = outcome.MeanDaysOut is { } days ? Math.Round(days, 2) : null,
        ["lambsScanned"] = outcome.LambsScanned,
        ["bornAlive"] = outcome.BornAlive,
        ["bornDead"] = outcome.BornDead,
        ["help"] = new JsonObject { ["none"] = outcome.Helped(LambingHelp.None), ["hand"] = outcome.Helped(LambingHelp.Hand), ["vet"] = outcome.Helped(LambingHelp.Vet) },
        ["lostLambs"] = List(outcome.LostLambs, e => e.Ewe.Tag),
        ["gone"] = List(outcome.Gone, e => e.Ewe.Tag),
        ["empty"] = List(outcome.Empty, e => e.Ewe.Tag),
        ["notAgain"] = List(outcome.NotAgain, e => new JsonObject { ["tag"] = e.Ewe.Tag, ["why"] = TupAdviceText.Reason(e) }),
    };

    private static JsonObject Store(StoreItem item, Flock flock) => new()
    {
        ["item"] = StoreText.Name(item, flock),
        ["kg"] = Decimals(item.Kg, 1),
        // Packs of whatever kind, margin included; null for what is not sold in packs.
        ["bags"] = item.Packs,
        ["pack"] = item.Pack?.ToString().ToLowerInvariant() ?? "",
        ["packKg"] = Decimals(item.PackKg, 2),
        // Null when nothing is ordered.
        ["orderBy"] = Date(item.OrderBy),
        ["neededFrom"] = Date(item.NeededFrom),
        ["neededTo"] = Date(item.NeededTo),
        ["weeks"] = List(item.Weeks, w => new JsonObject { ["weekBeginning"] = Date(w.WeekBeginning), ["amount"] = Decimals(w.Amount, 1) }),
        ["basis"] = StoreText.Basis(item, flock),
    };

    private static JsonObject Lambing(LambingDay day) => new()
    {
        ["date"] = Date(day.Date),
        ["expectedEwes"] = Math.Round(day.ExpectedEwes, 6),
        ["p10"] = day.P10,
        ["p90"] = day.P90,
        ["pensNeededP90"] = day.PensNeededP90,
        // That more pens are wanted than there are; null when the flock file names no number.
        ["chanceOverPens"] = Chance(day.ChanceOverPens),
    };

    private static JsonObject Housing(SeasonPlan plan) => new()
    {
        ["pens"] = List(plan.Housing.Pens, p => new JsonObject
        {
            ["pen"] = p.Pen.Name,
            ["ewes"] = List(p.Ewes, e => e.Tag),
            ["floorNeededM2"] = Decimals(p.FloorNeeded, 2),
            ["floorThereM2"] = Decimals(p.FloorThere, 2),
            ["troughNeededM"] = Decimals(p.TroughNeeded, 2),
            ["troughThereM"] = Decimals(p.TroughThere, 2),
            ["capacity"] = p.Capacity,
            ["capacityWithLambs"] = p.CapacityWithLambs,
        }),
        ["ewesWithoutRoom"] = plan.Housing.WithoutRoom.Length,
        ["words"] = HousingText.Of(plan.Housing, plan.Flock.Housing).ToString(),
        ["source"] = FigureSourceText.Of(FigureSource.HousingRoom),
    };

    private static JsonObject Rounds(RoundDay day) => new()
    {
        ["date"] = Date(day.Date),
        // Civil twilight and the sun; null on a day that has none.
        ["dawn"] = Time(day.Dawn),
        ["sunrise"] = Time(day.Sunrise),
        ["sunset"] = Time(day.Sunset),
        ["dusk"] = Time(day.Dusk),
        ["times"] = List(day.Times, r => DateText.Clock(r.At)),
        ["names"] = List(day.Times, r => RoundText.Name(r)),
    };
}
