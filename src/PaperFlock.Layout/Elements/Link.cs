namespace PaperFlock.Layout.Elements;

/// <summary>A child that leads to the anchor of that name.</summary>
public sealed record Link(Element Child, string Target) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}

/// <summary>A child that links can lead to.</summary>
public sealed record Anchor(Element Child, string Target) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}
