using PaperFlock.Sheets.Issues;

namespace PaperFlock.Packs;

/// <summary>What is said about an issue of a pack.</summary>
internal static class IssueText
{
    private const int MostChanges = 8;

    /// <summary>From this share of leaves on, sorting them into the binder is more work than printing all.</summary>
    private const double MuchChanged = 0.6;

    /// <inheritdoc cref="PackMaker.Changes"/>
    public static IEnumerable<string> Of(Pack pack, EarlierIssue before, bool dryRun)
    {
        var (whole, outcome) = (pack.Issue.Whole, pack.Issue.Outcome);
        if (outcome is null)
        {
            return pack.Issue.Newer.IsEmpty || before.Record is null ? []
                : [$"{ScreenText.List(pack.Issue.Newer)} {(pack.Issue.Newer.Length == 1 ? "does" : "do")} not say what issue {Figure(before.Record.Last.Number)} said: the flock file has changed since. Changed leaves are the better choice: they come with a list of what to take out."];
        }

        var since = pack.Issue.Since is { } compared ? $"issue {Figure(compared.Number)} of {ScreenText.Day(compared.On)}, in {before.SinceFile ?? before.File}" : "";
        string[] said = whole switch
        {
            WholeReason.Asked when pack.Issue.IsAgain => [$"no leaf has changed since issue {Figure(outcome.Number)} of {ScreenText.Day(outcome.On)}: this is the same issue again"],
            WholeReason.Asked => pack.Issue.Since is null && before.Troubles.IsEmpty ? [] : [$"issue {Figure(outcome.Number)}, whole{(since.Length == 0 ? "" : $": it takes the place of {since}, and of all that is in the binder")}"],
            WholeReason.OtherPaper => [$"paper, boxes, units or binding are not what they were in {since}, so every leaf is another: this is a whole pack, issue {Figure(outcome.Number)}."],
            _ when outcome.IsNothing => [$"nothing has changed since {since}: all {Count(outcome.Leaves.Length)} are good, and nothing was written"],
            _ when dryRun => [],
            _ => [$"issue {Figure(outcome.Number)}: {InOut(outcome)} since {since}. Sheet CHG, on top, says which.", .. BetterWhole(outcome)],
        };
        return
        [
            .. before.Troubles,
            .. said,
            .. dryRun && !(whole == WholeReason.NotWhole && outcome.IsNothing) ? WouldChange(outcome, whole == WholeReason.NotWhole ? since : null) : [],
            .. before.IsOldFile && !pack.Documents.IsEmpty && !dryRun ? [$"what {before.File} says is in the pack itself now: it is no longer needed"] : Array.Empty<string>(),
        ];
    }

    private static IEnumerable<string> WouldChange(IssueOutcome outcome, string? since) =>
    [
        $"issue {Figure(outcome.Number)} would be {InOut(outcome)}{(since is null ? "" : $" since {since}")}",
        .. BetterWhole(outcome),
        .. outcome.PutIn.SelectMany(leaf => WouldPutIn(leaf, outcome)),
        .. outcome.TakenOut.SelectMany(l => new[] { "", $"{l.Leaf.Label}  {l.Leaf.Title}, no longer part of the pack" }),
        .. outcome.Leaves.Where(l => !l.Struck.IsEmpty).SelectMany(l => new[] { "", $"{l.Leaf.Label}  {l.Leaf.Title}, stays: strike through {string.Join(", ", l.Struck)}" }),
        "",
        "Nothing was written.",
    ];

    private static IEnumerable<string> WouldPutIn(LeafOutcome leaf, IssueOutcome outcome) =>
    [
        "",
        $"{leaf.Leaf.Label}  {leaf.Leaf.Title}{(leaf.Replaces is { } old ? $", replaces issue {Figure(old)}" : ", new")}",
        .. leaf.Changes.Take(MostChanges).Select(change => $"  {change.Words(outcome.On)}"),
        .. leaf.Changes.Length > MostChanges ? [$"  and {Figure(leaf.Changes.Length - MostChanges)} more"] : Array.Empty<string>(),
    ];

    private static string InOut(IssueOutcome outcome)
    {
        var outs = outcome.TakenOut.Length + outcome.PutIn.Count(l => l.Replaces is not null);
        return $"{Count(outcome.PutIn.Length)} of {Figure(outcome.Leaves.Length)} to put in, {Figure(outs)} to take out";
    }

    private static string[] BetterWhole(IssueOutcome outcome) => outcome.Share > MuchChanged
        ? [$"{Figure((int)Math.Round(outcome.Share * 100))} % of the pack has changed: a whole one, without --changed, is the better choice"]
        : [];

    private static string Count(int leaves) => leaves == 1 ? "1 leaf or card" : $"{Figure(leaves)} leaves and cards";

    private static string Figure(int value) => value.ToString(CultureInfo.InvariantCulture);
}
