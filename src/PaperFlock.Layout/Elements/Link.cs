namespace PaperFlock.Layout.Elements;

/// <summary>A child that leads to the anchor of that name, from every page it is on.</summary>
public sealed record Link(Element Child, string Target) : Element
{
    protected internal override StructureTag? UsualTag => StructureTag.Link;

    public override Placement Place(Space space, ITextMeasurer measurer) => Dress(
        Child.Offer(space, measurer),
        piece => new Piece(piece.Size, [new PieceItem(0, 0, piece), new LinkItem(0, 0, piece.Size.Width, piece.Size.Height, Target, string.Join(' ', piece.Flatten().Items.OfType<TextItem>().Select(text => text.Text)))], Name),
        rest => this with { Child = rest });
}
