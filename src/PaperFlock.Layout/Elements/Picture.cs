namespace PaperFlock.Layout.Elements;

/// <summary>A drawing of a stated size, such as a tick box.</summary>
public sealed record Picture(Size Size, ImmutableArray<Item> Items) : Element
{
    protected internal override StructureTag? UsualTag => Items.Any(item => item is TextItem) ? StructureTag.Paragraph : null;

    public override Placement Place(Space space, ITextMeasurer measurer) => TooLarge(Size, space) ?? (Placement)Fit(Size, Items);
}
