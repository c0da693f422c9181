using PaperFlock.Flocks;
using PaperFlock.Languages;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;

namespace PaperFlock.Cli.Explain;

/// <summary>What is planned for a ewe, and on what evidence.</summary>
internal static class EweExplainer
{
    public static Explanation Of(EwePlan plan, SeasonPlan season)
    {
        var ewe = plan.Ewe;
        var group = season.Groups.First(g => g.Group.Name == ewe.Group);
        return Explanation.Of(
            ewe.Name is null ? ewe.Tag : $"{ewe.Tag} {ewe.Name}",
            [
                ("she is", Standing(plan)),
                ("group", Group(group)),
                ("marked", ewe.Marks.IsEmpty ? null : Words.List(ewe.Marks.Select(Words.Day))),
                ("scanned", Scanned(ewe)),
                ("for the tup", Words.Advice(plan.Advice)),
                ("due", plan.Due is { } due ? $"most likely {Words.Day(due.Likely)}; 9 in 10 such ewes lamb {ExplainWords.Span(due.Earliest, due.Latest)}" : null),
                ("dated by", plan.Due?.Words),
                ("counted", plan.Due?.Reckoning),
                .. Feeding(plan, season),
                ("pen", plan.Pen is { } pen ? pen + (group.Housed is { } housed ? $", from {Words.Day(housed)}" : string.Empty) : null),
                .. Explanation.List("take care", season.Warnings.Where(w => w.Span == ewe.Span).Select(w => $"{w.Message}: {w.Advice}")),
                ("jobs past", Words.List(Jobs(ewe, season).Where(j => j.ShownOn < season.AsOf).Select(j => j.Title))),
                .. Explanation.List("jobs to come", Jobs(ewe, season).Where(j => j.ShownOn >= season.AsOf).Select(j => $"{Words.JobDay(j)}: {j.Title}")),
            ]);
    }

    private static string Standing(EwePlan plan) => plan.Standing switch
    {
        PaperFlock.Planning.Standing.ToLamb => $"planned to lamb, fed for {Words.Count(plan.Litter, "lamb")}{(plan.IsScanned ? string.Empty : ", since nobody has scanned her")}",
        PaperFlock.Planning.Standing.Empty => "empty: not fed for lambs, not due",
        PaperFlock.Planning.Standing.LeftOut => "left out of the tup: not fed for lambs, not due",
        _ => $"lambed{(plan.Ewe.Lambed is { } day ? $" on {Words.Day(day)}" : string.Empty)}: her card is closed",
    };

    private static string Group(GroupPlan group)
    {
        var name = group.Group.Name.Length > 0 ? group.Group.Name : "the one group";
        var tup = group.Group.Tup is { } called ? $", tup {called}" : string.Empty;
        var stay = group.Group.IsOneDay ? $", mated {Words.Day(group.Group.TupIn)}" : $", tup in {ExplainWords.Span(group.Group.TupIn, group.Group.TupOut)}";
        var due = group is { FirstDue: { } first, LastDue: { } last } ? $"; lambs due {ExplainWords.Span(first, last)}: {group.FirstDueWhy}" : string.Empty;
        return name + tup + stay + due;
    }

    private static string? Scanned(Ewe ewe)
    {
        var stage = ewe.ScanStage switch { ScanStage.Early => ", the scanner said early", ScanStage.Late => ", the scanner said late", _ => string.Empty };
        return ewe.Scan is { } lambs ? Words.Count(lambs, "lamb") + stage : "not yet";
    }

    private static IEnumerable<(string Label, string? Text)> Feeding(EwePlan plan, SeasonPlan season)
    {
        if (plan.TroughGroup is null || season.TroughGroups.FirstOrDefault(g => g.Name == plan.TroughGroup) is not { } trough)
        {
            return [];
        }

        var amounts = new Amounts(season.Flock.Print.Units, Language.English);
        var feeds = season.Flock.Feeds;
        return
        [
            ("fed with", $"{trough.Name}, {Words.Count(trough.Ewes.Length, "ewe")}, the first of them due {Words.Day(trough.FirstDue)}: chart FEED-{trough.Number}"),
            ("ration", RationWords.Method(trough, feeds, amounts)),
            .. Explanation.List("from", trough.Weeks.Select(w => RationWords.Week(w, feeds, amounts))),
            ("mind", Joined(trough.Difference, trough.Protein, trough.Assumed)),
        ];
    }

    private static IEnumerable<PlannedJob> Jobs(Ewe ewe, SeasonPlan season) => season.Jobs.Where(j => j.Group is null || j.Group.Name == ewe.Group);

    private static string Joined(params IEnumerable<string> sentences) => string.Join(' ', sentences.Where(s => s.Length > 0));
}
