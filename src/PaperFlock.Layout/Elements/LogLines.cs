namespace PaperFlock.Layout.Elements;

/// <summary>Copies of a row to fill the height left: never half a row, at least <paramref name="AtLeast"/>.</summary>
/// <param name="RowHeight">Points.</param>
/// <param name="Row">What each row shows; null for a ruled line to write on.</param>
public sealed record LogLines(double RowHeight, Element? Row = null, int AtLeast = 1) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}
