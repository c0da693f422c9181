using PaperFlock.Layout;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>A rectangle in points from the top left corner of the paper.</summary>
internal readonly record struct Area(double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public double MiddleX => (Left + Right) / 2;

    public double MiddleY => (Top + Bottom) / 2;

    public Area Shrunk(double by) => new(Left + by, Top + by, Right - by, Bottom - by);

    public bool Overlaps(Area other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public bool Contains(Area other) => Left <= other.Left && other.Right <= Right && Top <= other.Top && other.Bottom <= Bottom;

    public bool Contains(double x, double y) => Left <= x && x <= Right && Top <= y && y <= Bottom;
}

/// <summary>Words where they stand.</summary>
/// <param name="Baseline">Of level text; of turned text, the side of its letters' feet.</param>
/// <param name="All">From the foot of a g, or of figures where there is nothing else, to the top of the tallest letter there is in it.</param>
/// <param name="Capitals">From the baseline to the top of capitals and figures.</param>
/// <param name="Core">From the baseline to the top of a letter without ascender.</param>
internal sealed record Words(string Text, TextStyle Style, double Baseline, Area All, Area Capitals, Area Core)
{
    public bool IsMono => Style.Face is Face.Mono or Face.MonoBold;

    /// <summary>A quarter turned: all its heights are one, the length of the words.</summary>
    public bool IsUpAndDown => Math.Abs(All.Height - Core.Height) < 0.001;
}

/// <summary>A line, or a side of an outline, as the ink it lays.</summary>
/// <param name="Slant">1 where it falls from left to right, -1 where it rises, 0 where it is level or upright.</param>
internal sealed record Stroke(Area Area, double Thickness, int Slant)
{
    public bool IsLevel => Slant == 0 && Area.Width > Area.Height;

    public bool IsUpright => Slant == 0 && Area.Height > Area.Width;

    /// <summary>Whether any of its ink lies in <paramref name="box"/>.</summary>
    public bool Crosses(Area box)
    {
        if (Slant == 0 || !Area.Overlaps(box))
        {
            return Area.Overlaps(box);
        }

        // Hatching is short: points a quarter of a point apart miss nothing that could be seen.
        var steps = (int)Math.Ceiling(Math.Max(Area.Width, Area.Height) * 4);
        return Enumerable.Range(0, steps + 1).Any(i =>
            box.Contains(Area.Left + (Area.Width * i / steps), Slant > 0 ? Area.Top + (Area.Height * i / steps) : Area.Bottom - (Area.Height * i / steps)));
    }
}

/// <summary>All that is drawn on a page, turned the way it is read: the backs of a short-edge pack are turned round in the file.</summary>
/// <param name="Fills">What is filled black; a polygon in slices half a point wide.</param>
internal sealed record PageInk(
    Size Paper, ImmutableArray<Words> Words, ImmutableArray<Stroke> Strokes, ImmutableArray<(RectItem Item, Area Area)> Boxes, ImmutableArray<Area> Fills)
{
    // The outlines in the font files; both families alike.
    public const double XHeightOfEm = 0.496;
    public const double CapitalOfEm = 0.668;
    public const double AscenderOfEm = 0.74;
    public const double AccentedOfEm = 0.88;
    private const double LetterDownOfEm = 0.201;
    private const double FigureDownOfEm = 0.02;

    /// <summary>What the page says is drawn on it.</summary>
    public static PageInk AsPrinted(Page page) => Of(page.Paper, page.Content);

    /// <summary>The same ink on a sheet turned half round.</summary>
    public PageInk TurnedRound()
    {
        return this with
        {
            Words = [.. Words.Select(w => w with { Baseline = w.IsUpAndDown ? Round(w.Core).Bottom : Paper.Height - w.Baseline, All = Round(w.All), Capitals = Round(w.Capitals), Core = Round(w.Core) })],
            Strokes = [.. Strokes.Select(s => s with { Area = Round(s.Area) })],
            Boxes = [.. Boxes.Select(b => (b.Item, Round(b.Area)))],
            Fills = [.. Fills.Select(Round)],
        };

        Area Round(Area a) => new(Paper.Width - a.Right, Paper.Height - a.Bottom, Paper.Width - a.Left, Paper.Height - a.Top);
    }

    private static PageInk Of(Size paper, Piece content)
    {
        var words = ImmutableArray.CreateBuilder<Words>();
        var strokes = ImmutableArray.CreateBuilder<Stroke>();
        var boxes = ImmutableArray.CreateBuilder<(RectItem, Area)>();
        var fills = ImmutableArray.CreateBuilder<Area>();
        foreach (var item in content.Flatten().Items)
        {
            switch (item)
            {
                case TextItem { Text: var said } text when !string.IsNullOrWhiteSpace(said):
                    words.Add(Level(text));
                    break;
                case PieceItem { Piece: { Items: [TextItem { Text: var said } text], Size: var size } } nested when !string.IsNullOrWhiteSpace(said):
                    words.Add(Turned(nested, text, size));
                    break;
                case LineItem line:
                    strokes.Add(Line(line.X1, line.Y1, line.X2, line.Y2, line.Thickness));
                    break;
                case RectItem { IsFilled: true } rect:
                    fills.Add(new Area(rect.X, rect.Y, rect.X + rect.Width, rect.Y + rect.Height));
                    break;
                case RectItem rect:
                    var half = rect.Thickness / 2;
                    var (l, t, r, b) = (rect.X, rect.Y, rect.X + rect.Width, rect.Y + rect.Height);
                    boxes.Add((rect, new Area(l - half, t - half, r + half, b + half)));
                    strokes.AddRange(
                        Line(l, t, r, t, rect.Thickness), Line(l, b, r, b, rect.Thickness),
                        Line(l, t, l, b, rect.Thickness), Line(r, t, r, b, rect.Thickness));
                    break;
                case PathItem { Thickness: 0 } polygon:
                    fills.AddRange(Slices(polygon.Points));
                    break;
                case OutlineItem { Points: var points, Thickness: var thick }:
                    // A line drawing, which is looked at and not read.
                    fills.Add(new Area(points.Min(p => p.X), points.Min(p => p.Y), points.Max(p => p.X), points.Max(p => p.Y)).Shrunk(-thick / 2));
                    break;
                case PathItem or CircleItem:
                    throw new InvalidOperationException("the paper rules do not look at curves and bent lines: teach them, if a sheet now draws one");
            }
        }

        return new PageInk(paper, words.ToImmutable(), strokes.ToImmutable(), boxes.ToImmutable(), fills.ToImmutable());
    }

    /// <summary>A filled polygon, thinly sliced.</summary>
    public static IEnumerable<Area> Slices(ImmutableArray<(double X, double Y)> points)
    {
        const double wide = 0.5;
        for (var x = points.Min(p => p.X); x < points.Max(p => p.X); x += wide)
        {
            var at = x + (wide / 2);
            var cuts = points.Select((a, i) => (A: a, B: points[(i + 1) % points.Length])).Where(e => (e.A.X <= at) != (e.B.X <= at))
                .Select(e => e.A.Y + ((at - e.A.X) / (e.B.X - e.A.X) * (e.B.Y - e.A.Y))).ToArray();
            if (cuts.Length > 0)
            {
                yield return new Area(x, cuts.Min(), x + wide, cuts.Max());
            }
        }
    }

    /// <summary>How high the tallest letter may stand above the line; a no-break space stands no higher than another.</summary>
    public static double HighestOfEm(string text) => text.All(c => char.IsAscii(c) || c == '\u00a0') ? AscenderOfEm : AccentedOfEm;

    /// <summary>How far the lowest letter may hang below the line; figures only overshoot it.</summary>
    public static double LowestOfEm(string text) => text.All(c => char.IsAsciiDigit(c) || c == '.') ? FigureDownOfEm : LetterDownOfEm;

    private static Words Level(TextItem text)
    {
        var em = text.Style.Size;
        Area From(double up, double down) => new(text.X, text.Baseline - (up * em), text.X + text.Width, text.Baseline + (down * em));
        return new Words(
            text.Text.TrimEnd(' '), text.Style, text.Baseline, From(HighestOfEm(text.Text), LowestOfEm(text.Text)), From(CapitalOfEm, 0), From(XHeightOfEm, 0));
    }

    /// <summary>Turned text lies alone in a piece as large as its box.</summary>
    private static Words Turned(PieceItem nested, TextItem text, Size size)
    {
        var em = text.Style.Size;
        var feet = text.Baseline;
        Area From(double up, double down) => (nested.QuarterTurns & 3) switch
        {
            1 => new Area(nested.X + size.Height - feet - (down * em), nested.Y, nested.X + size.Height - feet + (up * em), nested.Y + size.Width),
            2 => new Area(nested.X, nested.Y + size.Height - feet - (down * em), nested.X + size.Width, nested.Y + size.Height - feet + (up * em)),
            3 => new Area(nested.X + feet - (up * em), nested.Y, nested.X + feet + (down * em), nested.Y + size.Width),
            _ => new Area(nested.X, nested.Y + feet - (up * em), nested.X + size.Width, nested.Y + feet + (down * em)),
        };
        return new Words(text.Text.TrimEnd(' '), text.Style, From(0, 0).Bottom, From(HighestOfEm(text.Text), LowestOfEm(text.Text)), From(CapitalOfEm, 0), From(XHeightOfEm, 0));
    }

    private static Stroke Line(double x1, double y1, double x2, double y2, double thickness)
    {
        // Butt ends: a line is no longer than from end to end.
        const double straight = 0.001;
        var half = thickness / 2;
        var (upright, level) = (Math.Abs(x1 - x2) < straight, Math.Abs(y1 - y2) < straight);
        var (across, down) = (upright ? half : 0, level ? half : 0);
        var area = new Area(Math.Min(x1, x2) - across, Math.Min(y1, y2) - down, Math.Max(x1, x2) + across, Math.Max(y1, y2) + down);
        return new Stroke(area, thickness, upright || level ? 0 : Math.Sign((x2 - x1) * (y2 - y1)));
    }
}
