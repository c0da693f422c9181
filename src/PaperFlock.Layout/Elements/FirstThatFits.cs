using System.Collections.Immutable;

namespace PaperFlock.Layout.Elements;

/// <summary>The first alternative that fits whole; else what the last one does. For a name set large, or smaller, or on two lines.</summary>
public sealed record FirstThatFits(ImmutableArray<Element> Alternatives) : Element
{
    public override Placement Place(Space space, LayoutContext context) => throw new NotSupportedException();
}
