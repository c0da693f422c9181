namespace PaperFlock.Layout;

/// <summary>How a container offers space to a child: clamped, with the child held to the contract of <see cref="Element.Place"/>, and what it places tagged.</summary>
internal static class ChildPlacing
{
    // Each level of nesting may round once; a child that oversteps by more than this is wrong, not rounded.
    private const int Doublings = 7;
    private const double Overstep = 10 * Space.Epsilon;

    /// <summary>Offers a child what is left, however little that is.</summary>
    /// <exception cref="InvalidOperationException">The child broke its contract: too large a piece, or a split that gets nowhere, which would never end.</exception>
    public static Placement Offer(this Element child, Space space, ITextMeasurer measurer)
    {
        var width = Math.Max(0, space.Width);
        var height = Math.Max(0, space.Height);
        space = space with { Width = width, Height = height, FullHeight = Math.Max(height, space.FullHeight) };

        var placement = child.Place(space, measurer);
        var size = placement.Here?.Size ?? default;
        if (size.Width > width + Overstep || size.Height > height + Overstep)
        {
            throw new InvalidOperationException($"{Called(child)} took {Points.Of(size.Width)} by {Points.Of(size.Height)} of {Points.Of(width)} by {Points.Of(height)}");
        }

        if (placement is Placement.Splits split && (ReferenceEquals(split.Rest, child) || (space.IsFresh && size.Height <= Space.Epsilon)))
        {
            throw new InvalidOperationException($"{Called(child)} made no progress on a fresh page of {Points.Of(width)} by {Points.Of(height)}");
        }

        return Said(child, placement);
    }

    /// <summary>Offers space to a child that must not be split: a split becomes a wrap.</summary>
    /// <returns>Nothing, fits or wraps.</returns>
    public static Placement OfferWhole(this Element child, Space space, ITextMeasurer measurer)
    {
        var placement = child.Offer(space, measurer);
        return placement is Placement.Splits ? new Placement.Wraps(WhyNotWhole(child, space, measurer), child.Name is null ? [] : [child.Name]) : placement;
    }

    /// <summary>What the child is, and what it is about, said of what it places. The parts of a child that splits stay one thing, however many pages they are on.</summary>
    private static Placement Said(Element child, Placement placement)
    {
        var (tag, about) = (child.Tag ?? child.UsualTag, child.About);
        if ((tag is null && about is null) || placement.Here is not { } piece)
        {
            return placement;
        }

        var rest = (placement as Placement.Splits)?.Rest;
        if (tag is not null)
        {
            var id = child.TagId ?? (rest is null ? null : new StructureId());
            piece = piece.As(tag, id);
            rest = rest is null or Empty ? rest : rest with { Tag = tag, TagId = id };
        }

        if (about is not null)
        {
            piece = piece.Concerning(about);
            rest = rest is null or Empty ? rest : rest with { About = about };
        }

        return rest is null ? new Placement.Fits(piece) : new Placement.Splits(piece, rest);
    }

    /// <summary>Says how high the child is when nothing stops it, found by offering ever taller slots: only errors and page ends pay for this.</summary>
    public static string WhyNotWhole(Element child, Space space, ITextMeasurer measurer)
    {
        var height = Math.Max(space.Height, 1);
        // Lines that fill a slot fill these too, so the search stops at a height no sheet of paper has.
        for (var doubling = 0; doubling < Doublings; doubling++)
        {
            height *= 2;
            if (child.Offer(new Space(space.Width, height, height), measurer) is Placement.Fits fits)
            {
                return Points.Needs(fits.Piece.Size.Height, space.Height);
            }
        }

        return $"holds a page break, which {Points.Of(space.Height)} in one piece cannot have";
    }

    private static string Called(Element element) => element.Name is null ? element.GetType().Name : $"{element.GetType().Name} “{element.Name}”";
}
