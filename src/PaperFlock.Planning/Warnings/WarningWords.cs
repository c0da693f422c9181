using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Planning.Text;

namespace PaperFlock.Planning.Warnings;

/// <summary>All that the plan warns of, code by code, and the words for it: they are for the terminal, and so in English.</summary>
internal static class WarningWords
{
    /// <param name="finding">What is wrong with her, such as "lumpy udder".</param>
    public static Diagnostic UnfitForTup(Ewe ewe, string finding, string yet) => Warn(
        "FLK101", ewe.Span,
        $"{ewe.CallName} should not go to the tup ({finding}){yet}",
        "look at her again, then say `to-tup: yes` or `to-tup: no`");

    public static Diagnostic KeptBackYetMated(Ewe ewe, string yet) => Warn(
        "FLK102", ewe.Span,
        $"{ewe.CallName} is kept back from the tup, yet {yet}: she is left out of feeding, housing and lambing",
        "take out `to-tup: no` if she may be in lamb");

    public static Diagnostic MarkedTooLateToCount(Ewe ewe, int days, LocalDate scan, LocalDate countable) => Warn(
        "FLK103", ewe.Span,
        $"{ewe.CallName} will be {Count(days, "day")} in lamb at the scan on {Day(scan)}, too few to count her lambs",
        $"scan her on or after {Day(countable)}, or have her looked at again then");

    public static Diagnostic TooLateToCount(TuppingGroup group, int ewes, int days, LocalDate scan, LocalDate countable) => Warn(
        "FLK104", group.Span,
        $"{Count(ewes, "ewe")}{Of(group)} could be only {Count(days, "day")} in lamb at the scan on {Day(scan)}, too few to count lambs",
        $"scan on or after {Day(countable)}, take the tup out sooner, or have late ones looked at again");

    public static Diagnostic NotScannedByFeeding(TuppingGroup group, int ewes, LocalDate feedFrom) => Warn(
        "FLK105", group.Span,
        $"{Count(ewes, "ewe")}{Of(group)} not scanned, and feeding starts on {Day(feedFrom)}: fed as the average of the flock",
        "write `scan:` under each ewe, or feed by her condition and the vet's word");

    public static Diagnostic TooManyEwes(TuppingGroup group, int ewes, int limit) => Warn(
        "FLK106", group.Span,
        $"{group.Tup ?? "one tup"} has {Count(ewes, "ewe")}{Of(group)}, more than {limit}",
        "share them between tups, or set `ewes-per-tup` under practice");

    public static Diagnostic StageAgainstMark(Ewe ewe, ScanStage stage, LocalDate mark) => Warn(
        "FLK107", ewe.Span,
        $"the scanner said {(stage == ScanStage.Early ? "early" : "late")} for {ewe.CallName}, yet she was marked on {Day(mark)}",
        "the mark is used; check both, and watch her for the other date");

    public static Diagnostic NoDayForJob(SourceSpan span, PlannedJob job) => Warn(
        "FLK108", span,
        $"no day for \"{job.Title}\"{Of(job.Group)}, wanted {Window(job)}: the keeper is away",
        job.Trouble?.NearestDay is { } day
            ? $"the nearest day that would do is {Day(day)}; change the absence, or ask the sitter to do it"
            : "no day within a year would do; change `keeper-days`");

    public static Diagnostic ShornOutdoors(Season season) => Warn(
        "FLK109", season.Span,
        "shearing at housing is asked for, but the ewes lamb outdoors, so no shearing is planned",
        "set `shear` under practice to another time");

    private static string Window(PlannedJob job) => job.Earliest == job.Latest
        ? $"on {Day(job.Best)}"
        : $"{Day(job.Earliest)} to {Day(job.Latest)}";

    public static string Count(int number, string noun) => number == 1 ? $"1 {noun}" : $"{number} {noun}s";

    public static string Day(LocalDate day) => DateText.Loose(day);

    private static string Of(TuppingGroup? group) => group is { Name.Length: > 0 } named ? $" of {named.Name}" : "";

    private static Diagnostic Warn(string code, SourceSpan span, string message, string advice) =>
        new(Severity.Warning, code, span, message, advice);
}
