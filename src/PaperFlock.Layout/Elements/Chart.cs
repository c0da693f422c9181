using System.Collections.Immutable;
using PaperFlock.Layout.Pieces;

namespace PaperFlock.Layout.Elements;

/// <summary>A drawing made for the size it is given. Never splits.</summary>
/// <param name="Width">Points; null for the width offered.</param>
/// <param name="Height">Points; null for the height offered.</param>
/// <param name="Draw">Given the size and the measurer, the items; must not draw outside the size.</param>
public sealed record Chart(double? Width, double? Height, Func<Size, ITextMeasurer, ImmutableArray<Item>> Draw) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}
