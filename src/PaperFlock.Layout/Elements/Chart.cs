namespace PaperFlock.Layout.Elements;

/// <summary>A drawing made for the size it is given. Never splits.</summary>
/// <param name="Width">Points; null for the width offered.</param>
/// <param name="Height">Points; null for the height offered.</param>
/// <param name="Draw">Given the size and the measurer, the items; must not draw outside the size.</param>
/// <param name="Says">What it shows, in words; null where its own words say it, and it is no figure but a paragraph.</param>
public sealed record Chart(double? Width, double? Height, Func<Size, ITextMeasurer, ImmutableArray<Item>> Draw, string? Says = null) : Element
{
    protected internal override StructureTag? UsualTag => Says is null ? StructureTag.Paragraph : StructureTag.Figure(Says);

    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        var size = new Size(Width ?? space.Width, Height ?? space.Height);
        // A chart that fills what is left must not end up with nothing at the foot of a full page.
        return (size.Height > Space.Epsilon ? TooLarge(size, space) : Wrap(Points.Needs(1, space.Height))) ?? (Placement)Fit(size, Draw(size, measurer));
    }
}
