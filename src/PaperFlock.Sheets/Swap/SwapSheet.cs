using PaperFlock.Sheets.Register;

namespace PaperFlock.Sheets.Swap;

/// <summary>On top of an issue of changed leaves: what comes out of the pack, what goes in, and a sentence why.</summary>
internal static class SwapSheet
{
    public static readonly SheetDefinition Definition = new("changes", "CHG", SheetUse.Binder);

    public static Sheet Make(SheetContext context, IssueOutcome issue, PackIssue before)
    {
        var table = new Table(
            [Track.Fixed(Mm(52)), Track.Fixed(Mm(19)), Track.Fixed(Mm(19)), Track.Share()],
            [Block.Heads(1..3, "leaf", "take out", "put in", "why")],
            [
                RegisterRow(context, before),
                .. issue.PutIn.Select(l => Row(context, l.Leaf, l.Replaces, l.Issue, LeafSentence.Of(l, context.Plan))),
                .. issue.TakenOut.Select(l => Row(context, l.Leaf, l.Issue, null, "No longer needed.")),
            ],
            LeastCarried: 2)
        { Name = "take out, put in", RowHeaders = true };
        var struck = issue.Leaves.Where(l => !l.Struck.IsEmpty).ToArray();
        var body = new Column([table, .. struck.Length == 0 ? Array.Empty<Element>() : [ByHand(context, struck)], Block.Notes(context.WriteIn.TableRow)], 12);
        return Binder.Upright(context, Definition, "Take out, put in", Lead(issue), body, issue: true);
    }

    private static NeedSpace ByHand(SheetContext context, LeafOutcome[] struck) => new(
        Block.Column(
            4,
            Block.Heading("Stays in the pack: strike through by hand"),
            new Table(
                [Track.Fixed(Mm(52)), Track.Fixed(Mm(19)), Track.Share()],
                [Block.Heads(1..2, "leaf", "done", "strike through")],
                [
                    .. struck.Select(l => new TableRow(
                        [
                            Block.Cell(l.Leaf.Label, new TextStyle(Face.MonoBold, 11)),
                            Block.Cell(Block.Tick(context.WriteIn.TableTick)),
                            Block.Cell(new Text(Who.Quoted(string.Join(", ", l.Struck), context.Plan, TypeScale.BodyBold), Leading: 1.2)),
                        ],
                        context.WriteIn.TableTick + 4,
                        Name: l.Leaf.Label)),
                ])
            { Name = "strike through", RowHeaders = true }),
        Mm(30));

    private static string Lead(IssueOutcome issue)
    {
        var (putIn, takenOut) = (issue.PutIn.Length, issue.TakenOut.Length + issue.PutIn.Count(l => l.Replaces is not null));
        var going = English.Plural(putIn, $"{putIn}\u00a0leaf or card goes in", $"{putIn}\u00a0leaves and cards go in");
        var coming = English.Plural(takenOut, $"{takenOut} comes out", $"{takenOut} come out");
        return Block.Sentences(
            $"{going}, {coming}.",
            "Go down the list: take out, put in, tick both. Then bin what came out and the old register; this sheet may go too.");
    }

    private static TableRow RegisterRow(SheetContext context, PackIssue before) => Row(context, RegisterSheet.Definition.Code, "Register", Issue(before.Number), Issue(context.Mark.Issue), "New with every issue.");

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
}
