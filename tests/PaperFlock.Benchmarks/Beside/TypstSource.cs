using System.Text;
using PaperFlock.Layout;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;

namespace PaperFlock.Benchmarks.Beside;

/// <summary>Pages as Typst source: every item placed where it stands, so that nothing is left for Typst to lay out but the words of a run.</summary>
internal static class TypstSource
{
    public static string Of(PackPages pages)
    {
        var text = new StringBuilder();
        text.Append("#set page(margin: 0pt)\n#set text(top-edge: \"baseline\", bottom-edge: \"baseline\", kerning: false, ligatures: false, hyphenate: false)\n");
        text.Append("#let t(x, y, f, w, s, b) = place(top + left, dx: x * 1pt, dy: y * 1pt, box(text(font: f, weight: w, size: s * 1pt, b)))\n");
        text.Append("#let l(x, y, u, v, w) = place(top + left, line(start: (x * 1pt, y * 1pt), end: (u * 1pt, v * 1pt), stroke: w * 1pt))\n");
        text.Append("#let r(x, y, w, h, s) = place(top + left, dx: x * 1pt, dy: y * 1pt, rect(width: w * 1pt, height: h * 1pt, stroke: if s > 0 { s * 1pt }, fill: if s == 0 { black }))\n");
        text.Append("#let c(x, y, r, s) = place(top + left, dx: (x - r) * 1pt, dy: (y - r) * 1pt, circle(radius: r * 1pt, stroke: if s > 0 { s * 1pt }, fill: if s == 0 { black }))\n");
        text.Append("#let q(x, y, a, b) = place(top + left, dx: x * 1pt, dy: y * 1pt, rotate(a * 90deg, origin: top + left, b))\n");
        foreach (var page in pages.All)
        {
            Add(page, text);
        }

        return text.ToString();
    }

    private static void Add(Page page, StringBuilder text)
    {
        text.Append(CultureInfo.InvariantCulture, $"#page(width: {page.Paper.Width}pt, height: {page.Paper.Height}pt)[\n");
        foreach (var item in page.Content.Items)
        {
            Add(item, text);
        }

        text.Append("]\n");
    }

    private static void Add(Item item, StringBuilder text)
    {
        switch (item)
        {
            case TextItem run:
                var (family, weight) = run.Style.Face switch
                {
                    Face.Text => ("Next", 400),
                    Face.TextBold => ("Next", 700),
                    Face.Mono => ("Mono", 400),
                    _ => ("Mono", 700),
                };
                text.Append(CultureInfo.InvariantCulture, $"#t({run.X:0.###},{run.Baseline:0.###},\"Atkinson Hyperlegible {family}\",{weight},{run.Style.Size},\"{Quoted(run.Text)}\")\n");
                break;
            case LineItem line:
                text.Append(CultureInfo.InvariantCulture, $"#l({line.X1:0.###},{line.Y1:0.###},{line.X2:0.###},{line.Y2:0.###},{line.Thickness})\n");
                break;
            case RectItem rect:
                text.Append(CultureInfo.InvariantCulture, $"#r({rect.X:0.###},{rect.Y:0.###},{rect.Width:0.###},{rect.Height:0.###},{rect.Thickness})\n");
                break;
            case CircleItem circle:
                text.Append(CultureInfo.InvariantCulture, $"#c({circle.X:0.###},{circle.Y:0.###},{circle.Radius:0.###},{circle.Thickness})\n");
                break;
            case PathItem path:
                var points = string.Join(',', path.Points.Select(p => string.Create(CultureInfo.InvariantCulture, $"({p.X:0.###}pt,{p.Y:0.###}pt)")));
                text.Append(CultureInfo.InvariantCulture, $"#place(top + left, polygon(stroke: {(path.Thickness > 0 ? $"{path.Thickness}pt" : "none")}, fill: {(path.Thickness > 0 ? "none" : "black")},{points}))\n");
                break;
            case PieceItem turned:
                var (x, y) = TurnedText.Corner(turned);
                text.Append(CultureInfo.InvariantCulture, $"#q({x:0.###},{y:0.###},{turned.QuarterTurns},[");
                foreach (var inner in turned.Piece.Items)
                {
                    Add(inner, text);
                }

                text.Append("])\n");
                break;
        }
    }

    private static string Quoted(string words) => words.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal);
}
