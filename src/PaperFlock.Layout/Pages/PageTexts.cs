namespace PaperFlock.Layout.Pages;

/// <summary>Puts words to the page texts of a page once its number is known. Their room was kept, so nothing moves.</summary>
internal static class PageTexts
{
    /// <exception cref="LayoutException">The words are wider than the room kept for them.</exception>
    public static Piece Resolve(Piece piece, PageNumber number, ITextMeasurer measurer)
    {
        var items = piece.Items;
        for (var i = 0; i < items.Length; i++)
        {
            // Most pieces have no page text in them and stay as they are.
            if (items[i] is PageTextItem text)
            {
                items = items.SetItem(i, Resolve(text, number, measurer, piece.Name));
            }
            else if (items[i] is PieceItem nested && Resolve(nested.Piece, number, measurer) is var resolved && !ReferenceEquals(resolved, nested.Piece))
            {
                items = items.SetItem(i, nested with { Piece = resolved });
            }
        }

        return items == piece.Items ? piece : piece with { Items = items };
    }

    private static TextItem Resolve(PageTextItem item, PageNumber number, ITextMeasurer measurer, string? name)
    {
        var words = item.Words(number);
        var width = measurer.WidthOf(words, item.Style);
        if (width > item.Width + Space.Epsilon)
        {
            throw new LayoutException($"“{words}” {Points.NeedsWidth(width, item.Width)}", name is null ? [] : [name]);
        }

        return new TextItem(item.X, item.Baseline, words, item.Style, width);
    }
}
