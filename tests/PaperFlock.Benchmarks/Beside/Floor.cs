using PaperFlock.Layout;
using PaperFlock.Layout.Pieces;
using SkiaSharp;

namespace PaperFlock.Benchmarks.Beside;

/// <summary>The same items drawn straight through SkiaSharp, with no layout and nothing done to the PDF afterwards: nothing that prints through Skia can cost less.</summary>
internal sealed class Floor : IDisposable
{
    private readonly SKTypeface[] _faces =
    [
        .. new[] { "Next-Regular", "Next-Bold", "Mono-Regular", "Mono-Bold" }.Select(
            name => SKTypeface.FromFile(Path.Combine(AppContext.BaseDirectory, "fonts", $"AtkinsonHyperlegible{name}.ttf"))),
    ];

    private readonly Dictionary<TextStyle, SKFont> _fonts = [];
    private readonly SKPaint _fill = new() { Color = SKColors.Black, IsAntialias = true };
    private readonly SKPaint _stroke = new() { Color = SKColors.Black, IsAntialias = true, Style = SKPaintStyle.Stroke };

    /// <returns>Bytes of all PDFs.</returns>
    public long Run(PackPages pages)
    {
        var bytes = 0L;
        foreach (var document in pages.Documents)
        {
            using var output = new MemoryStream();
            using (var pdf = SKDocument.CreatePdf(output))
            {
                foreach (var page in document)
                {
                    var canvas = pdf.BeginPage((float)page.Paper.Width, (float)page.Paper.Height);
                    Draw(page.Content, canvas);
                    pdf.EndPage();
                }

                pdf.Close();
            }

            bytes += output.Length;
        }

        return bytes;
    }

    public void Dispose()
    {
        foreach (var font in _fonts.Values)
        {
            font.Dispose();
        }

        foreach (var face in _faces)
        {
            face.Dispose();
        }

        _fill.Dispose();
        _stroke.Dispose();
    }

    private void Draw(Piece piece, SKCanvas canvas)
    {
        foreach (var item in piece.Items)
        {
            switch (item)
            {
                case TextItem text:
                    canvas.DrawText(text.Text, (float)text.X, (float)text.Baseline, SKTextAlign.Left, FontOf(text.Style), _fill);
                    break;
                case LineItem line:
                    canvas.DrawLine((float)line.X1, (float)line.Y1, (float)line.X2, (float)line.Y2, Pen(line.Thickness));
                    break;
                case RectItem rect:
                    canvas.DrawRect((float)rect.X, (float)rect.Y, (float)rect.Width, (float)rect.Height, Pen(rect.Thickness));
                    break;
                case CircleItem circle:
                    canvas.DrawCircle((float)circle.X, (float)circle.Y, (float)circle.Radius, Pen(circle.Thickness));
                    break;
                case PathItem path:
                    using (var outline = new SKPathBuilder())
                    {
                        outline.AddPoly([.. path.Points.Select(p => new SKPoint((float)p.X, (float)p.Y))], path.Closed);
                        using var drawn = outline.Detach();
                        canvas.DrawPath(drawn, Pen(path.Thickness));
                    }

                    break;
                case PieceItem turned:
                    var (dx, dy) = TurnedText.Corner(turned);
                    canvas.Save();
                    canvas.Translate((float)dx, (float)dy);
                    canvas.RotateDegrees(90 * turned.QuarterTurns);
                    Draw(turned.Piece, canvas);
                    canvas.Restore();
                    break;
            }
        }
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
            font = new SKFont(_faces[(int)style.Face], (float)style.Size) { Hinting = SKFontHinting.None, Subpixel = true, LinearMetrics = true };
            _fonts.Add(style, font);
        }

        return font;
    }
}
