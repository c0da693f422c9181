using System.Collections.Immutable;

namespace PaperFlock.Layout.Elements;

/// <summary>
/// The first alternative that fits whole; else what the last one does. For a name set large, or smaller, or on two lines:
/// make the runs of all but the last alternative <see cref="Run.Whole"/>, or a long word is broken rather than set smaller.
/// </summary>
public sealed record FirstThatFits(ImmutableArray<Element> Alternatives) : Element
{
    public override Placement Place(Space space, LayoutContext context)
    {
        Placement placement = Placement.Nothing.Instance;
        foreach (var alternative in Alternatives)
        {
            placement = alternative.Offer(space, context);
            if (placement is Placement.Fits or Placement.Nothing)
            {
                return placement;
            }
        }

        return Dress(placement, piece => piece, rest => this with { Alternatives = [rest] });
    }
}
