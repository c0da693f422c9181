namespace PaperFlock.Layout.Elements;

/// <summary>Content with something behind or over it. Pages as the content does; the other layers get its size.</summary>
public sealed record Layers(Element Content, Element? Behind = null, Element? Over = null) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}
