namespace PaperFlock.Layout.Tables;

/// <summary>Draws each line of a table once: one across for each boundary between rows, one down for each stretch of rows that share a column boundary, then the frame.</summary>
internal static class TableRules
{
    public static void Draw(Table table, double[] edges, List<PlacedTableRow> rows, ImmutableArray<Item>.Builder items)
    {
        if (rows.Count == 0)
        {
            return;
        }

        DrawAcross(table, edges[^1], rows, items);
        DrawDown(edges, rows, items);
        items.Add(new RectItem(Table.Frame / 2, Table.Frame / 2, edges[^1] - Table.Frame, rows[^1].Bottom - Table.Frame, Table.Frame));
    }

    private static void DrawAcross(Table table, double width, List<PlacedTableRow> rows, ImmutableArray<Item>.Builder items)
    {
        for (var i = 1; i < rows.Count; i++)
        {
            var thickness = rows[i].Row.RuleAbove ?? Table.Grid;
            if (rows[i - 1].IsHead && !rows[i].IsHead)
            {
                thickness = Math.Max(table.HeadRule, rows[i].Row.RuleAbove ?? 0);
            }

            if (thickness > 0)
            {
                items.Add(new LineItem(0, rows[i].Top, width, rows[i].Top, thickness));
            }
        }
    }

    private static void DrawDown(double[] edges, List<PlacedTableRow> rows, ImmutableArray<Item>.Builder items)
    {
        var columns = edges.Length - 1;
        var ruled = new bool[rows.Count * columns];
        for (var row = 0; row < rows.Count; row++)
        {
            var column = 0;
            foreach (var cell in rows[row].Row.Cells)
            {
                ruled[(row * columns) + column] = true;
                column += cell.Span;
            }
        }

        for (var column = 1; column < columns; column++)
        {
            var start = -1;
            for (var row = 0; row <= rows.Count; row++)
            {
                var continues = row < rows.Count && ruled[(row * columns) + column];
                if (continues && start < 0)
                {
                    start = row;
                }
                else if (!continues && start >= 0)
                {
                    items.Add(new LineItem(edges[column], rows[start].Top, edges[column], rows[row - 1].Bottom, Table.Grid));
                    start = -1;
                }
            }
        }
    }
}
