namespace PaperFlock.Layout.Elements;

/// <summary>Equal cells in rows, filled row by row, over the whole width offered. All of it or none; each child must fit its cell whole.</summary>
/// <param name="CellHeight">Points; null divides the height offered.</param>
/// <param name="Line">Thickness of the lines between cells, centred on the boundaries, each drawn once; 0 for none. A child's room is its cell less half a line all round.</param>
public sealed record Grid(int Columns, ImmutableArray<Element?> Cells, double? CellHeight = null, double Line = 0.5) : Element
{
    public override Placement Place(Space space, LayoutContext context)
    {
        if (Cells.IsEmpty)
        {
            return Placement.Nothing.Instance;
        }

        var rows = (Cells.Length + Columns - 1) / Columns;
        var cell = new Size(space.Width / Columns, CellHeight ?? (space.Height / rows));
        var size = new Size(space.Width, rows * cell.Height);
        if (size.Height > space.Height + Space.Epsilon)
        {
            return Wrap(Points.Needs(size.Height, space.Height));
        }

        var items = ImmutableArray.CreateBuilder<Item>();
        var room = Space.Exactly(Math.Max(0, cell.Width - Line), Math.Max(0, cell.Height - Line));
        for (var i = 0; i < Cells.Length; i++)
        {
            int row = i / Columns, column = i % Columns;
            switch (Cells[i]?.OfferWhole(room, context))
            {
                case Placement.Wraps wraps:
                    return Wrap(wraps with { Path = [$"row {row + 1}", $"column {column + 1}", .. wraps.Path] });
                case Placement.Fits fits:
                    items.Add(new PieceItem((column * cell.Width) + (Line / 2), (row * cell.Height) + (Line / 2), fits.Piece));
                    break;
            }
        }

        if (Line > 0)
        {
            AddLines(size, cell, rows, items);
        }

        return Fit(size, items.ToImmutable());
    }

    private void AddLines(Size size, Size cell, int rows, ImmutableArray<Item>.Builder items)
    {
        for (var row = 1; row < rows; row++)
        {
            items.Add(new LineItem(0, row * cell.Height, size.Width, row * cell.Height, Line));
        }

        for (var column = 1; column < Columns; column++)
        {
            items.Add(new LineItem(column * cell.Width, 0, column * cell.Width, size.Height, Line));
        }
    }
}
