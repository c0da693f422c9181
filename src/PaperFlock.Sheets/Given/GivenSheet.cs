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
        var lines = RuledBack.Filling(
            context,
            new Size(width, Heights.OfBody(design, width, context)),
            [Track.Fixed(Mm(21)), Track.Share(1.1), Track.Share(), Track.Fixed(Mm(28)), Track.Fixed(Mm(15)), Track.Fixed(Mm(25))],
            Block.Heads("day, time", "which ewes", "what, and its batch", "how much each, where", "by", "not for eating before"),
            "given",
            context.Page.SingleSided ? 1 : 2);
        return [Binder.Bind(context, Definition, Definition.Code, "What was given", lines, design)];
    }
}
