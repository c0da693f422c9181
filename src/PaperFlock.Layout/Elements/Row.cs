using System.Collections.Immutable;

namespace PaperFlock.Layout.Elements;

/// <summary>Cells side by side, all as high as the highest. Never splits.</summary>
public sealed record Row(ImmutableArray<RowCell> Cells, double Spacing = 0) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}

public readonly record struct RowCell(Track Width, Element Child, VerticalAlign Align = VerticalAlign.Top);
