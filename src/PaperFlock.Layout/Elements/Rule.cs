namespace PaperFlock.Layout.Elements;

/// <summary>A line across the width offered.</summary>
/// <param name="Thickness">Points.</param>
public sealed record Rule(double Thickness) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}
