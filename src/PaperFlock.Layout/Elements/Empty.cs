namespace PaperFlock.Layout.Elements;

/// <summary>What is left after a page break that nothing follows.</summary>
internal sealed record Empty : Element
{
    public static readonly Empty Instance = new();

    public override Placement Place(Space space, ITextMeasurer measurer) => Placement.Nothing.Instance;
}
