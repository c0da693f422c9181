using PaperFlock.Sheets.Register;

namespace PaperFlock.Sheets.Swap;

/// <summary>On top of an issue of changed leaves: what comes out of the pack, what goes in, and what each leaf said before.</summary>
internal static class SwapSheet
{
    public static readonly SheetDefinition Definition = new("changes", "CHG", SheetUse.Binder);

    /// <summary>Changed rows named for a leaf; the bars on the leaf show the rest.</summary>
    private const int MostChanges = 4;
    private const int LongestChange = 100;

    public static Sheet Make(SheetContext context, IssueOutcome issue)
    {
        var table = new Table(
            [Track.Fixed(Mm(46)), Track.Fixed(Mm(19)), Track.Fixed(Mm(19)), Track.Share()],
            [
                new TableRow(
                [
                    Block.Cell("leaf", TypeScale.Label), Block.Cell("take out", TypeScale.Label, TextAlign.Centre), Block.Cell("put in", TypeScale.Label, TextAlign.Centre), Block.Cell("what it said before, and why it goes", TypeScale.Label),
                ]),
            ],
            [
                RegisterRow(context),
                .. issue.PutIn.Select(l => Row(context, l.Leaf, l.Replaces, l.Issue, WordsOf(issue, l))),
                .. issue.TakenOut.Select(l => Row(context, l.Leaf, l.Issue, null, "No longer part of the pack.")),
            ],
            LeastCarried: 2)
        { Name = "take out, put in", RowHeaders = true };
        var body = new Column([table, Block.Notes(context.WriteIn.TableRow)], 12);
        return Binder.Upright(context, Definition, "Take out, put in", Lead(issue), body, context.Mark.IssueWords);
    }

    private static string Lead(IssueOutcome issue)
    {
        var (putIn, takenOut) = (issue.PutIn.Length, issue.TakenOut.Length + issue.PutIn.Count(l => l.Replaces is not null));
        var going = English.Plural(putIn, $"{putIn}\u00a0leaf or card goes in", $"{putIn}\u00a0leaves and cards go in");
        var coming = English.Plural(takenOut, $"{takenOut} comes out", $"{takenOut} come out");
        return Block.Sentences(
            $"{going}, {coming}.",
            "Go down the list: take out, put in, tick both. Then bin what came out and the old register; this sheet may go too.");
    }

    private static TableRow RegisterRow(SheetContext context) => Row(context, RegisterSheet.Definition.Code, "Register", "old one", context.Mark.Issue.ToString(CultureInfo.InvariantCulture), "All of it is new with every issue.");

    private static TableRow Row(SheetContext context, Leaf leaf, int? takeOut, int? putIn, string words) =>
        Row(context, leaf.Label, leaf.Title, Issue(takeOut), Issue(putIn), words);

    private static TableRow Row(SheetContext context, string label, string title, string? takeOut, string? putIn, string words) => new(
        [
            Block.Cell(Block.Column(1, Block.Text(label, new TextStyle(Face.MonoBold, 11)), new Text(Who.Quoted(title, context.Plan, TypeScale.Label)))),
            Step(context, takeOut),
            Step(context, putIn),
            Block.Cell(new Text(Who.Quoted(words, context.Plan, TypeScale.Body), Leading: 1.2)),
        ],
        context.WriteIn.TableTick + 8,
        Name: label);

    /// <summary>An empty cell is not to be written in: there is nothing to take out, or nothing to put in.</summary>
    private static TableCell Step(SheetContext context, string? issue) => issue is null
        ? Block.Cell("none", TypeScale.Label, TextAlign.Centre)
        : Block.Cell(Block.Column(2, Block.Text(issue, TypeScale.Body, TextAlign.Centre), Block.Tick(context.WriteIn.TableTick)));

    private static string? Issue(int? number) => number is { } n ? $"issue {n}" : null;

    private static string WordsOf(IssueOutcome issue, LeafOutcome leaf)
    {
        if (leaf.Fate == LeafFate.Added)
        {
            return "New.";
        }

        var words = leaf.Changes.Select(c => Shortened(c.Words(issue.On)).TrimEnd('.')).ToArray();
        var more = words.Length > MostChanges ? "; " + $"and {words.Length - MostChanges} more, by the bars" : "";
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
