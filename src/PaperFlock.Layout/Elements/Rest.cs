namespace PaperFlock.Layout.Elements;

/// <summary>An element from a child, row or line onwards: an index and not a copy, so that one of a thousand stays linear.</summary>
/// <param name="From">Places as much of it as the space holds.</param>
internal sealed record Rest(Func<Space, ITextMeasurer, Placement> From) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer) => From(space, measurer);
}
