namespace PaperFlock.Layout.Elements;

/// <summary>
/// A description of something on paper. Immutable, so planning it twice gives the same answer.
/// </summary>
public abstract record Element
{
    /// <summary>What it is called in a message about it; null stays out of the path.</summary>
    public string? Name { get; init; }

    /// <summary>Null where what is round it says so, or nothing does.</summary>
    public Subject? About { get; init; }

    /// <summary>What it is to whoever has the page read out; null for what it usually is, which for most elements is nothing.</summary>
    public StructureTag? Tag { get; init; }

    /// <summary>Shared by elements that are parts of one thing, such as the front and the back of a card. An element that splits sees to it by itself.</summary>
    public StructureId? TagId { get; init; }

    /// <summary>The tag of an element that is given none.</summary>
    protected internal virtual StructureTag? UsualTag => null;

    /// <summary>Places as much of the element as the space holds.</summary>
    /// <returns>
    /// A placement whose piece is never larger than the space, within <see cref="Space.Epsilon"/>. On a fresh page a split takes some height and leaves less for the next page.
    /// </returns>
    public abstract Placement Place(Space space, ITextMeasurer measurer);

    protected Placement.Fits Fit(Size size, ImmutableArray<Item> items) => new(new Piece(size, items, Name));

    protected Placement.Wraps Wrap(string reason) => new(reason, Name is null ? [] : [Name]);

    /// <summary>A child's wrap as this element's own, with its name put before the child's.</summary>
    protected Placement.Wraps Wrap(Placement.Wraps inner) => Name is null ? inner : inner with { Path = inner.Path.Insert(0, Name) };

    /// <summary>What a wrapper round one child makes of the child's placement.</summary>
    /// <param name="dress">From the child's piece to the wrapper's.</param>
    /// <param name="carry">From what is left of the child to what is left of the wrapper. Not asked where nothing is left.</param>
    private protected Placement Dress(Placement child, Func<Piece, Piece> dress, Func<Element, Element> carry) =>
        child is Placement.Wraps wraps ? Wrap(wraps) : child.With(dress, carry);

    /// <summary>What is left of this element, as something that is placed by itself.</summary>
    private protected Rest Left(Func<Space, ITextMeasurer, Placement> place) => new(place) { Name = Name };

    /// <summary>Why a size is too large for a space; null where it is not.</summary>
    private protected Placement.Wraps? TooLarge(Size size, Space space) =>
        size.Width > space.Width + Space.Epsilon ? Wrap(Points.NeedsWidth(size.Width, space.Width))
        : size.Height > space.Height + Space.Epsilon ? Wrap(Points.Needs(size.Height, space.Height))
        : null;
}
