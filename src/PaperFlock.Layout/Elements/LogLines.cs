namespace PaperFlock.Layout.Elements;

/// <summary>Ruled lines to write on, to fill the height left: never half a row, at least <paramref name="AtLeast"/>; with none asked for and room for none, nothing.</summary>
/// <param name="RowHeight">Points.</param>
public sealed record LogLines(double RowHeight, int AtLeast = 1) : Element
{
    private const double Line = 0.5;

    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        var rows = (int)((space.Height + Space.Epsilon) / RowHeight);
        if (rows == 0 && AtLeast == 0)
        {
            return Placement.Nothing.Instance;
        }

        if (rows < AtLeast)
        {
            return Wrap(Points.Needs(AtLeast * RowHeight, space.Height));
        }

        var lines = Enumerable.Range(1, rows).Select(row => (row * RowHeight) - (Line / 2)).Select(y => new LineItem(0, y, space.Width, y, Line));
        return Fit(new Size(space.Width, rows * RowHeight), [.. lines]);
    }
}
