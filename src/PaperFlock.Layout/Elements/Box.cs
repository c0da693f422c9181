namespace PaperFlock.Layout.Elements;

/// <summary>Padding and border round a child, or round nothing. The border lies inside the box's size and is repeated on each part of a child that splits.</summary>
/// <param name="Border">Thickness in points; 0 for none.</param>
public sealed record Box(Element? Child, Edges Padding, double Border = 0, Sides Sides = Sides.All) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}

[Flags]
public enum Sides
{
    None = 0,
    Left = 1,
    Top = 2,
    Right = 4,
    Bottom = 8,
    All = 15,
}
