namespace PaperFlock.Layout.Elements;

/// <summary>Copies of a row to fill the height left: never half a row, at least <paramref name="AtLeast"/>; with none asked for and room for none, nothing.</summary>
/// <param name="RowHeight">Points.</param>
/// <param name="Row">What each row shows; null for a ruled line to write on, at the foot of the row.</param>
public sealed record LogLines(double RowHeight, Element? Row = null, int AtLeast = 1) : Element
{
    private const double Line = 0.5;

    public override Placement Place(Space space, LayoutContext context)
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

        var row = Row?.OfferWhole(Space.Exactly(space.Width, RowHeight), context);
        if (row is Placement.Wraps wraps)
        {
            return Wrap(wraps);
        }

        var items = ImmutableArray.CreateBuilder<Item>(rows);
        for (var i = 0; i < rows; i++)
        {
            if (row is Placement.Fits fits)
            {
                items.Add(new PieceItem(0, i * RowHeight, fits.Piece));
            }
            else if (Row is null)
            {
                var y = ((i + 1) * RowHeight) - (Line / 2);
                items.Add(new LineItem(0, y, space.Width, y, Line));
            }
        }

        return Fit(new Size(space.Width, rows * RowHeight), items.ToImmutable());
    }
}
