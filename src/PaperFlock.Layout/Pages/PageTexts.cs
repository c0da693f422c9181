namespace PaperFlock.Layout.Pages;

/// <summary>Puts words to the page texts of a page once its number is known. Their room was kept, so nothing moves.</summary>
internal static class PageTexts
{
    /// <exception cref="LayoutException">The words are wider than the room kept for them.</exception>
    public static Piece Resolve(Piece piece, PageNumber number, LayoutContext context)
    {
        var items = piece.Items;
        for (var i = 0; i < items.Length; i++)
        {
            // Most pieces have no page text in them and stay as they are.
            if (items[i] is PageTextItem text)
            {
                items = items.SetItem(i, Resolve(text, number, context, piece.Name));
            }
            else if (items[i] is PieceItem nested && Resolve(nested.Piece, number, context) is var resolved && !ReferenceEquals(resolved, nested.Piece))
            {
                items = items.SetItem(i, nested with { Piece = resolved });
            }
        }

        return items == piece.Items ? piece : piece with { Items = items };
    }

    private static TextItem Resolve(PageTextItem item, PageNumber number, LayoutContext context, string? name)
    {
        var words = item.Words(number);
        var width = context.Measurer.WidthOf(words, item.Style);
        if (width > item.Width + Space.Epsilon)
        {
            throw new LayoutException($"“{words}” {Points.NeedsWidth(width, item.Width)}", name is null ? [] : [name]);
        }

        return new TextItem(item.X, item.Baseline, words, item.Style, width);
    }
}
