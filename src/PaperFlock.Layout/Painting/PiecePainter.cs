namespace PaperFlock.Layout.Painting;

/// <summary>Walks the pieces of a page and draws what they say, where they say.</summary>
public static class PiecePainter
{
    /// <exception cref="InvalidOperationException">The page has texts still without words.</exception>
    public static void Paint(Page page, ICanvas canvas)
    {
        ArgumentNullException.ThrowIfNull(page);
        ArgumentNullException.ThrowIfNull(canvas);
        Paint(page.Content, default, canvas);
    }

    private static void Paint(Piece piece, Transform transform, ICanvas canvas)
    {
        if (piece.Tag is { } tag)
        {
            canvas.Begin(tag, piece.TagId, transform.Apply(new Bounds(0, 0, piece.Size.Width, piece.Size.Height)));
        }

        foreach (var item in piece.Items)
        {
            Paint(item, transform, canvas);
        }

        if (piece.Tag is not null)
        {
            canvas.End();
        }
    }

    private static void Paint(Item item, Transform transform, ICanvas canvas)
    {
        switch (item)
        {
            case PieceItem inner:
                Paint(inner.Piece, transform.Of(inner), canvas);
                break;
            case TextItem text:
                var start = transform.Apply(text.X, text.Baseline);
                canvas.Text(text.SpaceFollows ? text.Text + " " : text.Text, text.Style, start.X, start.Y, transform.QuarterTurns);
                break;
            case LineItem line:
                var (from, to) = (transform.Apply(line.X1, line.Y1), transform.Apply(line.X2, line.Y2));
                canvas.Line(from.X, from.Y, to.X, to.Y, Thickness(line.Thickness));
                break;
            case RectItem rect:
                canvas.Rectangle(transform.Apply(new Bounds(rect.X, rect.Y, rect.Width, rect.Height)), rect.IsFilled ? 0 : Thickness(rect.Thickness));
                break;
            case PathItem { Points.IsEmpty: true }:
                break;
            case PathItem path:
                canvas.Path(Moved(path.Points, transform), path.Closed, path.Thickness == 0 ? 0 : Thickness(path.Thickness));
                break;
            case OutlineItem outline:
                canvas.Outline(outline.Steps, Moved(outline.Points, transform), outline.Fill, outline.Thickness);
                break;
            case CircleItem circle:
                var centre = transform.Apply(circle.X, circle.Y);
                canvas.Circle(centre.X, centre.Y, circle.Radius, circle.Thickness == 0 ? 0 : Thickness(circle.Thickness));
                break;
            case LinkItem link:
                canvas.Link(transform.Apply(new Bounds(link.X, link.Y, link.Width, link.Height)), link.Target, link.Says);
                break;
            case AnchorItem anchor:
                var place = transform.Apply(anchor.X, anchor.Y);
                canvas.Anchor(place.X, place.Y, anchor.Target);
                break;
            default:
                throw new InvalidOperationException($"{item.GetType().Name} cannot be painted: pages must be finished first");
        }
    }

    private static (double X, double Y)[] Moved(ImmutableArray<(double X, double Y)> points, Transform transform) =>
        [.. points.Select(point => transform.Apply(point.X, point.Y))];

    // A width of nothing means "the thinnest the device can" (ISO 32000-1, 8.4.3.2): invisible at 1200 dpi.
    private static double Thickness(double thickness)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(thickness);
        return thickness;
    }
}
