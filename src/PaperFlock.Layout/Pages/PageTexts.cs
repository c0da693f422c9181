namespace PaperFlock.Layout.Pages;

/// <summary>Puts words to the page texts of a page once its number is known. Their room was kept, so nothing moves.</summary>
internal static class PageTexts
{
    /// <exception cref="LayoutException">The words are wider than the room kept for them.</exception>
    public static Piece Resolve(Piece piece, PageNumber number, LayoutContext context)
    {
        ImmutableArray<Item>.Builder? items = null;
        for (var i = 0; i < piece.Items.Length; i++)
        {
            var item = piece.Items[i];
            var resolved = item switch
            {
                PageTextItem text => Resolve(text, number, context, piece.Name),
                PieceItem nested when Resolve(nested.Piece, number, context) is var inner && !ReferenceEquals(inner, nested.Piece) => nested with { Piece = inner },
                _ => item,
            };
            if (!ReferenceEquals(resolved, item))
            {
                items ??= piece.Items.ToBuilder();
                items[i] = resolved;
            }
        }

        return items is null ? piece : piece with { Items = items.DrainToImmutable() };
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
