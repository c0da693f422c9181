using PaperFlock.Layout.Painting;
using PaperFlock.Pdf.Structure;
using PaperFlock.Pdf.Writing;

namespace PaperFlock.Pdf.Painting;

/// <summary>Writes what is drawn on the pages of a document as the operators of their content streams (ISO 32000-1, 8 and 9), page after page.</summary>
/// <remarks>
/// Black is DeviceGray 0, so that a colour printer uses its black and nothing else. Fonts are those of <see cref="FontObjects"/>, and text is the numbers of their glyphs.
/// All that is painted is marked as the content of a structure element or as an artifact (14.6). Text begins and ends within a mark, as 14.6.1 asks.
/// </remarks>
internal sealed class ContentCanvas : ICanvas
{
    /// <summary>Control points of the cubic nearest a quarter circle, as a part of the radius; off by 0.03 % at most.</summary>
    private const double Kappa = 0.5522847498;

    private readonly PdfBuffer _content = new();
    private readonly List<(int Page, string Problem)> _faults = [];
    private int _page = -1;
    private double _height;
    private TextStyle? _font;
    private double _pen;

    // What is marked at the moment: an element, or an artifact of a kind, or nothing.
    private StructureElement? _element;
    private StructureKind? _artifact;

    public StructureTree Tree { get; } = new();

    public GlyphUse Glyphs { get; } = new();

    public Links Links { get; } = new();

    /// <summary>What cannot be read out of what has been drawn, by 0-based page.</summary>
    public IReadOnlyList<(int Page, string Problem)> Faults => _faults;

    /// <param name="height">Of the paper: a PDF counts up from its foot.</param>
    public void BeginPage(double height)
    {
        (_height, _font, _pen) = (height, null, 0);
        _page++;
        Tree.BeginPage();
        _content.Clear();
        _content.Add($"/{PageResources.State} gs 0 g 0 G\n");
    }

    /// <returns>The content of the page, until another is begun.</returns>
    public ReadOnlySpan<byte> EndPage()
    {
        EndMark();
        return _content.Written;
    }

    public void Text(string text, TextStyle style, double x, double y, int quarterTurns)
    {
        var face = FontLibrary.Of(style.Face);
        var isBegun = false;
        foreach (var rune in text.EnumerateRunes())
        {
            var glyph = face[rune];
            if (!glyph.IsPrinted)
            {
                continue;
            }

            if (!isBegun)
            {
                MarkText(text);
                BeginText(style, x, y, quarterTurns);
                isBegun = true;
            }

            if (glyph.IsMissing)
            {
                _faults.Add((_page, string.Create(CultureInfo.InvariantCulture, $"“{text}” has a letter its face lacks, U+{rune.Value:X4}")));
            }

            Glyphs.Add(style.Face, glyph.Id, rune);
            _content.AddCode(glyph.Id);
        }

        if (isBegun)
        {
            _content.Add(") Tj\nET\n"u8);
        }
    }

    public void Line(double x1, double y1, double x2, double y2, double thickness)
    {
        BeginShape(thickness);
        _content.Add($"{x1} {_height - y1} m\n{x2} {_height - y2} l\nS\n");
    }

    public void Rectangle(Bounds box, double thickness)
    {
        BeginShape(thickness);
        _content.Add($"{box.X} {_height - box.Bottom} {box.Width} {box.Height} re\n");
        Paint(thickness, closed: false);
    }

    public void Path(ReadOnlySpan<(double X, double Y)> points, bool closed, double thickness)
    {
        BeginShape(thickness);
        for (var i = 0; i < points.Length; i++)
        {
            var (x, y) = points[i];
            _content.Add($"{x} {_height - y} ");
            _content.Add(i == 0 ? "m\n"u8 : "l\n"u8);
        }

        Paint(thickness, closed);
    }

    public void Outline(string steps, ReadOnlySpan<(double X, double Y)> points, Fill fill, double thickness)
    {
        BeginShape(thickness);
        _content.Add(fill == Fill.White ? "1 J 1 j 1 g\n"u8 : "1 J 1 j\n"u8);
        var next = 0;
        foreach (var step in steps)
        {
            for (var last = next + OutlineItem.PointsOf(step); next < last; next++)
            {
                _content.AddTenths(points[next].X);
                _content.Add(" "u8);
                _content.AddTenths(_height - points[next].Y);
                _content.Add(" "u8);
            }

            _content.Add(step switch { 'M' => "m\n"u8, 'L' => "l\n"u8, 'C' => "c\n"u8, _ => "h\n"u8 });
        }

        _content.Add((fill, thickness) switch { (Fill.None, _) => "S\n"u8, (_, 0) => "f\n"u8, _ => "B\n"u8 });
        _content.Add(fill == Fill.White ? "0 J 0 j 0 g\n"u8 : "0 J 0 j\n"u8);
    }

    public void Circle(double x, double y, double radius, double thickness)
    {
        BeginShape(thickness);
        var (up, r, k) = (_height - y, radius, radius * Kappa);
        _content.Add($"{x + r} {up} m\n");
        _content.Add($"{x + r} {up + k} {x + k} {up + r} {x} {up + r} c\n");
        _content.Add($"{x - k} {up + r} {x - r} {up + k} {x - r} {up} c\n");
        _content.Add($"{x - r} {up - k} {x - k} {up - r} {x} {up - r} c\n");
        _content.Add($"{x + k} {up - r} {x + r} {up - k} {x + r} {up} c\n");
        Paint(thickness, closed: true);
    }

    public void Begin(StructureTag tag, StructureId? id, Bounds box) => Tree.Begin(tag, id, box with { Y = _height - box.Bottom });

    public void End() => Tree.End();

    public void Link(Bounds area, string target, string says) => Links.Add(new LinkArea(_page, area, target, says, Tree.Link()));

    public void Anchor(double x, double y, string name) => Links.AddAnchor(name, new AnchorPlace(_page, x, y));

    // Font and pen last until another is taken, beyond the text they were taken for.
    private void BeginText(TextStyle style, double x, double y, int quarterTurns)
    {
        _content.Add("BT\n"u8);
        if (_font != style)
        {
            _content.Add($"/{PageResources.Font(style.Face)} {style.Size} Tf\n");
            _font = style;
        }

        _content.Add(quarterTurns switch
        {
            0 => ""u8,
            1 => "0 -1 1 0 "u8,
            2 => "-1 0 0 -1 "u8,
            _ => "0 1 -1 0 "u8,
        });
        _content.Add($"{x} {_height - y} ");
        _content.Add(quarterTurns == 0 ? "Td\n("u8 : "Tm\n("u8);
    }

    private void MarkText(string text)
    {
        if (Tree.Artifact is { } artifact)
        {
            MarkArtifact(artifact);
        }
        else if (Tree.Current.HoldsContent)
        {
            MarkElement(Tree.Current);
        }
        else
        {
            _faults.Add((_page, $"“{text}” is in no paragraph, cell or figure"));
        }
    }

    /// <summary>A shape is decoration, unless it is part of a figure.</summary>
    private void BeginShape(double thickness)
    {
        if (Tree.Artifact is null && Tree.Current.Kind == StructureKind.Figure)
        {
            MarkElement(Tree.Current);
        }
        else
        {
            MarkArtifact(Tree.Artifact ?? StructureKind.Decoration);
        }

        if (thickness > 0 && thickness != _pen)
        {
            _content.Add($"{thickness} w\n");
            _pen = thickness;
        }
    }

    private void MarkElement(StructureElement element)
    {
        if (_element != element)
        {
            EndMark();
            _content.Add($"/{element.Type}<</MCID {Tree.AddContent()}>>BDC\n");
            _element = element;
        }
    }

    private void MarkArtifact(StructureKind kind)
    {
        if (_artifact != kind)
        {
            EndMark();
            // 14.8.2.2.2, and for running heads and feet ISO 14289-1, 7.8.
            _content.Add(kind switch
            {
                StructureKind.RunningHead => "/Artifact<</Type/Pagination/Subtype/Header>>BDC\n"u8,
                StructureKind.RunningFoot => "/Artifact<</Type/Pagination/Subtype/Footer>>BDC\n"u8,
                StructureKind.PrintersMark => "/Artifact<</Type/Page>>BDC\n"u8,
                _ => "/Artifact<</Type/Layout>>BDC\n"u8,
            });
            _artifact = kind;
        }
    }

    private void EndMark()
    {
        if (_element is not null || _artifact is not null)
        {
            _content.Add("EMC\n"u8);
        }

        (_element, _artifact) = (null, null);
    }

    private void Paint(double thickness, bool closed) => _content.Add(thickness == 0 ? "f\n"u8 : closed ? "s\n"u8 : "S\n"u8);
}
