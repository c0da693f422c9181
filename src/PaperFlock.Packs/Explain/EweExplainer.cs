using PaperFlock.Sheets.Theme;

namespace PaperFlock.Packs.Explain;

/// <summary>What is planned for a ewe, and on what evidence.</summary>
internal static class EweExplainer
{
    /// <summary>Done with the ewes that are to lamb.</summary>
    private static readonly JobKind[] ForLambs =
    [
        JobKind.FeedFrom, JobKind.BucketsOut, JobKind.Booster, JobKind.TwoFeeds, JobKind.HeavyRounds, JobKind.House, JobKind.Dag,
        JobKind.FirstDue, JobKind.RingAndTag, JobKind.Turnout, JobKind.LastDue,
    ];

    public static Explanation Of(EwePlan plan, SeasonPlan season)
    {
        var ewe = plan.Ewe;
        var group = season.Groups.First(g => g.Group.Name == ewe.Group);
        return Explanation.Of(
            ewe.Name is null ? ewe.Tag : $"{ewe.Tag} {ewe.Name}",
            [
                ("she is", Standing(plan)),
                ("group", Group(group)),
                ("marked", ewe.Marks.IsEmpty ? null : ScreenText.List(ewe.Marks.Select(ScreenText.Day))),
                ("scanned", Scanned(ewe)),
                // Said above where it is what she is.
                ("lost lambs", ewe.LostLambs is { } lost && plan.Standing != PaperFlock.Planning.Standing.LostLambs ? ScreenText.Day(lost) : null),
                ("sire", SireText.Of(plan) is { Length: > 0 } sire ? sire : null),
                ("last season", RemarkText.Was(ewe)?["Last season ".Length..]),
                ("for the tup", TupAdviceText.Of(plan)),
                ("due", plan.Due is { } due ? $"most likely {ScreenText.Day(due.Likely)}; 9 in 10 such ewes lamb {ScreenText.Span(due.Earliest, due.Latest)}" : null),
                ("dated by", plan.Due is { } dated ? EvidenceText.Of(dated.Evidence) : null),
                ("counted", plan.Due is { } counted ? EvidenceText.Counted(counted, ewe, season.Flock.Practice) : null),
                .. Feeding(plan, season),
                ("pen", plan.Pen is { } pen ? pen + (group.Housed is { } housed ? $", from {ScreenText.Day(housed)}" : string.Empty) : null),
                .. Explanation.List("take care", WarningText.Of(season).Where(w => w.Span == ewe.Span).Select(w => $"{w.Message}: {w.Advice}")),
                ("jobs past", ScreenText.List(Jobs(plan, season).Where(j => j.ShownOn < season.AsOf).Select(j => JobText.Title(j, season.Flock)))),
                .. Explanation.List("jobs to come", Jobs(plan, season).Where(j => j.ShownOn >= season.AsOf).Select(j => $"{ScreenText.JobDay(j)}: {JobText.Title(j, season.Flock)}")),
            ]);
    }

    private static string Standing(EwePlan plan) => plan.Standing switch
    {
        PaperFlock.Planning.Standing.ToLamb => $"planned to lamb, fed for {ScreenText.Count(plan.Litter, "lamb")}{(plan.IsScanned ? string.Empty : ", since nobody has scanned her")}",
        PaperFlock.Planning.Standing.Empty => "empty: not fed for lambs, not due",
        PaperFlock.Planning.Standing.LostLambs => $"no longer in lamb: she lost her lambs on {ScreenText.Day(plan.Ewe.LostLambs!.Value)}. {SafeLossText.Long}",
        PaperFlock.Planning.Standing.Gone => $"gone since {ScreenText.Day(plan.Ewe.Gone!.On)}: {LossText.Why(plan.Ewe.Gone.Why)}",
        PaperFlock.Planning.Standing.LeftOut => "left out of the tup: not fed for lambs, not due",
        _ => $"lambed{(plan.Ewe.Lambed is { } day ? $" on {ScreenText.Day(day)}" : string.Empty)}: her card is closed",
    };

    private static string Group(GroupPlan group)
    {
        var name = group.Group.Name.Length > 0 ? group.Group.Name : "the one group";
        var tup = group.Group.Tup is { } called ? $", tup {called}" : string.Empty;
        var stay = group.Group.IsOneDay ? $", mated {ScreenText.Day(group.Group.TupIn)}" : $", tup in {ScreenText.Span(group.Group.TupIn, group.Group.TupOut)}";
        var due = group.Due is { } days ? $"; lambs due {ScreenText.Span(days.First.Day, days.Last.Day)}: {EvidenceText.First(days.First)}" : string.Empty;
        return name + tup + stay + due;
    }

    private static string? Scanned(Ewe ewe)
    {
        var stage = ewe.ScanStage is { } said ? $", the scanner said {EvidenceText.Stage(said)}" : string.Empty;
        return ewe.Scan is { } lambs ? ScreenText.Count(lambs, "lamb") + stage : "not yet";
    }

    private static IEnumerable<(string Label, string? Text)> Feeding(EwePlan plan, SeasonPlan season)
    {
        if (!plan.IsCarrying || season.Feeding.ChartOf(plan) is not { } chart)
        {
            return [];
        }

        var amounts = new Amounts(season.Flock.Print.Units);
        return
        [
            ("fed by", $"{chart.Code} ({FeedText.Class(chart)}), {ScreenText.Count(chart.Ewes.Length, "ewe")}"),
            ("ration", RationText.Method(season.Flock.Feeds, amounts)),
            .. Explanation.List("from", chart.Rows.Select(r => RationText.Row(chart, r, season.Flock))),
            .. Explanation.List("mind", season.Feeding.Warnings.Where(w => w.Chart == chart.Code && w.Span != plan.Ewe.Span).Select(w => WarningText.Of(w, season.Flock).Message)),
        ];
    }

    /// <summary>Those of her group, as far as they are hers: a ewe without lambs to come is not fed for them, and one that has gone has none.</summary>
    private static IEnumerable<Job> Jobs(EwePlan plan, SeasonPlan season) => season.Jobs
        .Where(j => j.Group is null || j.Group.Name == plan.Ewe.Group)
        .Where(j => plan.Standing switch
        {
            PaperFlock.Planning.Standing.ToLamb or PaperFlock.Planning.Standing.Lambed => true,
            PaperFlock.Planning.Standing.Gone => j.ShownOn <= plan.Ewe.Gone!.On,
            _ => j.ShownOn <= plan.Ewe.LostLambs || !ForLambs.Contains(j.Kind),
        });
}
