using PaperFlock.Layout;
using PaperFlock.Printing.Painting;

namespace PaperFlock.Printing.Pdf;

/// <summary>Writes what is drawn on a page as the operators of its content stream (ISO 32000-1, 8 and 9). Not thread-safe.</summary>
/// <remarks>
/// Black is DeviceGray 0, so that a colour printer uses its black and nothing else. Fonts are those of <see cref="FontObjects"/>, and text is the numbers of their glyphs.
/// </remarks>
internal sealed class ContentCanvas(GlyphUse glyphs) : ICanvas
{
    /// <summary>Control points of the cubic nearest a quarter circle, as a part of the radius; off by 0.03 % at most.</summary>
    private const double Kappa = 0.5522847498;

    private readonly PdfBuffer _content = new();
    private double _height;
    private TextStyle? _font;
    private double _pen;

    public ReadOnlySpan<byte> Content => _content.Written;

    /// <param name="height">Of the paper: a PDF counts up from its foot.</param>
    public void Begin(double height)
    {
        (_height, _font, _pen) = (height, null, 0);
        _content.Clear();
        _content.Add($"/{PageResources.State} gs 0 g 0 G\n");
    }

    public void Text(string text, TextStyle style, double x, double y, int quarters)
    {
        var face = FontLibrary.Of(style.Face);
        // Text may print nothing, and then its face is not used.
        Span<int> used = [];
        var isBegun = false;
        foreach (var rune in text.EnumerateRunes())
        {
            var glyph = face.Glyphs[rune];
            if (!glyph.IsPrinted)
            {
                continue;
            }

            if (!isBegun)
            {
                BeginText(style, x, y, quarters);
                used = glyphs.Note(style.Face);
                isBegun = true;
            }

            GlyphUse.Note(used, glyph.Id, rune.Value);
            _content.AddCode(glyph.Id);
        }

        if (isBegun)
        {
            _content.Add(") Tj\nET\n"u8);
        }
    }

    public void Line(double x1, double y1, double x2, double y2, double thickness)
    {
        Pen(thickness);
        _content.Add($"{x1} {_height - y1} m\n{x2} {_height - y2} l\nS\n");
    }

    public void Rectangle(Box box, double thickness)
    {
        Pen(thickness);
        _content.Add($"{box.X} {_height - box.Y - box.Height} {box.Width} {box.Height} re\n");
        Paint(thickness, closed: false);
    }

    public void Path(ReadOnlySpan<(double X, double Y)> points, bool closed, double thickness)
    {
        Pen(thickness);
        for (var i = 0; i < points.Length; i++)
        {
            var (x, y) = points[i];
            _content.Add($"{x} {_height - y} ");
            _content.Add(i == 0 ? "m\n"u8 : "l\n"u8);
        }

        Paint(thickness, closed);
    }

    public void Circle(double x, double y, double radius, double thickness)
    {
        Pen(thickness);
        var (up, r, k) = (_height - y, radius, radius * Kappa);
        _content.Add($"{x + r} {up} m\n");
        _content.Add($"{x + r} {up + k} {x + k} {up + r} {x} {up + r} c\n");
        _content.Add($"{x - k} {up + r} {x - r} {up + k} {x - r} {up} c\n");
        _content.Add($"{x - r} {up - k} {x - k} {up - r} {x} {up - r} c\n");
        _content.Add($"{x + k} {up - r} {x + r} {up - k} {x + r} {up} c\n");
        Paint(thickness, closed: true);
    }

    // Font and pen last until another is taken, beyond the text they were taken for.
    private void BeginText(TextStyle style, double x, double y, int quarters)
    {
        _content.Add("BT\n"u8);
        if (_font != style)
        {
            _content.Add($"/{PageResources.Font(style.Face)} {style.Size} Tf\n");
            _font = style;
        }

        _content.Add(quarters switch
        {
            0 => ""u8,
            1 => "0 -1 1 0 "u8,
            2 => "-1 0 0 -1 "u8,
            _ => "0 1 -1 0 "u8,
        });
        _content.Add($"{x} {_height - y} ");
        _content.Add(quarters == 0 ? "Td\n("u8 : "Tm\n("u8);
    }

    private void Pen(double thickness)
    {
        if (thickness > 0 && thickness != _pen)
        {
            _content.Add($"{thickness} w\n");
            _pen = thickness;
        }
    }

    private void Paint(double thickness, bool closed) => _content.Add(thickness == 0 ? "f\n"u8 : closed ? "s\n"u8 : "S\n"u8);
}
