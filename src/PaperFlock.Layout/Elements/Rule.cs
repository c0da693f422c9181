namespace PaperFlock.Layout.Elements;

/// <summary>A line across the width offered, as high as it is thick.</summary>
/// <param name="Thickness">Points.</param>
public sealed record Rule(double Thickness) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer) => Thickness > space.Height + Space.Epsilon
        ? Wrap(Points.Needs(Thickness, space.Height))
        : Fit(new Size(space.Width, Thickness), [new LineItem(0, Thickness / 2, space.Width, Thickness / 2, Thickness)]);
}
