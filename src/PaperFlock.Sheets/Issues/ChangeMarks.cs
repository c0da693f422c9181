namespace PaperFlock.Sheets.Issues;

/// <summary>Bars in the outer margin beside the rows that changed, and in each row what it was, where a cell has room for the words. A week on the planner says too much for that.</summary>
internal static class ChangeMarks
{
    private const double Thickness = 2.6;
    private const double Air = 2;
    private const double Between = 7;
    private static readonly TextStyle Was = new(Face.Text, 9);

    /// <param name="page">A page or a card, upright.</param>
    /// <param name="before">What the leaf it belongs to said.</param>
    /// <param name="barAt">Left edge of the bars, in points from the left of <paramref name="page"/>.</param>
    public static Piece On(Piece page, Leaf before, LocalDate day, double barAt, ITextMeasurer measurer)
    {
        var rows = RowOnPage.Of(page);
        var changes = RowDiff.Between(before.Rows, [.. rows.Select(r => r.Row)], day).Where(c => c.Row is not null).ToArray();
        if (changes.Length == 0)
        {
            return page;
        }

        var items = ImmutableArray.CreateBuilder<Item>();
        foreach (var change in changes)
        {
            var row = rows[change.Index];
            items.Add(new RectItem(barAt, row.Top, Thickness, Math.Max(row.Height, Mm(3)), 0));
            if (row.Piece is { } piece && row.Row.Key.Kind != RowKind.Week)
            {
                items.AddRange(Words(piece, change.WasByCell(day), measurer).Select(text => text with { X = row.Left + text.X, Baseline = row.Top + text.Baseline, SpaceFollows = true }));
            }
        }

        var marks = new Piece(page.Size, items.ToImmutable()) { About = NotContent.Instance, Tag = StructureTag.Paragraph };
        return page with { Items = page.Items.Add(new PieceItem(0, 0, marks)) };
    }

    private static IEnumerable<TextItem> Words(Piece row, ImmutableArray<(int Cell, string Words)> was, ITextMeasurer measurer) =>
        was.Select(w => Place(row, w.Cell, w.Words, measurer)).OfType<TextItem>();

    /// <summary>Below what the cell says now, else above or beside it; null where none has room for the whole of the words.</summary>
    private static TextItem? Place(Piece row, int cell, string words, ITextMeasurer measurer)
    {
        var cells = row.Items.OfType<PieceItem>().ToArray();
        var here = cells[cell];
        var right = cell + 1 < cells.Length ? cells[cell + 1].X : row.Size.Width;
        var width = measurer.WidthOf(words, Was);
        if (here.Piece.Items.IsEmpty || width > right - here.X - (2 * Air))
        {
            return null;
        }

        var needed = (TextBox.AscentOfEm + TextBox.DescentOfEm) * Was.Size;
        var below = row.Size.Height - Air - needed;
        var top = below >= here.Y + here.Piece.Size.Height ? below : here.Y >= needed + Air ? Air : (double?)null;
        return top is { } y ? new TextItem(here.X, y + (TextBox.AscentOfEm * Was.Size), words, Was, width) : Beside(here, words, width, right);
    }

    /// <summary>To the right of words that stand on one line with nothing else in the cell.</summary>
    private static TextItem? Beside(PieceItem cell, string words, double width, double right)
    {
        var flat = cell.Piece.Flatten().Items;
        if (flat.Any(i => i is not TextItem))
        {
            return null;
        }

        var texts = flat.OfType<TextItem>().ToArray();
        var start = texts.Max(t => t.X + t.Width) + Between;
        return texts.All(t => t.Baseline == texts[0].Baseline) && cell.X + start + width <= right - (2 * Air)
            ? new TextItem(cell.X + start, cell.Y + texts[0].Baseline, words, Was, width)
            : null;
    }
}
