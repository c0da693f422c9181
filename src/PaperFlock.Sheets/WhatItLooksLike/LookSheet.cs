namespace PaperFlock.Sheets.WhatItLooksLike;

/// <summary>Is this normal, and what do I do? Line drawings for whoever has never seen it.</summary>
internal static class LookSheet
{
    public static readonly SheetDefinition Definition = new("look", "LOOK", SheetUse.Binder)
    {
        Lives = "shed door",
        Purpose = "what is normal, what is the keeper's and what the vet's, in drawings",
        IsForSitter = true,
        IsOneLeaf = true,
        Make = Make,
    };

    private const int PanelsOnASide = 6;

    private static readonly TextStyle Verdict = TypeScale.Cap(Face.TextBold, 8);

    /// <summary>A frame this heavy says at a glance what cannot wait.</summary>
    private const double NowFrame = 4;

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var (fronts, backs) = (LookPanel.All[..PanelsOnASide], LookPanel.All[PanelsOnASide..]);
        var body = Block.Column(0, VetsLook(context), Panels(fronts), new PageBreak(), Panels(backs));
        var head = PageHead.Of(context, "What it looks like", Definition.Code);
        return [Binder.Bind(context, Definition, Definition.Code, "What it looks like", body, PageDesigns.Upright(context, Definition.Code, head))];
    }

    private static Board VetsLook(SheetContext context)
    {
        const string words = "Have your vet look this over before you use it:";
        var size = new Size(context.Page.UprightWidth, context.WriteIn.TableRow);
        var line = new Row(
            [
                new RowCell(Track.Fixed(context.Measurer.WidthOf(words, TypeScale.Body) + 1), Block.Text(words, TypeScale.Body), VerticalAlign.Bottom),
                new RowCell(Track.Share(), new Box(null, Edges.None, Lines.Grid, Sides.Bottom)),
            ],
            4);
        return new Board(size, [new BoardPlace(0, 0, size.Width, size.Height, line)]);
    }

    private static Grid Panels(ImmutableArray<LookPanel> panels) => new(2, [.. panels.Select(Panel)]);

    private static Box Panel(LookPanel panel)
    {
        var border = panel.Verdict == "VET NOW" ? NowFrame : Lines.Box;
        var drawing = panel.Read();
        return new Box(
            new Box(
                Block.Column(
                    2,
                    Block.Text(panel.Verdict, Verdict, leading: 0.85) with { Tag = StructureTag.Heading(2) },
                    Block.Text(panel.Line, TypeScale.Body),
                    new Chart(null, null, (size, _) => drawing.Within(size), panel.Shows)),
                Edges.All(6 - border),
                border),
            Edges.All(3));
    }
}
