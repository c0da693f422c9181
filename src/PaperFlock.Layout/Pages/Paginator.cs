namespace PaperFlock.Layout.Pages;

/// <summary>Fills pages with a body until nothing is left of it. The front door of this room.</summary>
public static class Paginator
{
    /// <param name="startsOn">The side of the first page; sides alternate unless <paramref name="singleSided"/>, when all are fronts.</param>
    /// <returns>At least one page, page texts resolved, links not checked. Together they are one section.</returns>
    /// <exception cref="LayoutException">Something does not fit an empty page.</exception>
    /// <exception cref="ArgumentException">The margins of front and back leave different sizes, or none.</exception>
    public static ImmutableArray<Page> Paginate(Element body, PageDesign design, ITextMeasurer measurer, PageSide startsOn = PageSide.Front, bool singleSided = false)
    {
        PageFrame.Check(design);
        var frames = new List<PageFrame>();
        Element? rest = body;
        while (rest is not null)
        {
            var side = singleSided ? PageSide.Front : SideOf(frames.Count, startsOn);
            var frame = new PageFrame(design, side, isFirst: frames.Count == 0, measurer);
            rest = Fill(frame, rest, design, measurer);
            if (frame.Body is not null || rest is not null || frames.Count == 0)
            {
                frames.Add(frame);
            }
        }

        var section = new StructureId();
        var pages = ImmutableArray.CreateBuilder<Page>(frames.Count);
        foreach (var frame in frames)
        {
            var number = new PageNumber(pages.Count + 1, frames.Count, frame.Side);
            pages.Add(new Page(design.Paper, frame.Side, number, PageTexts.Resolve(frame.Assemble(section), number, measurer)));
        }

        return pages.MoveToImmutable();
    }

    /// <summary>Gives a page its part of the body.</summary>
    /// <returns>What is left; null when nothing is.</returns>
    private static Element? Fill(PageFrame frame, Element body, PageDesign design, ITextMeasurer measurer)
    {
        switch (body.Offer(frame.Slot, measurer))
        {
            case Placement.Fits fits:
                frame.Body = fits.Piece;
                return null;
            case Placement.Splits splits:
                frame.Body = splits.Piece;
                return splits.Rest;
            case Placement.Wraps wraps:
                // A tall head may leave the first page less room than any other; then it goes out with its head alone.
                if (frame.IsFirst && new PageFrame(design, frame.Side, isFirst: false, measurer).Slot.Height > frame.Slot.Height + Space.Epsilon)
                {
                    return body;
                }

                throw new LayoutException(wraps.Reason, wraps.Path);
            default:
                return null;
        }
    }

    private static PageSide SideOf(int index, PageSide startsOn) =>
        (index % 2 == 0) == (startsOn == PageSide.Front) ? PageSide.Front : PageSide.Back;
}
