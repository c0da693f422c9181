namespace PaperFlock.Layout.Tables;

/// <summary>Places the cells of one row, all as high as the highest.</summary>
internal static class TableMeasurer
{
    /// <param name="first">What the first cell is the header of; null for none.</param>
    /// <param name="others">The same of the other cells.</param>
    /// <returns>Fits or wraps: a row is never torn.</returns>
    public static Placement Place(TableRow row, HeaderScope? first, HeaderScope? others, double[] edges, Space space, ITextMeasurer measurer)
    {
        if (row.Cells.Sum(cell => cell.Span) is var covered && covered != edges.Length - 1)
        {
            throw new InvalidOperationException($"the cells of a table row {row.Name} cover {covered} of {edges.Length - 1} columns");
        }

        var pieces = new Piece?[row.Cells.Length];
        var height = row.MinHeight;
        var column = 0;
        for (var i = 0; i < pieces.Length; i++)
        {
            var cell = row.Cells[i];
            var padding = cell.Padding ?? Table.UsualPadding;
            if (cell.Child is not null)
            {
                var width = Math.Max(0, edges[column + cell.Span] - edges[column] - padding.Horizontal);
                var room = new Space(width, space.Height - padding.Vertical, space.FullHeight - padding.Vertical) { Least = new Size(width, 0) };
                var placement = cell.Child.OfferWhole(room, measurer);
                if (placement is Placement.Wraps wraps)
                {
                    return wraps with { Path = wraps.Path.Insert(0, string.Create(CultureInfo.InvariantCulture, $"column {column + 1}")) };
                }

                pieces[i] = (placement as Placement.Fits)?.Piece;
            }

            height = Math.Max(height, padding.Vertical + (pieces[i]?.Size.Height ?? 0));
            column += cell.Span;
        }

        return height > space.Height + Space.Epsilon
            ? new Placement.Wraps(Points.Needs(height, space.Height), [])
            : new Placement.Fits(Assemble(row, first, others, edges, pieces, height));
    }

    private static Piece Assemble(TableRow row, HeaderScope? first, HeaderScope? others, double[] edges, Piece?[] pieces, double height)
    {
        var items = ImmutableArray.CreateBuilder<Item>(pieces.Length);
        var column = 0;
        for (var i = 0; i < pieces.Length; i++)
        {
            var cell = row.Cells[i];
            var padding = cell.Padding ?? Table.UsualPadding;
            var width = Math.Max(0, edges[column + cell.Span] - edges[column] - padding.Horizontal);
            var y = padding.Top + cell.Align.Offset(pieces[i]?.Size.Height ?? 0, height - padding.Vertical);
            var tag = (cell.Scope ?? (i == 0 ? first : others)) is { } scope ? StructureTag.HeaderCell(scope, cell.Span) : StructureTag.Cell(cell.Span);
            items.Add(new PieceItem(edges[column] + padding.Left, y, pieces[i]?.As(tag) ?? new Piece(new Size(width, 0), []) { Tag = tag }));
            column += cell.Span;
        }

        return new Piece(new Size(edges[^1], height), items.DrainToImmutable(), row.Name) { Row = row, Tag = StructureTag.Row };
    }
}
