namespace PaperFlock.Sheets.Guide;

/// <summary>How to use a pack on one leaf: for whoever is handed a binder and has never seen one.</summary>
public static class UserGuide
{
    private const string Code = "GUIDE";
    private const double Gap = 8;
    private const double Leading = 1.3;

    /// <returns>A front and its back, and more where the words need them, punched as a pack is.</returns>
    /// <exception cref="SheetException">A paragraph does not fit a page of this paper.</exception>
    public static Sheet Compose(Paper paper, ITextMeasurer measurer)
    {
        var size = Papers.Of(paper);
        var pages = Binder.Pages(measurer, Code, Body(), Design(size, paper == Paper.Letter ? Binding.ThreeHole : Binding.TwoHole));
        return new Sheet(
            new SheetDefinition("guide", Code, SheetUse.Binder),
            Code,
            "How to use this pack",
            [.. pages.Select(p => new SheetSide(p, string.Create(CultureInfo.InvariantCulture, $"{Code} {p.Number.Number}"), []))]);
    }

    private static PageDesign Design(Size paper, Binding binding) => new(
        paper,
        new Edges(Mm(20), Mm(9), Mm(9), PageSetup.UnprintableFoot),
        new Edges(Mm(9), Mm(9), Mm(20), PageSetup.UnprintableFoot),
        Block.Column(
            3,
            Block.Ends(Block.Text("How to use this pack", TypeScale.Title, leading: 1.1) with { Tag = StructureTag.Heading(1) }, Block.Text(Code, TypeScale.Code, TextAlign.Right), Mm(34), 10),
            new Rule(Lines.Section)),
        null,
        new Column([new Rule(Lines.Grid), new PageText(n => string.Create(CultureInfo.InvariantCulture, $"{Code} {n.Number}/{n.Of} · ") + "keep it at the front of the binder", TypeScale.Control)], 3),
        Gap,
        side => HoleTicks.Upright(paper, binding, side));

    private static Column Body() => new(
        [
            .. GuideText.Front().Select(Part),
            Sheets(),
            new PageBreak(),
            .. GuideText.Back().Select(Part),
        ],
        11);

    private static KeepTogether Part(GuidePart part) => new(new Column(
        [
            Block.Heading(part.Title),
            part.InOrder ? Block.Numbered(3, Steps(part)) : Block.List(3, Steps(part).Select(s => Block.ListItem("·", s))),
        ],
        3));

    private static IEnumerable<Text> Steps(GuidePart part) => part.Steps.Select(s => Block.Text(s, TypeScale.Body, leading: Leading));

    private static Table Sheets() => new(
        [Track.Fixed(Mm(19)), Track.Fixed(Mm(31)), Track.Share()],
        [Block.Heads("code", "lives", "what it is for")],
        [
            .. PackSheets.All.Select(s => new TableRow(
                [Block.Cell(s.Code, new TextStyle(Face.MonoBold, 11)), Block.Cell(s.Lives, TypeScale.Label), Block.Cell(s.Purpose, TypeScale.Body)],
                MinHeight: Mm(8),
                Name: s.Code)),
        ])
    { Name = "sheets", RowHeaders = true };
}
