namespace PaperFlock.Layout.Elements;

/// <summary>
/// A child held to a size in points; null leaves that side to the child. Empty paper when the child is null.
/// With an exact height the child must fit whole; without, it splits as it would alone.
/// </summary>
/// <param name="Width">Exact.</param>
/// <param name="Height">Exact.</param>
public sealed record Sized(Element? Child, double? Width = null, double? Height = null, double MinWidth = 0) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        var least = new Size(Width ?? MinWidth, Height ?? 0);
        if (TooLarge(least, space) is { } tooLarge)
        {
            return tooLarge;
        }

        var inside = new Space(Width ?? space.Width, Height ?? space.Height, Height ?? space.FullHeight)
        {
            Least = new Size(Width is null ? Math.Max(least.Width, space.Least.Width) : least.Width, least.Height),
        };
        var placement = Child is null ? Placement.Nothing.Instance : Height is null ? Child.Offer(inside, measurer) : Child.OfferWhole(inside, measurer);
        if (placement is Placement.Nothing)
        {
            return least == default ? placement : Fit(least, []);
        }

        return Dress(placement, Hold, rest => this with { Child = rest });
    }

    private Piece Hold(Piece piece) =>
        new(new Size(Width ?? Math.Max(MinWidth, piece.Size.Width), Height ?? piece.Size.Height), [new PieceItem(0, 0, piece)], Name);
}
