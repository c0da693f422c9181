using System.Runtime.InteropServices;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;

namespace PaperFlock.Printing.Painting;

/// <summary>Walks the pieces of a page and draws what they say, where they say.</summary>
/// <param name="links">Where to note links and anchors; null where they have no use.</param>
internal sealed class PiecePainter(ICanvas canvas, LinkMap? links = null)
{
    private readonly List<(double X, double Y)> _corners = [];
    private int _page;

    /// <param name="index">Of the page in its document, for the links.</param>
    public void Paint(Page page, int index = 0)
    {
        _page = index;
        Paint(page.Content, default);
    }

    private void Paint(Piece piece, Frame frame)
    {
        foreach (var item in piece.Items)
        {
            Paint(item, frame);
        }
    }

    private void Paint(Item item, Frame frame)
    {
        switch (item)
        {
            case TextItem text:
                var start = frame.Map(text.X, text.Baseline);
                canvas.Text(text.Text, text.Style, start.X, start.Y, frame.Quarters);
                break;
            case LineItem line:
                var (from, to) = (frame.Map(line.X1, line.Y1), frame.Map(line.X2, line.Y2));
                canvas.Line(from.X, from.Y, to.X, to.Y, Thickness(line.Thickness));
                break;
            case RectItem rect:
                canvas.Rectangle(frame.Map(rect.X, rect.Y, rect.Width, rect.Height), rect.IsFilled ? 0 : Thickness(rect.Thickness));
                break;
            case PathItem path:
                Paint(path, frame);
                break;
            case CircleItem circle:
                var centre = frame.Map(circle.X, circle.Y);
                canvas.Circle(centre.X, centre.Y, circle.Radius, circle.Thickness == 0 ? 0 : Thickness(circle.Thickness));
                break;
            case PieceItem inner:
                Paint(inner.Piece, frame.Within(inner.X, inner.Y, inner.QuarterTurns, inner.Piece.Size));
                break;
            case LinkItem link:
                links?.AddLink(_page, frame.Map(link.X, link.Y, link.Width, link.Height), link.Target);
                break;
            case AnchorItem anchor:
                var place = frame.Map(anchor.X, anchor.Y);
                links?.AddAnchor(_page, place.X, place.Y, anchor.Target);
                break;
            default:
                throw new InvalidOperationException($"{item.GetType().Name} cannot be painted: pages must be finished first");
        }
    }

    private void Paint(PathItem path, Frame frame)
    {
        if (path.Points.IsEmpty)
        {
            return;
        }

        _corners.Clear();
        foreach (var (x, y) in path.Points)
        {
            _corners.Add(frame.Map(x, y));
        }

        canvas.Path(CollectionsMarshal.AsSpan(_corners), path.Closed, path.Thickness == 0 ? 0 : Thickness(path.Thickness));
    }

    // A width of nothing means "the thinnest the device can" (ISO 32000-1, 8.4.3.2): invisible at 1200 dpi.
    private static double Thickness(double thickness)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(thickness);
        return thickness;
    }
}
