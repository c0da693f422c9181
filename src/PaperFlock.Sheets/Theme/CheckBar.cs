namespace PaperFlock.Sheets.Theme;

/// <summary>A bar 100 mm long, end to end of its ticks, to lay a ruler on.</summary>
internal static class CheckBar
{
    public static readonly double Width = Mm(100) + Lines.Box;

    public static Element Element()
    {
        const double tick = 6;
        const double y = tick / 2;
        var left = Lines.Box / 2;
        var right = left + Mm(100);
        return new Column(
            [
                new Picture(
                    new Size(Width, tick),
                    [
                        new LineItem(left, y, right, y, Lines.Box),
                        new LineItem(left, 0, left, tick, Lines.Box),
                        new LineItem(right, 0, right, tick, Lines.Box),
                    ]),
                new Row([new RowCell(Track.Fixed(Width), Block.Text("must measure 100 mm; if not, print again at actual size", TypeScale.Label with { Size = 9 }, TextAlign.Centre))]),
            ],
            1)
        { About = NotContent.Instance };
    }
}
