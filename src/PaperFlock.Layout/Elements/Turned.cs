namespace PaperFlock.Layout.Elements;

/// <summary>A child turned by whole quarters clockwise. Never splits.</summary>
/// <param name="QuarterTurns">1 reads downwards, 3 upwards.</param>
public sealed record Turned(Element Child, int QuarterTurns) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}
