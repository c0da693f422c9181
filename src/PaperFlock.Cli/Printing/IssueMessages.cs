using System.Globalization;
using PaperFlock.Cli.Files;
using PaperFlock.Sheets;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Cli.Printing;

/// <summary>What is said about issues of a pack.</summary>
internal static class IssueMessages
{
    private const int MostChanges = 8;

    /// <summary>From this share of leaves on, sorting them into the binder is more work than printing all.</summary>
    private const double MuchChanged = 0.6;

    /// <summary>Before anything is printed: why every leaf is, where only changed ones were asked for.</summary>
    /// <returns>Null where there is nothing to explain.</returns>
    public static string? WhyWhole(WholeReason reason, RecordFile file, PackPaths paths)
    {
        var name = paths.ShownFile(RecordFile.Ending);
        return reason switch
        {
            WholeReason.NoRecord when Fault(file.Fault) is { } fault => $"{name} {fault}, so nobody can say what has been printed: this is a whole pack. Take the old one out of the binder before you file it.",
            WholeReason.NoRecord => $"there is no {name}, so nobody can say what has been printed: this is a whole pack. Take any old one out of the binder before you file it.",
            WholeReason.OtherPack => $"{name} is of {file.Record!.Pack}: this is the first issue of another pack, and whole.",
            WholeReason.OtherPaper => "paper, boxes, units or binding are not what they were, so every leaf is another: this is a whole pack.",
            _ => null,
        };
    }

    private static string? Fault(RecordFault fault) => fault switch
    {
        RecordFault.None => null,
        RecordFault.Newer => "was written by a later PaperFlock",
        RecordFault.Altered => "is damaged: it is not as it was written",
        _ => "is not a record of issues",
    };

    public static string NothingChanged(IssueOutcome outcome, IssueRecord before) =>
        $"nothing has changed since issue {Figure(before.Last.Number)} of {Messages.Day(before.Last.On)}: all {Count(outcome.Leaves.Length)} are good, and nothing was written";

    /// <summary>After an issue of changed leaves.</summary>
    public static string Changed(IssueOutcome outcome) =>
        $"issue {Figure(outcome.Number)}: {InOut(outcome)}. Sheet CHG, on top, says which.{(outcome.Share > MuchChanged ? "\n" + BetterWhole(outcome) : "")}";

    /// <summary>What an issue would be: every leaf, and every row that says something else.</summary>
    public static IEnumerable<string> WouldChange(IssueOutcome outcome)
    {
        yield return $"issue {Figure(outcome.Number)} would be {InOut(outcome)}";
        if (outcome.Share > MuchChanged)
        {
            yield return BetterWhole(outcome);
        }

        foreach (var leaf in outcome.PutIn)
        {
            yield return string.Empty;
            yield return $"{leaf.Leaf.Label}  {leaf.Leaf.Title}{(leaf.Replaces is { } old ? $", replaces issue {Figure(old)}" : ", new")}";
            foreach (var change in leaf.Changes.Take(MostChanges))
            {
                yield return $"  {change.Words(outcome.On)}";
            }

            if (leaf.Changes.Length > MostChanges)
            {
                yield return $"  and {Figure(leaf.Changes.Length - MostChanges)} more";
            }
        }

        foreach (var leaf in outcome.TakenOut)
        {
            yield return string.Empty;
            yield return $"{leaf.Leaf.Label}  {leaf.Leaf.Title}, no longer part of the pack";
        }

        yield return string.Empty;
        yield return "Nothing was written.";
    }

    private static string InOut(IssueOutcome outcome)
    {
        var outs = outcome.TakenOut.Length + outcome.PutIn.Count(l => l.Replaces is not null);
        return $"{Count(outcome.PutIn.Length)} of {Figure(outcome.Leaves.Length)} to put in, {Figure(outs)} to take out";
    }

    private static string BetterWhole(IssueOutcome outcome) =>
        $"{Figure((int)Math.Round(outcome.Share * 100))} % of the pack has changed: a whole one, without --changed, is the better choice";

    private static string Count(int leaves) => leaves == 1 ? "1 leaf or card" : $"{Figure(leaves)} leaves and cards";

    private static string Figure(int value) => value.ToString(CultureInfo.InvariantCulture);
}
