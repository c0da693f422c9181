namespace PaperFlock.Layout.Elements;

/// <summary>What follows it in a column starts on a fresh page. Does nothing on a page that is still fresh.</summary>
public sealed record PageBreak : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}
