namespace PaperFlock.Layout.Elements;

/// <summary>
/// The first alternative that fits whole; else what the last one does. For a name set large, or smaller, or on two lines:
/// make the runs of all but the last alternative <see cref="Run.Whole"/>, or a long word is broken rather than set smaller.
/// </summary>
/// <param name="Alternatives">Asked for one by one as far as needed, each time it is placed: those that cost much to make are best made when asked for.</param>
public sealed record FirstThatFits(IEnumerable<Element> Alternatives) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        Placement placement = Placement.Nothing.Instance;
        foreach (var alternative in Alternatives)
        {
            placement = alternative.Offer(space, measurer);
            if (placement is Placement.Fits or Placement.Nothing)
            {
                return placement;
            }
        }

        return Dress(placement, piece => piece, rest => this with { Alternatives = [rest] });
    }
}
