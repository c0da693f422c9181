namespace PaperFlock.Layout.Pages;

/// <summary>Puts words to the page texts of a page once its number is known. Their room was kept, so nothing moves.</summary>
internal static class PageTexts
{
    /// <exception cref="LayoutException">The words are wider than the room kept for them.</exception>
    public static Piece Resolve(Piece piece, PageNumber number, LayoutContext context) => piece with
    {
        Items =
        [
            .. piece.Items.Select(item => item switch
            {
                PageTextItem text => Resolve(text, number, context, piece.Name),
                PieceItem nested => nested with { Piece = Resolve(nested.Piece, number, context) },
                _ => item,
            }),
        ],
    };

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
