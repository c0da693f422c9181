using PaperFlock.Packs.Calendar;
using PaperFlock.Packs.Explain;
using static PaperFlock.Packs.Figures.Shown;

namespace PaperFlock.Packs.Screen;

/// <summary>What a flock file comes to, in words and days a screen can show as they are.</summary>
public static class ScreenPlan
{
    public static JsonObject Of(SeasonPlan plan) => new()
    {
        ["summary"] = ScreenText.Summary(plan),
        ["lambing"] = LambingText.Of(plan.Lambing, plan.Flock.Housing),
        ["housing"] = HousingText.Of(plan.Housing, plan.Flock.Housing).ToString(),
        ["jobs"] = List(plan.Jobs, job => Job(job, plan)),
        ["weeks"] = Weeks(plan),
        ["gatherings"] = List(plan.Gatherings, g => new JsonObject { ["day"] = ScreenText.Day(g.Date), ["jobs"] = ScreenText.List(g.Jobs.Select(j => JobText.Title(j, plan.Flock))) }),
        ["due"] = List(PencilLists.WhoLambsWhen(plan), row => Due(row.Ewe, plan)),
        ["feed"] = List(plan.Feeding.Charts, chart => Feed(chart, plan)),
        ["stores"] = List(plan.Stores.OrderBy(s => s.NeededFrom), s => Store(s, plan)),
        ["away"] = List(plan.Flock.KeeperDays.Away, a => new JsonObject
        {
            ["from"] = Date(a.From),
            ["to"] = Date(a.To),
            ["words"] = ScreenText.Span(a.From, a.To),
            ["sitter"] = a.Sitter,
            ["over"] = a.To < plan.AsOf,
        }),
    };

    /// <summary>Why a job is on its day: a <c>title</c>, and <c>lines</c> of <c>label</c> and <c>text</c>.</summary>
    /// <param name="index">From 0, in the order of the plan.</param>
    public static JsonObject WhyJob(SeasonPlan plan, int index) => Explained(JobExplainer.Of(plan.Jobs[index], plan));

    /// <summary>What is planned for a ewe, and on what evidence.</summary>
    /// <param name="index">From 0, in the order of the flock file.</param>
    public static JsonObject WhyEwe(SeasonPlan plan, int index) => Explained(EweExplainer.Of(plan.Ewes[index], plan));

    /// <summary>The jobs as a calendar file: its <c>text</c>, and <c>file</c>, its name.</summary>
    /// <param name="name">Of the flock file.</param>
    public static JsonObject Calendar(SeasonPlan plan, string name) => new()
    {
        ["text"] = Encoding.UTF8.GetString(JobCalendar.Of(plan)),
        ["file"] = PackFileNames.Of(name) + ".ics",
    };

    /// <summary>The lambs born, for the flock book: a list for a spreadsheet, and <c>file</c>, its name.</summary>
    /// <param name="name">Of the flock file.</param>
    public static JsonObject Births(SeasonPlan plan, string name) => new()
    {
        ["text"] = Encoding.UTF8.GetString(PackMaker.Births(plan)),
        ["file"] = PackFileNames.Of(name) + "-births.csv",
    };

    private static JsonObject Job(Job job, SeasonPlan plan) => new()
    {
        ["day"] = ScreenText.JobDay(job),
        ["past"] = job.ShownOn < plan.AsOf,
        ["title"] = JobText.Title(job, plan.Flock),
        ["group"] = job.Group?.Name,
        ["window"] = job.IsFixed ? "that day" : ScreenText.Span(job.Earliest, job.Latest),
        ["why"] = JobText.Why(job, plan),
        ["trouble"] = JobText.Trouble(job),
    };

    /// <summary>The weeks that have a job, from this one on: the first day, which jobs, and the most rounds on a day of it.</summary>
    private static JsonArray Weeks(SeasonPlan plan)
    {
        var starts = plan.Flock.Print.WeekStarts;
        LocalDate WeekOf(LocalDate day) => day.DayOfWeek == starts ? day : day.Previous(starts);
        var rounds = plan.Rounds.GroupBy(r => WeekOf(r.Date)).ToDictionary(g => g.Key, g => g.Max(r => r.Times.Length));
        var weeks = plan.Jobs.Select((job, i) => (Week: WeekOf(job.ShownOn), i)).Where(j => j.Week >= WeekOf(plan.AsOf)).GroupBy(j => j.Week, j => j.i).OrderBy(g => g.Key);
        return List(weeks, week => new JsonObject
        {
            ["from"] = ScreenText.Day(week.Key),
            ["jobs"] = List(week, i => (JsonNode)i),
            ["rounds"] = rounds.TryGetValue(week.Key, out var most) ? most : null,
        });
    }

    private static JsonObject Due(EwePlan ewe, SeasonPlan plan) => new()
    {
        ["ewe"] = plan.Ewes.IndexOf(ewe),
        ["called"] = ewe.Ewe.CallName,
        ["tag"] = ewe.Ewe.Tag,
        ["lambs"] = ewe.Litter,
        // To-lamb, lambed, lost-lambs or gone; a day only for those still to lamb.
        ["standing"] = Figures.Codes.Of(ewe.Standing),
        ["likely"] = ewe.Due is { } due ? ScreenText.Day(due.Likely) : null,
        ["between"] = ewe.Due is { } window ? ScreenText.Span(window.Earliest, window.Latest) : null,
        ["dated"] = ewe.Due is { } dated ? EvidenceText.Of(dated.Evidence) : null,
    };

    /// <summary>The ration of ewes fed alike: <c>who</c>, their names, and the steps, each the day it begins, what a ewe gets a day, and at which rounds.</summary>
    private static JsonObject Feed(FeedChart chart, SeasonPlan plan)
    {
        var amounts = new Sheets.Theme.Amounts(plan.Flock.Print.Units);
        return new JsonObject
        {
            ["code"] = chart.Code,
            ["who"] = FeedText.Class(chart),
            ["ewes"] = List(chart.Ewes, e => (JsonNode)e.Ewe.CallName),
            ["steps"] = List(chart.Steps, step => new JsonObject
            {
                ["from"] = ScreenText.Day(step.From),
                ["each"] = step.KgPerEwePerDay == 0 ? null : amounts.Plain(step.KgPerEwePerDay).Replace('\u00a0', ' '),
                ["at"] = ScreenText.List(step.FedAt.Select(t => FeedText.Time(t, plan.Flock.Holding))),
                ["past"] = step.To < plan.AsOf,
            }),
        };
    }

    private static JsonObject Store(StoreItem item, SeasonPlan plan) => new()
    {
        ["item"] = StoreText.Name(item, plan.Flock),
        ["buy"] = item is { Packs: { } packs, Pack: { } pack } ? StoreText.Packs(packs, pack).Replace('\u00a0', ' ') : null,
        ["kg"] = item.Kg is { } kg ? Decimals(kg, 0) : null,
        ["orderBy"] = item.OrderBy is { } day ? ScreenText.Day(day) : null,
        ["overdue"] = item.OrderBy < plan.AsOf,
        ["neededFrom"] = ScreenText.Day(item.NeededFrom),
        ["basis"] = StoreText.Basis(item, plan.Flock),
    };

    private static JsonObject Explained(Explanation explanation) => new()
    {
        ["title"] = explanation.Title,
        ["lines"] = List(explanation.Lines, l => new JsonObject { ["label"] = l.Label, ["text"] = l.Text }),
    };
}
