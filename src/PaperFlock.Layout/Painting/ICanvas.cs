namespace PaperFlock.Layout.Painting;

/// <summary>
/// A page to be drawn on, in points from the top left corner of the paper, y downwards. Everything is black, but for the fill of some outlines.
/// What a picture passes over, since it has no structure and leads nowhere, does nothing unless a canvas says what.
/// </summary>
public interface ICanvas
{
    /// <summary>One line of text, glyph after glyph by their advances.</summary>
    /// <param name="x">Where the baseline begins; so is <paramref name="y"/>.</param>
    /// <param name="quarterTurns">0 reads to the right, 1 downwards, 2 to the left, 3 upwards.</param>
    void Text(string text, TextStyle style, double x, double y, int quarterTurns);

    /// <summary>A straight line with butt ends.</summary>
    void Line(double x1, double y1, double x2, double y2, double thickness);

    /// <param name="thickness">Of the outline; 0 for a filled shape. So it is below.</param>
    void Rectangle(Bounds box, double thickness);

    /// <param name="points">At least one.</param>
    void Path(ReadOnlySpan<(double X, double Y)> points, bool closed, double thickness);

    /// <summary>An outline as <see cref="OutlineItem"/> has it.</summary>
    void Outline(string steps, ReadOnlySpan<(double X, double Y)> points, Fill fill, double thickness);

    void Circle(double x, double y, double radius, double thickness);

    /// <summary>All up to the <see cref="End"/> that belongs to it is in something of that kind.</summary>
    /// <param name="id">Shared with the other parts of it; null where there are none.</param>
    /// <param name="box">The room it takes.</param>
    void Begin(StructureTag tag, StructureId? id, Bounds box)
    {
    }

    void End()
    {
    }

    /// <summary>An area that leads to the anchor named <paramref name="target"/>.</summary>
    void Link(Bounds area, string target, string says)
    {
    }

    void Anchor(double x, double y, string name)
    {
    }
}
