namespace PaperFlock.Layout.Elements;

/// <summary>What follows it in a column starts on a fresh page, however deep the column is nested. Does nothing on a page that is still fresh, and makes no page when nothing follows.</summary>
public sealed record PageBreak : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer) =>
        space.IsFresh ? Placement.Nothing.Instance : new Placement.Splits(new Piece(default, [], Name), Empty.Instance);
}
