namespace PaperFlock.Sheets.Issues;

/// <summary>A row, and where on a page it has come to stand, in points from the top left corner.</summary>
/// <param name="Piece">Null for a paragraph.</param>
internal sealed record RowOnPage(LeafRow Row, double Left, double Top, double Width, double Height, Piece? Piece)
{
    /// <summary>In reading order.</summary>
    public static ImmutableArray<RowOnPage> Of(Piece page)
    {
        var rows = ImmutableArray.CreateBuilder<RowOnPage>();
        Add(page, 0, 0, RowKey.Paragraph, rows);
        return rows.ToImmutable();
    }

    /// <param name="about">What is round it is about.</param>
    private static void Add(Piece piece, double left, double top, RowKey about, ImmutableArray<RowOnPage>.Builder rows)
    {
        // How often heads of columns stand there depends on where pages end.
        if (piece.About is NotContent || piece.Row is { About: NotContent } || piece.IsHead)
        {
            return;
        }

        about = piece.About as RowKey ?? about;
        if (piece.Row is { } row)
        {
            var key = row.About as RowKey ?? about;
            var cells = row.Cells.Select(cell => new LeafCell(Wording.Of(cell.Child), (cell.Child?.About as RowKey)?.Last));
            rows.Add(new RowOnPage(new LeafRow(key with { Last = key.Last ?? about.Last }, [.. cells]), left, top, piece.Size.Width, piece.Size.Height, piece));
        }
        else if ((piece.Words ?? piece.Says) is { } words)
        {
            rows.Add(new RowOnPage(new LeafRow(about, [new LeafCell(Wording.Tidy(words))]), left, top, piece.Size.Width, piece.Size.Height, null));
        }
        else
        {
            if (piece.Items.Any(item => item is TextItem))
            {
                throw new InvalidOperationException($"nobody has said what {piece.Name ?? "a drawing"} says");
            }

            foreach (var nested in piece.Items.OfType<PieceItem>())
            {
                // A back turned round for the printer is read as it was laid out.
                var (x, y) = nested.QuarterTurns == 2 ? (0, 0) : (left + nested.X, top + nested.Y);
                Add(nested.Piece, x, y, about, rows);
            }
        }
    }
}
