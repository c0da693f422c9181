using System.Globalization;
using PaperFlock.Languages;
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
            stationery.Language.Say("Take out, put in"),
            Code,
            Lead(issue, stationery.Language),
            stationery.Mark.IssueWords);
        var table = new Table(
            [Track.Fixed(Mm(46)), Track.Fixed(Mm(19)), Track.Fixed(Mm(19)), Track.Share()],
            [
                new TableRow(
                [
                    Ink.Cell(stationery.Language.Say("leaf"), Fount.Label), Ink.Cell(stationery.Language.Say("take out"), Fount.Label, TextAlign.Centre), Ink.Cell(stationery.Language.Say("put in"), Fount.Label, TextAlign.Centre), Ink.Cell(stationery.Language.Say("what it said before, and why it goes"), Fount.Label),
                ]),
            ],
            [
                RegisterRow(stationery),
                .. issue.PutIn.Select(l => Row(stationery, l.Leaf, l.Replaces, l.Issue, WordsOf(issue, l, stationery.Language))),
                .. issue.TakenOut.Select(l => Row(stationery, l.Leaf, l.Issue, null, stationery.Language.Say("No longer part of the pack."))),
            ],
            LeastCarried: 2)
        { Name = "take out, put in" };
        var body = new Column([table, Ink.Notes(stationery.TableRow, stationery.Language)], 12);
        return new Sheet(Kind, Code, stationery.Language.Say("Take out, put in"), SheetUse.Binder, Binder.BothSides(stationery, Code, body, stationery.UprightDesign(Code, head)));
    }

    private static string Lead(IssueOutcome issue, Language language)
    {
        var (putIn, takenOut) = (issue.PutIn.Length, issue.TakenOut.Length + issue.PutIn.Count(l => l.Replaces is not null));
        var going = language.Plural(putIn, $"{putIn}\u00a0leaf or card goes in", $"{putIn}\u00a0leaves and cards go in");
        var coming = language.Plural(takenOut, $"{takenOut} comes out", $"{takenOut} come out");
        return Ink.Sentences(
            $"{going}, {coming}.",
            language.Say("Go down the list: take out, put in, tick both. Then bin what came out and the old register; this sheet may go too."));
    }

    private static TableRow RegisterRow(Stationery stationery) => Row(stationery, "REG", stationery.Language.Say("Register"), stationery.Language.Say("old one"), stationery.Mark.Issue.ToString(CultureInfo.InvariantCulture), stationery.Language.Say("All of it is new with every issue."));

    private static TableRow Row(Stationery stationery, Leaf leaf, int? takeOut, int? putIn, string words) =>
        Row(stationery, leaf.Label, leaf.Title, Issue(takeOut, stationery.Language), Issue(putIn, stationery.Language), words);

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
        ? Ink.Cell(stationery.Language.Say("none"), Fount.Label, TextAlign.Centre)
        : Ink.Cell(Ink.Column(2, Ink.Text(issue, Fount.Body, TextAlign.Centre), Ink.Tick(stationery.TableTick)));

    private static string? Issue(int? number, Language language) => number is { } n ? language.Say($"issue {n}") : null;

    private static string WordsOf(IssueOutcome issue, LeafOutcome leaf, Language language)
    {
        if (leaf.Fate == LeafFate.Added)
        {
            return language.Say("New.");
        }

        var words = leaf.Changes.Select(c => Shortened(c.Words(issue.On, language)).TrimEnd('.')).ToArray();
        var more = words.Length > MostChanges ? "; " + language.Say($"and {words.Length - MostChanges} more, by the bars") : "";
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
