using PaperFlock.Diagnostics;

namespace PaperFlock.Sheets;

/// <summary>All that the plan warns of, code by code, and what to do about it.</summary>
public static class WarningText
{
    /// <summary>By place in the flock file, then by code.</summary>
    public static ImmutableArray<Diagnostic> Of(SeasonPlan plan) =>
    [
        .. plan.Warnings.Concat(plan.Feeding.Warnings).Select(w => Of(w, plan.Flock))
            .OrderBy(w => w.Span.Line).ThenBy(w => w.Span.Column)
            .ThenBy(w => w.Code, StringComparer.Ordinal).ThenBy(w => w.Message, StringComparer.Ordinal),
    ];

    public static Diagnostic Of(PlanWarning warning, Flock flock)
    {
        var (code, message, advice) = Words(warning, flock);
        var severity = warning is FeedWarning { Kind: FeedWarningKind.NoRation } ? Severity.Error : Severity.Warning;
        return new(severity, code, warning.Span, message, advice);
    }

    private static (string Code, string Message, string Advice) Words(PlanWarning warning, Flock flock) => warning switch
    {
        PlanWarning.UnfitForTup w => (
            "FLK101",
            $"{w.Ewe.Ewe.CallName} should not go to the tup ({TupAdviceText.Unfit(w.Ewe)}){Yet(w.Ewe)}",
            Mated(w.Ewe.Ewe) is null ? "look at her again, then say `to-tup: yes` or `to-tup: no`" : "look at her again; if she is right after all, say `to-tup: yes`"),
        PlanWarning.KeptBackYetMated w => (
            "FLK102",
            $"{w.Ewe.CallName} is kept back from the tup, yet {Mated(w.Ewe)}: she is left out of feeding, housing and lambing",
            "take out `to-tup: no` if she may be in lamb"),
        PlanWarning.MarkedTooLateToCount w => (
            "FLK103",
            $"{w.Ewe.CallName} will be {InLamb(w.Mated, w.Scan)} in lamb at the scan on {Day(w.Scan)}, too few to count her lambs",
            $"scan her on or after {Countable(w.Mated)}, or have her looked at again then"),
        PlanWarning.TooLateToCount w => (
            "FLK104",
            $"{Ewes(w.Ewes)}{Of(w.Group)} could be only {InLamb(w.LastMated, w.Scan)} in lamb at the scan on {Day(w.Scan)}, too few to count lambs",
            $"scan on or after {Countable(w.LastMated)}, take the tup out sooner, or have late ones looked at again"),
        PlanWarning.NotScannedByFeeding w => (
            "FLK105",
            $"{Ewes(w.Ewes)}{Of(w.Group)} not scanned, and feeding starts on {Day(w.FeedFrom)}: fed as the average of the flock",
            "write `scan:` under each ewe, or feed by her condition and the vet's word"),
        PlanWarning.TooManyEwes w => (
            "FLK106",
            $"{w.Group.Tup ?? "one tup"} has {Ewes(w.Ewes)}{Of(w.Group)}, more than {w.Limit}",
            "share them between tups, or set `ewes-per-tup` under practice"),
        PlanWarning.StageAgainstMark w => (
            "FLK107",
            $"the scanner said {EvidenceText.Stage(w.Stage)} for {w.Ewe.CallName}, yet she was marked on {Day(w.Mark)}",
            "the mark is used; check both, and watch her for the other date"),
        PlanWarning.NoDayForJob w => (
            "FLK108",
            $"no day for \"{JobText.Title(w.Job, flock)}\"{Of(w.Job.Group)}, wanted {Window(w.Job)}: the keeper is away",
            w.Job.NearestDay is { } day
                ? $"the nearest day that would do is {Day(day)}; change the absence, or ask the sitter to do it"
                : "no day within a year would do; change `keeper-days`"),
        PlanWarning.PenTooSmall w => (
            "FLK119",
            $"no ewe of this flock has room in the pen \"{w.Pen.Name}\"",
            "check its length, width and trough and their units, or take the pen out"),
        PlanWarning.NoRoom w => (
            "FLK189",
            $"the shed is too small: {Ewes(w.Ewes)} in lamb would have no room in {(flock.Housing.Pens.Length == 1 ? "its pen" : "its pens")}",
            "check `length`, `width` and `trough` of each pen and their units, or find them room before they are housed"),
        PlanWarning.ShornOutdoors => (
            "FLK109",
            "shearing at housing is asked for, but the ewes lamb outdoors, so no shearing is planned",
            "set `shear` under practice to another time"),
        FeedWarning w => FeedWarningText.Words(w, new(flock.Print.Units)),
        _ => throw new ArgumentOutOfRangeException(nameof(warning)),
    };

    private static string Yet(EwePlan plan) => (plan.Standing, Mated(plan.Ewe)) switch
    {
        (_, { } mated) => $", yet she is {mated}",
        (Standing.LeftOut, _) => ": she is left out of the plan",
        _ => ", yet she is in the group that does",
    };

    private static string? Mated(Ewe ewe) => ewe switch
    {
        { Scan: { } scan and > 0 } => $"scanned with {English.CountLoose(scan, "lamb", "lambs")}",
        { Marks.IsEmpty: false } => $"marked {Day(ewe.Marks[^1])}",
        _ => null,
    };

    private static string InLamb(LocalDate mated, LocalDate scan) => English.CountLoose(Math.Max(0, Period.DaysBetween(mated, scan)), "day", "days");

    private static string Countable(LocalDate mated) => Day(mated.PlusDays(PregnancyScan.EarliestCountableDays));

    private static string Window(Job job) => job.Earliest == job.Latest ? $"on {Day(job.Best)}" : $"{Day(job.Earliest)} to {Day(job.Latest)}";

    private static string Ewes(int number) => English.CountLoose(number, "ewe", "ewes");

    private static string Of(TuppingGroup? group) => group is { Name.Length: > 0 } named ? $" of {named.Name}" : "";

    private static string Day(LocalDate day) => DateText.Loose(day);
}
