namespace PaperFlock.Layout.Elements;

/// <summary>Equal cells in rows, filled row by row, over the whole width offered. All of it or none; each child must fit its cell whole.</summary>
/// <param name="CellHeight">Points; null divides the height offered.</param>
public sealed record Grid(int Columns, ImmutableArray<Element> Cells, double? CellHeight = null) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        if (Cells.IsEmpty)
        {
            return Placement.Nothing.Instance;
        }

        var rows = (Cells.Length + Columns - 1) / Columns;
        var cell = new Size(space.Width / Columns, CellHeight ?? (space.Height / rows));
        var size = new Size(space.Width, rows * cell.Height);
        var items = ImmutableArray.CreateBuilder<Item>(Cells.Length);
        for (var i = 0; i < Cells.Length; i++)
        {
            int row = i / Columns, column = i % Columns;
            switch (Cells[i].OfferWhole(Space.Exactly(cell.Width, cell.Height), measurer))
            {
                case Placement.Wraps wraps:
                    return Wrap(wraps with { Path = [$"row {row + 1}", $"column {column + 1}", .. wraps.Path] });
                case Placement.Fits fits:
                    items.Add(new PieceItem(column * cell.Width, row * cell.Height, fits.Piece));
                    break;
            }
        }

        return TooLarge(size, space) ?? (Placement)Fit(size, items.DrainToImmutable());
    }
}
