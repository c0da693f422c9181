namespace PaperFlock.Layout.Tables;

/// <summary>The part of a table that stands on one page: its head, and as many whole rows as there is room for. Each row is planned once.</summary>
internal sealed class TablePart(Table table, double[] edges, int first, ITextMeasurer measurer)
{
    private readonly List<PlacedTableRow> _rows = [];
    private double _headHeight;
    private double _used;

    public Placement Place(Space space)
    {
        for (var i = 0; i < table.Head.Length; i++)
        {
            if (Add(table.Head[i], isHead: true, i, space) is { } wraps)
            {
                return wraps;
            }
        }

        var head = _rows.Count;
        _headHeight = _used;
        Placement.Wraps? full = null;
        var next = first;
        while (next < table.Body.Length && full is null)
        {
            full = Add(table.Body[next], isHead: false, next, space);
            next += full is null ? 1 : 0;
        }

        if (full is not null)
        {
            var kept = LastToKeep(SparedFrom(next), space.IsFresh);
            if (kept == first)
            {
                return full;
            }

            _rows.RemoveRange(head + kept - first, next - kept);
            return new Placement.Splits(Draw(), table.From(kept));
        }

        return _rows.Count == 0 ? Placement.Nothing.Instance : new Placement.Fits(Draw());
    }

    private Placement.Wraps? Add(TableRow row, bool isHead, int index, Space space)
    {
        // On a fresh page a body row has all that the head leaves.
        var left = new Space(space.Width, Math.Max(0, space.Height - _used), Math.Max(0, space.FullHeight - (isHead ? _used : _headHeight)));
        HeaderScope? others = isHead ? HeaderScope.Column : null;
        switch (TableMeasurer.Place(row, isHead || !table.RowHeaders ? others : HeaderScope.Row, others, edges, left, measurer))
        {
            case Placement.Fits fits:
                _rows.Add(new PlacedTableRow(row, isHead, _used, isHead ? Head(fits.Piece) : fits.Piece));
                _used += fits.Piece.Size.Height;
                return null;
            case Placement.Wraps wraps:
                var name = row.Name ?? row.About?.Called ?? string.Create(CultureInfo.InvariantCulture, $"{(isHead ? "head row" : "row")} {index + 1}");
                return wraps with { Path = wraps.Path.Insert(0, name) };
            default:
                throw new InvalidOperationException("a row either fits or wraps");
        }
    }

    /// <summary>Said once, however often it is printed.</summary>
    private Piece Head(Piece row) => row with { IsHead = true, Tag = first == 0 ? row.Tag : StructureTag.RunningHead };

    /// <summary>The index to carry on from, so that no row or two stand alone on the last page.</summary>
    private int SparedFrom(int next)
    {
        var wanted = Math.Min(next, table.Body.Length - table.LeastCarried);
        return wanted - first >= table.LeastCarried ? wanted : next;
    }

    /// <summary>The index to carry on from: past the last row that may be the last on a page.</summary>
    private int LastToKeep(int next, bool fresh)
    {
        var kept = next;
        while (kept > first && table.Body[kept - 1].KeepWithNext)
        {
            kept--;
        }

        // Rows that all cling to their next, and fill a fresh page, must part somewhere.
        return kept == first && fresh ? next : kept;
    }

    private Piece Draw()
    {
        var height = _rows.Count == 0 ? 0 : _rows[^1].Bottom;
        var items = ImmutableArray.CreateBuilder<Item>();
        foreach (var row in _rows)
        {
            if (!row.Piece.Items.IsEmpty)
            {
                items.Add(new PieceItem(0, row.Top, row.Piece));
            }
        }

        TableRules.Draw(table, edges, _rows, items);
        return new Piece(new Size(edges[^1], height), items.DrainToImmutable(), table.Name);
    }
}

/// <param name="Top">Of the row, from the top of the table's part on this page.</param>
internal readonly record struct PlacedTableRow(TableRow Row, bool IsHead, double Top, Piece Piece)
{
    public double Bottom => Top + Piece.Size.Height;
}
