namespace PaperFlock.Layout.Elements;

/// <summary>Moves a child within the space; takes the whole width, and the whole height too when <paramref name="Vertical"/> is given.</summary>
public sealed record Align(Element Child, TextAlign Horizontal = TextAlign.Left, VerticalAlign? Vertical = null) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}

public enum VerticalAlign
{
    Top,
    Middle,
    Bottom,
}
