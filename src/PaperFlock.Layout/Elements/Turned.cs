namespace PaperFlock.Layout.Elements;

/// <summary>A child turned by whole quarters clockwise: offered the space with width and height swapped, and hugging its content. Never splits.</summary>
/// <param name="QuarterTurns">1 reads downwards, 3 upwards.</param>
public sealed record Turned(Element Child, int QuarterTurns) : Element
{
    public override Placement Place(Space space, LayoutContext context)
    {
        var turns = QuarterTurns & 3;
        var swaps = turns is 1 or 3;
        var offered = swaps ? new Space(space.Height, space.Width, space.Width) : space with { Least = default };
        return Dress(Child.OfferWhole(offered, context), Turn, rest => rest);

        Piece Turn(Piece piece)
        {
            var size = swaps ? new Size(piece.Size.Height, piece.Size.Width) : piece.Size;
            return new Piece(size, [new PieceItem(0, 0, piece, turns)], Name);
        }
    }
}
