namespace PaperFlock.Layout.Elements;

/// <summary>A child held to a size in points; null leaves that side to the child. Empty paper when the child is null.</summary>
/// <param name="Width">Exact.</param>
/// <param name="Height">Exact.</param>
public sealed record Sized(Element? Child, double? Width = null, double? Height = null, double MinWidth = 0, double MinHeight = 0) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}
