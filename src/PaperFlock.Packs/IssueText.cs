using System.Globalization;
using PaperFlock.Sheets;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Packs;

/// <summary>What is said about an issue of a pack.</summary>
public static class IssueText
{
    private const int MostChanges = 8;

    /// <summary>From this share of leaves on, sorting them into the binder is more work than printing all.</summary>
    private const double MuchChanged = 0.6;

    /// <summary>What has changed since the issue before, and why every leaf is printed where only changed ones were asked for. Nothing of a pack that was asked for whole.</summary>
    /// <param name="dryRun">The issue is not printed: say what it would be, every leaf and every row that says something else.</param>
    public static IEnumerable<string> Of(Pack pack, EarlierIssue before, bool dryRun)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(before);
        var (outcome, last) = (pack.Issue.Outcome, before.Record?.Last);
        string[] why = pack.Issue.Whole switch
        {
            WholeReason.NoRecord when before.IsDamaged => [$"{before.File} is damaged, so nobody can say what has been printed: this is a whole pack. Take the old one out of the binder before you file it."],
            WholeReason.NoRecord => [$"there is no {before.File}, so nobody can say what has been printed: this is a whole pack. Take any old one out of the binder before you file it."],
            WholeReason.OtherPack => [$"{before.File} is of {before.Record!.Pack}: this is the first issue of another pack, and whole."],
            WholeReason.OtherPaper => ["paper, boxes, units or binding are not what they were, so every leaf is another: this is a whole pack."],
            _ => [],
        };
        return pack.Issue.Whole switch
        {
            WholeReason.NotWhole when outcome!.IsNothing => [$"nothing has changed since issue {Figure(last!.Number)} of {ScreenText.Day(last.On)}: all {Count(outcome.Leaves.Length)} are good, and nothing was written"],
            _ when dryRun => [.. why, .. WouldChange(outcome!)],
            WholeReason.NotWhole => [$"issue {Figure(outcome!.Number)}: {InOut(outcome)}. Sheet CHG, on top, says which.", .. BetterWhole(outcome)],
            _ => why,
        };
    }

    private static IEnumerable<string> WouldChange(IssueOutcome outcome) =>
    [
        $"issue {Figure(outcome.Number)} would be {InOut(outcome)}",
        .. BetterWhole(outcome),
        .. outcome.PutIn.SelectMany(leaf => WouldPutIn(leaf, outcome)),
        .. outcome.TakenOut.SelectMany(l => new[] { "", $"{l.Leaf.Label}  {l.Leaf.Title}, no longer part of the pack" }),
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
