namespace PaperFlock.Layout.Elements;

/// <summary>Turns a split into a wrap, unless on a fresh page.</summary>
public sealed record KeepTogether(Element Child) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        var placement = space.IsFresh ? Child.Offer(space, measurer) : Child.OfferWhole(space, measurer);
        return Dress(placement, piece => piece, rest => this with { Child = rest });
    }
}

/// <summary>Wraps unless so many points are left on the page, unless it is fresh or the child has nothing to show.</summary>
public sealed record NeedSpace(Element Child, double Height) : Element
{
    public override Placement Place(Space space, ITextMeasurer measurer)
    {
        var placement = Child.Offer(space, measurer);
        return placement is not Placement.Nothing && !space.IsFresh && Height > space.Height + Space.Epsilon
            ? Wrap(Points.Needs(Height, space.Height))
            : Dress(placement, piece => piece, rest => this with { Child = rest, Height = 0 });
    }
}
