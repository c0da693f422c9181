namespace PaperFlock.Layout.Elements;

/// <summary>Turns a split into a wrap, unless on a fresh page.</summary>
public sealed record KeepTogether(Element Child) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}

/// <summary>Wraps unless so many points are left on the page, unless it is fresh.</summary>
public sealed record NeedSpace(Element Child, double Height) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}
