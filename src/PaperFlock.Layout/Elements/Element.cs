namespace PaperFlock.Layout.Elements;

/// <summary>
/// A description of something on paper. Immutable, so planning it twice gives the same answer.
/// </summary>
public abstract record Element
{
    /// <summary>What it is called in a message about it; null stays out of the path.</summary>
    public string? Name { get; init; }

    /// <summary>Places as much of the element as the space holds.</summary>
    /// <returns>A placement whose piece is never larger than the space, within <see cref="Space.Epsilon"/>.</returns>
    public abstract Placement Place(Space space, LayoutContext context);
}
