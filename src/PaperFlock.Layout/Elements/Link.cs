namespace PaperFlock.Layout.Elements;

/// <summary>A child that leads to the anchor of that name, from every page it is on.</summary>
public sealed record Link(Element Child, string Target) : Element
{
    protected internal override StructureTag? UsualTag => StructureTag.Link;

    public override Placement Place(Space space, LayoutContext context) => Dress(
        Child.Offer(space, context),
        piece => new Piece(piece.Size, [new PieceItem(0, 0, piece), new LinkItem(0, 0, piece.Size.Width, piece.Size.Height, Target, string.Join(' ', piece.Texts().Select(text => text.Text)))], Name),
        rest => this with { Child = rest });
}

/// <summary>A child that links can lead to: the first part of it, if it splits. Takes no room round a child with nothing to show, but is still there.</summary>
public sealed record Anchor(Element Child, string Target) : Element
{
    public override Placement Place(Space space, LayoutContext context)
    {
        var placement = Child.Offer(space, context);
        return placement is Placement.Nothing
            ? Fit(default, [new AnchorItem(0, 0, Target)])
            : Dress(placement, piece => new Piece(piece.Size, [new AnchorItem(0, 0, Target), new PieceItem(0, 0, piece)], Name), rest => new Continued(rest) { Name = Name });
    }

    /// <summary>What is left below the anchor: there is one place to lead to, not one a page.</summary>
    private sealed record Continued(Element Child) : Element
    {
        public override Placement Place(Space space, LayoutContext context) =>
            Dress(Child.Offer(space, context), piece => piece, rest => this with { Child = rest });
    }
}
