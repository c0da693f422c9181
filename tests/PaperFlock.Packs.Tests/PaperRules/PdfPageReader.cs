using PaperFlock.Layout;
using PaperFlock.Layout.Pieces;
using PaperFlock.Pdf.Tests;
using PaperFlock.Sheets.Tests.PaperRules;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;
using UglyToad.PdfPig.Graphics.Colors;
using UglyToad.PdfPig.Graphics.Core;
using UglyToad.PdfPig.Tokens;
using Page = UglyToad.PdfPig.Content.Page;

namespace PaperFlock.Packs.Tests.PaperRules;

/// <summary>Reads a page with PdfPig, which shares no code with what wrote it. Points from the top left corner of the paper.</summary>
internal sealed class PdfPageReader(PdfDocument pdf, Page page)
{
    // Every colour operator but g and G, and what may bring a colour in from elsewhere (ISO 32000-1, Table 74 and 8.8 to 8.10; from memory).
    private static readonly string[] Coloured = ["rg", "RG", "k", "K", "sc", "SC", "scn", "SCN", "cs", "CS", "sh", "Do", "BI"];

    private readonly double _height = page.Height;

    public static ReadPage Read(PdfDocument pdf, Page page) => new PdfPageReader(pdf, page).Read();

    private ReadPage Read()
    {
        var runs = page.Letters.GroupBy(l => l.TextSequence).OrderBy(g => g.Key).Select(g => g.ToArray()).ToArray();
        var words = runs.Where(r => r.Any(l => !string.IsNullOrWhiteSpace(l.Value))).Select(WordsOf);
        var glyphs = runs.SelectMany((run, i) => run.Select(l => new Glyph(l.Value, i, StyleOf(l), Upended(l.BoundingBox))));
        var strokes = ImmutableArray.CreateBuilder<Stroke>();
        var boxes = ImmutableArray.CreateBuilder<(RectItem, Area)>();
        var fills = ImmutableArray.CreateBuilder<Area>();
        foreach (var path in page.Paths.Where(p => !p.IsClipping))
        {
            foreach (var part in path)
            {
                if (IsInADrawing(path))
                {
                    // A line drawing, which is looked at and not read.
                    fills.Add(Upended(part.GetBoundingRectangle()!.Value));
                }
                else if (path.IsFilled)
                {
                    fills.AddRange(part.GetDrawnRectangle() is { } drawn ? [Upended(drawn)] : PageInk.Slices(Corners(part)));
                }
                else if (path.IsStroked)
                {
                    AddStrokes(part, path.LineWidth, strokes, boxes);
                }
            }
        }

        var ink = new PageInk(new Size(page.Width, page.Height), [.. words], strokes.ToImmutable(), boxes.ToImmutable(), fills.ToImmutable());
        return new ReadPage(ink, [.. glyphs], [.. Colours()], [.. NotEmbedded()]);
    }

    private Words WordsOf(Letter[] run)
    {
        // The space at which a line was broken is there to be read, and takes no room.
        var (first, last) = (run[0].StartBaseLine, run.Last(l => !string.IsNullOrWhiteSpace(l.Value)).EndBaseLine);
        var style = StyleOf(run[0]);
        var text = string.Concat(run.Select(l => l.Value)).TrimEnd(' ');
        var (x, y, toX, toY) = (first.X, _height - first.Y, last.X, _height - last.Y);
        var length = Math.Max(1e-9, Math.Sqrt(((toX - x) * (toX - x)) + ((toY - y) * (toY - y))));
        var (upX, upY) = ((toY - y) / length, (x - toX) / length);
        var highest = PageInk.HighestOfEm(text);
        return new Words(text, style, Band(0, 0).Bottom, Band(highest, PageInk.LowestOfEm(text)), Band(PageInk.CapitalOfEm, 0), Band(PageInk.XHeightOfEm, 0));

        // From below the baseline to above it, in em.
        Area Band(double above, double below)
        {
            var (a, b) = (above * style.Size, -below * style.Size);
            return Around((x + (upX * a), y + (upY * a)), (toX + (upX * b), toY + (upY * b)));
        }
    }

    private static TextStyle StyleOf(Letter letter)
    {
        var isBold = letter.FontName!.Contains("Bold", StringComparison.Ordinal);
        var face = letter.FontName.Contains("Mono", StringComparison.Ordinal) ? (isBold ? Face.MonoBold : Face.Mono) : (isBold ? Face.TextBold : Face.Text);
        return new TextStyle(face, letter.PointSize);
    }

    private void AddStrokes(PdfSubpath part, double thickness, ImmutableArray<Stroke>.Builder strokes, ImmutableArray<(RectItem, Area)>.Builder boxes)
    {
        var outline = part.IsDrawnAsRectangle ? part.GetDrawnRectangle() : null;
        if (outline is { } drawn)
        {
            var a = Upended(drawn);
            boxes.Add((new RectItem(a.Left, a.Top, a.Width, a.Height, thickness), a.Shrunk(-thickness / 2)));
            strokes.AddRange(
                Line(a.Left, a.Top, a.Right, a.Top, thickness), Line(a.Left, a.Bottom, a.Right, a.Bottom, thickness),
                Line(a.Left, a.Top, a.Left, a.Bottom, thickness), Line(a.Right, a.Top, a.Right, a.Bottom, thickness));
            return;
        }

        foreach (var command in part.Commands)
        {
            switch (command)
            {
                case PdfSubpath.Line line:
                    strokes.Add(Line(line.From.X, _height - line.From.Y, line.To.X, _height - line.To.Y, thickness));
                    break;
                case PdfSubpath.Move or PdfSubpath.Close:
                    break;
                default:
                    throw new InvalidOperationException("the paper rules do not look at curves: teach them, if a sheet now draws one");
            }
        }
    }

    private ImmutableArray<(double X, double Y)> Corners(PdfSubpath part) =>
        [.. part.Commands.OfType<PdfSubpath.Line>().SelectMany(l => new[] { (l.From.X, _height - l.From.Y), (l.To.X, _height - l.To.Y) }).Distinct()];

    private static Stroke Line(double x1, double y1, double x2, double y2, double thickness)
    {
        // The file holds single floats: what was level may be a thousandth off.
        const double straight = 0.005;
        var half = thickness / 2;
        var (upright, level) = (Math.Abs(x1 - x2) < straight, Math.Abs(y1 - y2) < straight);
        var (across, down) = (upright ? half : 0, level ? half : 0);
        var box = Around((x1, y1), (x2, y2));
        return new Stroke(
            new Area(box.Left - across, box.Top - down, box.Right + across, box.Bottom + down), thickness, upright || level ? 0 : Math.Sign((x2 - x1) * (y2 - y1)));
    }

    /// <summary>Nothing else has round ends or curves.</summary>
    private static bool IsInADrawing(PdfPath path) =>
        (path.IsStroked && path.LineCapStyle == LineCapStyle.Round) || path.Any(part => part.Commands.Any(c => c is not (PdfSubpath.Move or PdfSubpath.Line or PdfSubpath.Close)));

    /// <summary>White there hides what is behind it.</summary>
    private static bool IsWhiteInADrawing(PdfPath path) => IsInADrawing(path) && path.FillColor is GrayColor { Gray: 1 };

    private IEnumerable<string> Colours()
    {
        foreach (var operation in page.Operations.Select(o => o.Operator).Distinct().Where(Coloured.Contains))
        {
            yield return $"operator {operation}";
        }

        foreach (var letter in page.Letters.Where(l => !IsBlack(l.FillColor)).Take(1))
        {
            yield return $"the letter {letter.Value} in {letter.FillColor}";
        }

        foreach (var path in page.Paths.Where(p => (p.IsFilled && !IsBlack(p.FillColor) && !IsWhiteInADrawing(p)) || (p.IsStroked && !IsBlack(p.StrokeColor))).Take(1))
        {
            yield return $"a line or fill at {path.GetBoundingRectangle()}";
        }

        if (pdf.InPage(page.Number, "Resources", "ExtGState") is DictionaryToken states)
        {
            foreach (var (name, state) in states.Data)
            {
                foreach (var key in new[] { "ca", "CA" })
                {
                    if (pdf.Find(state, key) is NumericToken { Double: not 1 } opacity)
                    {
                        yield return $"{name} sets {key} to {opacity.Double}";
                    }
                }
            }
        }
    }

    private static bool IsBlack(IColor? colour) => Equals(colour, GrayColor.Black);

    /// <summary>ISO 32000-1, 9.9: an embedded font has one of three font files (from memory).</summary>
    private IEnumerable<string> NotEmbedded()
    {
        if (pdf.InPage(page.Number, "Resources", "Font") is not DictionaryToken fonts)
        {
            yield break;
        }

        foreach (var font in fonts.Data.Values)
        {
            var described = pdf.Find(font, "DescendantFonts") is ArrayToken descendants ? descendants.Data[0] : font;
            if (!new[] { "FontFile", "FontFile2", "FontFile3" }.Any(key => pdf.Find(described, "FontDescriptor", key) is not null))
            {
                yield return pdf.Find(font, "BaseFont").Name();
            }
        }
    }

    private Area Upended(PdfRectangle box)
    {
        var corners = new[] { box.TopLeft, box.TopRight, box.BottomLeft, box.BottomRight };
        return new Area(corners.Min(c => c.X), _height - corners.Max(c => c.Y), corners.Max(c => c.X), _height - corners.Min(c => c.Y));
    }

    private static Area Around((double X, double Y) a, (double X, double Y) b) =>
        new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y));
}
