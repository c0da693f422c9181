namespace PaperFlock.Layout.Elements;

/// <summary>Content with something over it. Pages as the content does; what is over it gets its size, anew on each page, and must fit it.</summary>
public sealed record Layers(Element Content, Element Over) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        var content = Content.Offer(space, measurer);
        if (content.Here is not { } piece)
        {
            return Dress(content, whole => whole, rest => rest);
        }

        var over = Over.OfferWhole(Space.Exactly(piece.Size.Width, piece.Size.Height), measurer);
        if (over is Placement.Wraps wraps)
        {
            return Wrap(wraps);
        }

        ImmutableArray<Item> items = over is Placement.Fits fits ? [new PieceItem(0, 0, piece), new PieceItem(0, 0, fits.Piece)] : [new PieceItem(0, 0, piece)];
        return Dress(content, _ => new Piece(piece.Size, items, Name), rest => this with { Content = rest });
    }
}
