using System.Runtime.InteropServices;
using PaperFlock.Layout;
using PaperFlock.Layout.Painting;
using PaperFlock.Layout.Pieces;
using PaperFlock.Pdf;
using SkiaSharp;

namespace PaperFlock.Cli.Pictures;

/// <summary>Draws on one of Skia's canvases, whose units are points.</summary>
internal sealed class SkiaCanvas(SKCanvas canvas) : ICanvas, IDisposable
{
    private static readonly Lazy<SKTypeface>[] Typefaces = [.. Enum.GetValues<Face>().Select(face => new Lazy<SKTypeface>(() => Load(face)))];

    private readonly SKPaint _fill = new() { Color = SKColors.Black, IsAntialias = true };
    private readonly SKPaint _stroke = new() { Color = SKColors.Black, IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeCap = SKStrokeCap.Butt };
    private readonly SKPaint _round = new() { Color = SKColors.Black, IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeCap = SKStrokeCap.Round, StrokeJoin = SKStrokeJoin.Round };
    private readonly SKPaint _white = new() { Color = SKColors.White, IsAntialias = true };
    private readonly Dictionary<TextStyle, SKFont> _fonts = [];
    private readonly SKTextBlobBuilder _line = new();
    private readonly List<ushort> _glyphs = [];
    private readonly List<SKPoint> _places = [];

    public void Text(string text, TextStyle style, double x, double y, int quarterTurns)
    {
        Set(text, style);
        if (_glyphs.Count == 0)
        {
            return;
        }

        _line.AddPositionedRun(CollectionsMarshal.AsSpan(_glyphs), FontOf(style), CollectionsMarshal.AsSpan(_places));
        using var line = _line.Build();
        canvas.Save();
        canvas.Translate((float)x, (float)y);
        canvas.RotateDegrees(90 * quarterTurns);
        canvas.DrawText(line, 0, 0, _fill);
        canvas.Restore();
    }

    public void Line(double x1, double y1, double x2, double y2, double thickness) =>
        canvas.DrawLine((float)x1, (float)y1, (float)x2, (float)y2, Pen(thickness));

    public void Rectangle(Bounds box, double thickness) =>
        canvas.DrawRect((float)box.X, (float)box.Y, (float)box.Width, (float)box.Height, Pen(thickness));

    public void Path(ReadOnlySpan<(double X, double Y)> points, bool closed, double thickness)
    {
        using var outline = Drawn($"M{new string('L', points.Length - 1)}{(closed ? "Z" : "")}", points);
        canvas.DrawPath(outline, Pen(thickness));
    }

    public void Outline(string steps, ReadOnlySpan<(double X, double Y)> points, Fill fill, double thickness)
    {
        using var outline = Drawn(steps, points);
        if (fill != Fill.None)
        {
            canvas.DrawPath(outline, fill == Fill.White ? _white : _fill);
        }

        if (thickness > 0)
        {
            _round.StrokeWidth = (float)thickness;
            canvas.DrawPath(outline, _round);
        }
    }

    public void Circle(double x, double y, double radius, double thickness) => canvas.DrawCircle((float)x, (float)y, (float)radius, Pen(thickness));

    public void Dispose()
    {
        foreach (var font in _fonts.Values)
        {
            font.Dispose();
        }

        _line.Dispose();
        _fill.Dispose();
        _stroke.Dispose();
        _round.Dispose();
        _white.Dispose();
    }

    /// <summary>Glyph after glyph, each where the advances of those before it lead, with its marks over or under it.</summary>
    private void Set(string text, TextStyle style)
    {
        _glyphs.Clear();
        _places.Clear();
        var face = FontLibrary.Of(style.Face);
        var units = 0L;
        foreach (var rune in text.EnumerateRunes())
        {
            var glyph = face[rune];
            if (glyph.IsPrinted)
            {
                foreach (var part in face.PartsOf(glyph))
                {
                    _glyphs.Add(part.Id);
                    _places.Add(new SKPoint((float)((units + part.X) * style.Size / face.UnitsPerEm), (float)(-part.Y * style.Size / face.UnitsPerEm)));
                }

                units += glyph.Advance;
            }
        }
    }

    /// <param name="steps">As in <see cref="OutlineItem"/>.</param>
    private static SKPath Drawn(string steps, ReadOnlySpan<(double X, double Y)> points)
    {
        using var builder = new SKPathBuilder();
        foreach (var step in steps)
        {
            switch (step)
            {
                case 'M':
                    builder.MoveTo(Point(points[0]));
                    break;
                case 'L':
                    builder.LineTo(Point(points[0]));
                    break;
                case 'C':
                    builder.CubicTo(Point(points[0]), Point(points[1]), Point(points[2]));
                    break;
                default:
                    builder.Close();
                    break;
            }

            points = points[OutlineItem.PointsOf(step)..];
        }

        return builder.Detach();
        static SKPoint Point((double X, double Y) point) => new((float)point.X, (float)point.Y);
    }

    private SKPaint Pen(double thickness)
    {
        if (thickness == 0)
        {
            return _fill;
        }

        _stroke.StrokeWidth = (float)thickness;
        return _stroke;
    }

    private SKFont FontOf(TextStyle style)
    {
        if (!_fonts.TryGetValue(style, out var font))
        {
            // Set as a printer will: outlines placed exactly, nothing snapped to the pixels of a screen.
            font = new SKFont(Typefaces[(int)style.Face].Value, (float)style.Size)
            {
                Hinting = SKFontHinting.None,
                Subpixel = true,
                LinearMetrics = true,
                BaselineSnap = false,
                Edging = SKFontEdging.Antialias,
            };
            _fonts.Add(style, font);
        }

        return font;
    }

    private static SKTypeface Load(Face face)
    {
        using var data = SKData.CreateCopy(FontLibrary.Of(face).Bytes.Span);
        return SKTypeface.FromData(data);
    }
}
