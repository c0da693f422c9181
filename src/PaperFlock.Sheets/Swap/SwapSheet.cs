using System.Globalization;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Sheets.House;
using PaperFlock.Sheets.Issues;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Swap;

/// <summary>On top of an issue of changed leaves: what comes out of the pack, what goes in, and what each leaf said before.</summary>
internal static class SwapSheet
{
    public const string Kind = "changes";
    public const string Code = "CHG";

    /// <summary>Changed rows named for a leaf; the bars on the leaf show the rest.</summary>
    private const int MostChanges = 4;
    private const int LongestChange = 100;

    public static Sheet Make(Stationery stationery, IssueOutcome issue)
    {
        var head = stationery.Head(
            "Take out, put in",
            Code,
            $"{In(issue.PutIn.Length)}, {Out(issue)}. Go down the list: take out, put in, tick both. Then bin what came out and the old register; this sheet may go too.",
            stationery.Mark.IssueWords);
        var table = new Table(
            [Track.Fixed(Mm(46)), Track.Fixed(Mm(19)), Track.Fixed(Mm(19)), Track.Share()],
            [
                new TableRow(
                [
                    Ink.Cell("leaf", Fount.Label), Ink.Cell("take out", Fount.Label, TextAlign.Centre), Ink.Cell("put in", Fount.Label, TextAlign.Centre), Ink.Cell("what it said before, and why it goes", Fount.Label),
                ]),
            ],
            [
                RegisterRow(stationery),
                .. issue.PutIn.Select(l => Row(stationery, l.Leaf, l.Replaces, l.Issue, WordsOf(issue, l))),
                .. issue.TakenOut.Select(l => Row(stationery, l.Leaf, l.Issue, null, "No longer part of the pack.")),
            ],
            LeastCarried: 2)
        { Name = "take out, put in" };
        var body = new Column([table, Ink.Notes(stationery.TableRow)], 12);
        return new Sheet(Kind, Code, "Take out, put in", SheetUse.Binder, Binder.BothSides(stationery, Code, body, stationery.UprightDesign(Code, head)));
    }

    private static string In(int leaves) => $"{Amounts.Count(leaves, "leaf or card goes", "leaves and cards go")} in";

    private static string Out(IssueOutcome issue)
    {
        var leaves = issue.TakenOut.Length + issue.PutIn.Count(l => l.Replaces is not null);
        return $"{leaves.ToString(CultureInfo.InvariantCulture)} {(leaves == 1 ? "comes" : "come")} out";
    }

    private static TableRow RegisterRow(Stationery stationery) => Row(stationery, "REG", "Register", "old one", stationery.Mark.Issue.ToString(CultureInfo.InvariantCulture), "All of it is new with every issue.");

    private static TableRow Row(Stationery stationery, Leaf leaf, int? takeOut, int? putIn, string words) =>
        Row(stationery, leaf.Label, leaf.Title, Issue(takeOut), Issue(putIn), words);

    private static TableRow Row(Stationery stationery, string label, string title, string? takeOut, string? putIn, string words) => new(
        [
            Ink.Cell(Ink.Column(1, Ink.Text(label, new TextStyle(Face.MonoBold, 11)), new Text(Who.InWords(title, stationery.Plan, Fount.Label)))),
            Step(stationery, takeOut),
            Step(stationery, putIn),
            Ink.Cell(new Text(Who.InWords(words, stationery.Plan, Fount.Body), Leading: 1.2)),
        ],
        stationery.TableTick + 8,
        Name: label);

    /// <summary>An empty cell is not to be written in: there is nothing to take out, or nothing to put in.</summary>
    private static TableCell Step(Stationery stationery, string? issue) => issue is null
        ? Ink.Cell("none", Fount.Label, TextAlign.Centre)
        : Ink.Cell(Ink.Column(2, Ink.Text(issue, Fount.Body, TextAlign.Centre), Ink.Tick(stationery.TableTick)));

    private static string? Issue(int? number) => number is { } n ? $"issue {n.ToString(CultureInfo.InvariantCulture)}" : null;

    private static string WordsOf(IssueOutcome issue, LeafOutcome leaf)
    {
        if (leaf.Fate == LeafFate.Added)
        {
            return "New.";
        }

        var words = leaf.Changes.Select(c => Shortened(c.Words(issue.On)).TrimEnd('.')).ToArray();
        var more = words.Length > MostChanges ? $"; and {(words.Length - MostChanges).ToString(CultureInfo.InvariantCulture)} more, by the bars" : "";
        return $"{string.Join("; ", words.Take(MostChanges))}{more}.";
    }

    private static string Shortened(string words)
    {
        if (words.Length <= LongestChange)
        {
            return words;
        }

        var end = words.LastIndexOf(' ', LongestChange);
        return words[..(end > 0 ? end : LongestChange)] + " \u2026";
    }
}
