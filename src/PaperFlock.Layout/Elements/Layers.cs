namespace PaperFlock.Layout.Elements;

/// <summary>Content with something behind or over it. Pages as the content does; the other layers get its size, anew on each page, and must fit it.</summary>
public sealed record Layers(Element Content, Element? Behind = null, Element? Over = null) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        var content = Content.Offer(space, measurer);
        if (content.Here is not { } piece)
        {
            return Dress(content, whole => whole, rest => rest);
        }

        var items = ImmutableArray.CreateBuilder<Item>(3);
        var failure = AddLayer(Behind);
        items.Add(new PieceItem(0, 0, piece));
        failure ??= AddLayer(Over);

        return failure is null
            ? Dress(content, _ => new Piece(piece.Size, items.ToImmutable(), Name), rest => this with { Content = rest })
            : Wrap(failure);

        Placement.Wraps? AddLayer(Element? layer)
        {
            var placement = layer?.OfferWhole(Space.Exactly(piece.Size.Width, piece.Size.Height), measurer);
            if (placement is Placement.Fits fits)
            {
                items.Add(new PieceItem(0, 0, fits.Piece));
            }

            return placement as Placement.Wraps;
        }
    }
}
