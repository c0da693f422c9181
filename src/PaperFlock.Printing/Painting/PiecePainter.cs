using PaperFlock.Layout;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;
using SkiaSharp;

namespace PaperFlock.Printing.Painting;

/// <summary>Walks pieces and draws what they say, where they say. Not thread-safe: one for each document being painted.</summary>
internal sealed class PiecePainter : IDisposable
{
    /// <summary>Control points of the cubic nearest a quarter circle, as a part of the radius; off by 0.03 % at most.</summary>
    private const double Kappa = 0.5522847498;

    private readonly SKPaint _fill = new() { Color = SKColors.Black, IsAntialias = true };
    private readonly SKPaint _stroke = new() { Color = SKColors.Black, IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeCap = SKStrokeCap.Butt };
    private readonly Dictionary<TextStyle, SKFont> _fonts = [];

    // Null for text that prints nothing. Most of what stands on a page stands on the next one too.
    private readonly Dictionary<(string Text, TextStyle Style), SKTextBlob?> _texts = [];
    private readonly GlyphRun _run = new();

    /// <summary>Paints the page on <paramref name="canvas"/>, whose units are points.</summary>
    /// <param name="links">Where to note links and anchors, with the page's index; null where they have no use.</param>
    public void Paint(Page page, SKCanvas canvas, LinkMap? links = null, int index = 0)
        => Paint(page.Content, default, new Target(canvas, links, index));

    public void Dispose()
    {
        foreach (var text in _texts.Values)
        {
            text?.Dispose();
        }

        foreach (var font in _fonts.Values)
        {
            font.Dispose();
        }

        _run.Dispose();
        _fill.Dispose();
        _stroke.Dispose();
    }

    private void Paint(Piece piece, Frame frame, Target target)
    {
        foreach (var item in piece.Items)
        {
            Paint(item, frame, target);
        }
    }

    private void Paint(Item item, Frame frame, Target target)
    {
        switch (item)
        {
            case TextItem text:
                Paint(text, frame, target.Canvas);
                break;
            case LineItem line:
                target.Canvas.DrawLine(Map(frame, line.X1, line.Y1), Map(frame, line.X2, line.Y2), Pen(line.Thickness, isFilled: false));
                break;
            case RectItem rect:
                var box = frame.Map(rect.X, rect.Y, rect.Width, rect.Height);
                target.Canvas.DrawRect((float)box.X, (float)box.Y, (float)box.Width, (float)box.Height, Pen(rect.Thickness, rect.IsFilled));
                break;
            case PathItem path:
                Paint(path, frame, target.Canvas);
                break;
            case CircleItem circle:
                Paint(circle, frame, target.Canvas);
                break;
            case PieceItem inner:
                Paint(inner.Piece, frame.Within(inner.X, inner.Y, inner.QuarterTurns, inner.Piece.Size), target);
                break;
            case LinkItem link:
                target.Links?.AddLink(target.Page, frame.Map(link.X, link.Y, link.Width, link.Height), link.Target);
                break;
            case AnchorItem anchor:
                var (x, y) = frame.Map(anchor.X, anchor.Y);
                target.Links?.AddAnchor(target.Page, x, y, anchor.Target);
                break;
            default:
                throw new InvalidOperationException($"{item.GetType().Name} cannot be painted: pages must be finished first");
        }
    }

    private void Paint(TextItem text, Frame frame, SKCanvas canvas)
    {
        if (GlyphsOf(text) is not { } blob)
        {
            return;
        }

        var at = Map(frame, text.X, text.Baseline);
        if (frame.Quarters == 0)
        {
            canvas.DrawText(blob, at.X, at.Y, _fill);
            return;
        }

        canvas.Save();
        canvas.Translate(at);
        canvas.Concat(QuarterTurn(frame.Quarters));
        canvas.DrawText(blob, 0, 0, _fill);
        canvas.Restore();
    }

    private void Paint(PathItem path, Frame frame, SKCanvas canvas)
    {
        if (path.Points.IsEmpty)
        {
            return;
        }

        using var builder = new SKPathBuilder();
        builder.MoveTo(Map(frame, path.Points[0].X, path.Points[0].Y));
        foreach (var (x, y) in path.Points.AsSpan(1..))
        {
            builder.LineTo(Map(frame, x, y));
        }

        if (path.Closed)
        {
            builder.Close();
        }

        using var outline = builder.Detach();
        canvas.DrawPath(outline, Pen(path.Thickness, path.Thickness == 0));
    }

    // Four cubics rather than the library's own circle, which the PDF writer turns into thirty-two.
    private void Paint(CircleItem circle, Frame frame, SKCanvas canvas)
    {
        var (x, y) = frame.Map(circle.X, circle.Y);
        var (r, k) = (circle.Radius, circle.Radius * Kappa);
        using var builder = new SKPathBuilder();
        builder.MoveTo(Point(x + r, y));
        builder.CubicTo(Point(x + r, y + k), Point(x + k, y + r), Point(x, y + r));
        builder.CubicTo(Point(x - k, y + r), Point(x - r, y + k), Point(x - r, y));
        builder.CubicTo(Point(x - r, y - k), Point(x - k, y - r), Point(x, y - r));
        builder.CubicTo(Point(x + k, y - r), Point(x + r, y - k), Point(x + r, y));
        builder.Close();
        using var outline = builder.Detach();
        canvas.DrawPath(outline, Pen(circle.Thickness, circle.Thickness == 0));
    }

    private SKPaint Pen(double thickness, bool isFilled)
    {
        if (isFilled)
        {
            return _fill;
        }

        // A width of nothing means "the thinnest the device can" (ISO 32000-1, 8.4.3.2): invisible at 1200 dpi.
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(thickness);
        _stroke.StrokeWidth = (float)thickness;
        return _stroke;
    }

    private SKTextBlob? GlyphsOf(TextItem text)
    {
        var key = (text.Text, text.Style);
        if (!_texts.TryGetValue(key, out var blob))
        {
            blob = _run.Build(text.Text, FontLibrary.Of(text.Style.Face), FontOf(text.Style));
            _texts.Add(key, blob);
        }

        return blob;
    }

    private SKFont FontOf(TextStyle style)
    {
        if (!_fonts.TryGetValue(style, out var font))
        {
            font = FontLibrary.Of(style.Face).FontAt((float)style.Size);
            _fonts.Add(style, font);
        }

        return font;
    }

    private static SKMatrix QuarterTurn(int quarters) => quarters switch
    {
        1 => new SKMatrix(0, -1, 0, 1, 0, 0, 0, 0, 1),
        2 => new SKMatrix(-1, 0, 0, 0, -1, 0, 0, 0, 1),
        _ => new SKMatrix(0, 1, 0, -1, 0, 0, 0, 0, 1),
    };

    private static SKPoint Map(Frame frame, double x, double y)
    {
        var (atX, atY) = frame.Map(x, y);
        return Point(atX, atY);
    }

    private static SKPoint Point(double x, double y) => new((float)x, (float)y);

    private readonly record struct Target(SKCanvas Canvas, LinkMap? Links, int Page);
}
