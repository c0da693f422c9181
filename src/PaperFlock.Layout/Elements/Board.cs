namespace PaperFlock.Layout.Elements;

/// <summary>Children at stated places on a board of a stated size: cards on a sheet, marks on a page. Never splits; each child must fit its place whole.</summary>
public sealed record Board(Size Size, ImmutableArray<BoardPlace> Places) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        if (TooLarge(Size, space) is { } tooLarge)
        {
            return tooLarge;
        }

        var items = ImmutableArray.CreateBuilder<Item>(Places.Length);
        foreach (var place in Places)
        {
            switch (place.Child.OfferWhole(Space.Exactly(place.Width, place.Height), measurer))
            {
                case Placement.Wraps wraps:
                    return Wrap(wraps);
                case Placement.Fits fits:
                    items.Add(new PieceItem(place.X, place.Y, fits.Piece));
                    break;
            }
        }

        return Fit(Size, items.DrainToImmutable());
    }
}

/// <summary>In points from the board's top left corner.</summary>
public readonly record struct BoardPlace(double X, double Y, double Width, double Height, Element Child);
