namespace PaperFlock.Sheets.Given;

/// <summary>What was given to which ewes: the record the law asks for, unbroken by a handover.</summary>
internal static class GivenSheet
{
    public static readonly SheetDefinition Definition = new("given", "GIVEN", SheetUse.Binder)
    {
        Lives = "binder",
        Purpose = "medicines, drenches and boosters given: when, to which ewes, what and how much, by whom, not for eating before",
        IsForSitter = true,
        Make = Make,
    };

    private static readonly Phrase Lead =
        "Only what the vet or the label says. Write it down when it is given, with what was lost or broken. Local rules say for how long to keep this sheet.";

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var head = PageHead.Of(context, "What was given", Definition.Code, Lead);
        var design = PageDesigns.Upright(context, Definition.Code, head);
        var width = context.Page.UprightWidth;
        var room = design.Paper.Height - design.Front.Vertical - (2 * design.Gap) - Heights.Of(head, width, context) - Heights.Of(design.Foot!, width, context);
        var rows = (int)((room - Heights.Of(Lines(context, 0), width, context) - 1) / context.WriteIn.BarnRow);
        return [Binder.Bind(context, Definition, Definition.Code, "What was given", Lines(context, context.Page.SingleSided ? rows : 2 * rows), design)];
    }

    private static Table Lines(SheetContext context, int rows)
    {
        string[] heads = ["day, time", "which ewes", "what, and its batch", "how much each, where", "by", "not for eating before"];
        return new Table(
            [Track.Fixed(Mm(21)), Track.Share(1.1), Track.Share(), Track.Fixed(Mm(28)), Track.Fixed(Mm(15)), Track.Fixed(Mm(25))],
            [new TableRow([.. heads.Select(h => Block.Cell(h, TypeScale.Label))])],
            [.. Enumerable.Range(0, Math.Max(1, rows)).Select(_ => new TableRow([.. heads.Select(_ => Block.Blank())], rows == 0 ? 0 : context.WriteIn.BarnRow, About: NotContent.Instance))])
        { Name = "given" };
    }
}
