namespace PaperFlock.Layout.Elements;

/// <summary>Children one under another, as wide as the widest. Splits between or inside them; spacing only between children that took room.</summary>
public sealed record Column(ImmutableArray<Element> Children, double Spacing = 0) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer) => PlaceFrom(0, null, space, measurer);

    /// <param name="next">Index of the first child still to be placed.</param>
    /// <param name="carried">What is left of that child, where some of it is on an earlier page.</param>
    private Placement PlaceFrom(int next, Element? carried, Space space, ITextMeasurer measurer)
    {
        var items = ImmutableArray.CreateBuilder<Item>(Math.Min(8, Children.Length - next));
        double width = 0, used = 0;
        for (var i = next; i < Children.Length; i++)
        {
            var child = i == next ? carried ?? Children[i] : Children[i];
            var gap = used > Space.Epsilon ? Spacing : 0;
            var left = new Space(space.Width, space.Height - used - gap, space.FullHeight) { Least = new Size(space.Least.Width, 0) };
            switch (child.Offer(left, measurer))
            {
                case Placement.Fits fits:
                    Add(fits.Piece, gap);
                    break;
                case Placement.Splits splits:
                    Add(splits.Piece, gap);
                    return new Placement.Splits(Stack(), After(i, splits.Rest));

                // Nothing has taken room yet, so whatever stands before this child (an anchor, say) goes with it.
                case Placement.Wraps wraps when used <= Space.Epsilon:
                    return Wrap(wraps);
                case Placement.Wraps:
                    return new Placement.Splits(Stack(), From(i, null));
            }
        }

        return items.Count == 0 ? Placement.Nothing.Instance : new Placement.Fits(Stack());

        void Add(Piece piece, double gap)
        {
            var takesRoom = piece.Size.Height > Space.Epsilon;
            var y = takesRoom ? used + gap : used;
            items.Add(new PieceItem(0, y, piece));
            width = Math.Max(width, piece.Size.Width);
            used = takesRoom ? y + piece.Size.Height : used;
        }

        Piece Stack() => new(new Size(width, used), items.DrainToImmutable(), Name);
    }

    private Element After(int child, Element left) =>
        left is not Empty ? From(child, left) : child + 1 == Children.Length ? left : From(child + 1, null);

    private Rest From(int child, Element? carried) => Left((space, measurer) => PlaceFrom(child, carried, space, measurer));
}
