using System.Collections.Immutable;

namespace PaperFlock.Layout.Elements;

/// <summary>Children one under another. Splits between or inside them; spacing only between children that took room.</summary>
public sealed record Column(ImmutableArray<Element> Children, double Spacing = 0) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}
