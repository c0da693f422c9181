using System.Collections.Immutable;

namespace PaperFlock.Layout.Elements;

/// <summary>Children at stated places on a board of a stated size: cards on a sheet, marks on a page. Never splits; each child must fit its place whole.</summary>
public sealed record Board(Size Size, ImmutableArray<BoardPlace> Places) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}

/// <summary>In points from the board's top left corner.</summary>
public readonly record struct BoardPlace(double X, double Y, double Width, double Height, Element Child);
