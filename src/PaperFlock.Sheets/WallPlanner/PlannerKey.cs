namespace PaperFlock.Sheets.WallPlanner;

/// <summary>What the shapes on the planner mean.</summary>
internal static class PlannerKey
{
    public static Element Of(SheetContext context, PlannerFormat format, double? seamX)
    {
        var style = format.Near with { Size = Math.Min(format.Near.Size, 12) };
        var side = Mm(4);
        var box = new Picture(new Size(side, side), [new RectItem(1, 1, side - 2, side - 2, Lines.Section)]);
        var bar = new Picture(
            new Size(side, side),
            [
                new RectItem(side * 0.4, 1, side * 0.5, side - 1.5, Lines.Grid),
                new LineItem(side * 0.4, side * 0.55, side * 0.9, side * 0.1, Lines.Grid),
                new LineItem(side * 0.4, side * 0.95, side * 0.9, side * 0.5, Lines.Grid),
                new LineItem(side * 0.15, 1, side * 0.15, side - 1, Lines.Box),
            ]);
        var band = new Picture(new Size(side * 1.6, side), [new RectItem(0, side * 0.3, side * 1.6, Mm(1.3), 0)]);
        var left = ImmutableArray.Create(
            Entry(box, "something to do that day", style, context),
            Entry(band, "a sitter has the pack", style, context));
        var right = context.Plan.Lambing.Days.IsEmpty
            ? ImmutableArray<RowCell>.Empty
            : [Entry(bar, "ewes expected to lamb; the line runs from the 1-in-10 low to the 1-in-10 high", style, context)];
        if (seamX is null && !right.IsEmpty && left.Concat(right).Sum(e => e.Width.Points + 14) > format.Live.Width)
        {
            return Block.Column(3, new Row([.. left, new RowCell(Track.Share(), Block.Gap(1))], 14), new Row([.. right, new RowCell(Track.Share(), Block.Gap(1))], 14));
        }

        return seamX is { } cut
            ? new Row([new RowCell(Track.Fixed(cut), new Row(left, 14)), new RowCell(Track.Share(), new Row(right.IsEmpty ? [new RowCell(Track.Share(), Block.Gap(1))] : right, 14))])
            : new Row([.. left, .. right, new RowCell(Track.Share(), Block.Gap(1))], 14);
    }

    private static RowCell Entry(Picture shape, string words, TextStyle style, SheetContext context)
    {
        var wide = context.Measurer.WidthOf(words, style) + 1;
        return new RowCell(
            Track.Fixed(shape.Size.Width + 6 + wide),
            new Row([new RowCell(Track.Fixed(shape.Size.Width), shape, VerticalAlign.Middle), new RowCell(Track.Share(), Block.Text(words, style), VerticalAlign.Middle)], 6),
            VerticalAlign.Middle);
    }
}
