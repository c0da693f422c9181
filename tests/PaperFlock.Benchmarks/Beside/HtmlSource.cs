using System.Net;
using System.Text;
using PaperFlock.Layout;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;

namespace PaperFlock.Benchmarks.Beside;

/// <summary>Pages as HTML: every run of text in an absolutely placed element, and the drawing of a page in one SVG, which is the cheapest a browser takes it in.</summary>
internal static class HtmlSource
{
    // Ascent and descent of both families add up to more than an em; with lines as high as that the baseline stands so far below the top.
    private const double BaselineOfEm = 0.984;
    private const double LineOfEm = 1.3;

    /// <param name="fonts">The folder of the font files.</param>
    public static string Of(PackPages pages, string fonts)
    {
        var text = new StringBuilder("<!DOCTYPE html><html><head><meta charset=\"utf-8\"><style>\n");
        foreach (var (name, file) in new[] { ("t", "Next-Regular"), ("T", "Next-Bold"), ("m", "Mono-Regular"), ("M", "Mono-Bold") })
        {
            var url = new Uri(Path.Combine(fonts, $"AtkinsonHyperlegible{file}.ttf")).AbsoluteUri;
            text.Append(CultureInfo.InvariantCulture, $"@font-face{{font-family:f{(int)name[0]};src:url({url})}} .{name}{{font-family:f{(int)name[0]}}}\n");
        }

        // Two points are three quarters of what CSS calls pixels; points are kept throughout.
        var papers = pages.All.Select(p => p.Paper).Distinct().ToList();
        for (var i = 0; i < papers.Count; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"@page p{i}{{size:{papers[i].Width}pt {papers[i].Height}pt;margin:0}} .p{i}{{page:p{i};width:{papers[i].Width}pt;height:{papers[i].Height}pt}}\n");
        }

        text.Append("body{margin:0} .p{position:relative;overflow:hidden;break-after:page} .p:last-child{break-after:auto} i{position:absolute;font-style:normal;white-space:pre;font-kerning:none;font-variant-ligatures:none} svg{position:absolute;left:0;top:0}\n</style></head><body>\n");
        foreach (var page in pages.All)
        {
            Add(page, papers.IndexOf(page.Paper), text);
        }

        return text.Append("</body></html>\n").ToString();
    }

    private static void Add(Page page, int paper, StringBuilder text)
    {
        text.Append(CultureInfo.InvariantCulture, $"<div class=\"p p{paper}\"><svg width=\"{page.Paper.Width}pt\" height=\"{page.Paper.Height}pt\" viewBox=\"0 0 {page.Paper.Width} {page.Paper.Height}\">");
        foreach (var item in page.Content.Items)
        {
            AddDrawing(item, text);
        }

        text.Append("</svg>\n");
        foreach (var item in page.Content.Items)
        {
            AddText(item, text);
        }

        text.Append("</div>\n");
    }

    private static void AddDrawing(Item item, StringBuilder text)
    {
        switch (item)
        {
            case LineItem line:
                text.Append(CultureInfo.InvariantCulture, $"<line x1=\"{line.X1:0.###}\" y1=\"{line.Y1:0.###}\" x2=\"{line.X2:0.###}\" y2=\"{line.Y2:0.###}\" stroke=\"#000\" stroke-width=\"{line.Thickness}\"/>");
                break;
            case RectItem rect:
                text.Append(CultureInfo.InvariantCulture, $"<rect x=\"{rect.X:0.###}\" y=\"{rect.Y:0.###}\" width=\"{rect.Width:0.###}\" height=\"{rect.Height:0.###}\" {Pen(rect.Thickness)}/>");
                break;
            case CircleItem circle:
                text.Append(CultureInfo.InvariantCulture, $"<circle cx=\"{circle.X:0.###}\" cy=\"{circle.Y:0.###}\" r=\"{circle.Radius:0.###}\" {Pen(circle.Thickness)}/>");
                break;
            case PathItem path:
                var points = string.Join(' ', path.Points.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.X:0.###},{p.Y:0.###}")));
                text.Append(CultureInfo.InvariantCulture, $"<{(path.Closed ? "polygon" : "polyline")} points=\"{points}\" {Pen(path.Thickness)}/>");
                break;
        }
    }

    private static void AddText(Item item, StringBuilder text)
    {
        switch (item)
        {
            case TextItem run:
                var top = run.Baseline - (BaselineOfEm * run.Style.Size);
                text.Append(CultureInfo.InvariantCulture, $"<i class={Class(run.Style.Face)} style=\"left:{run.X:0.###}pt;top:{top:0.###}pt;font-size:{run.Style.Size}pt;line-height:{LineOfEm}\">{WebUtility.HtmlEncode(run.Text)}</i>\n");
                break;
            case PieceItem turned:
                var (x, y) = TurnedText.Corner(turned);
                text.Append(CultureInfo.InvariantCulture, $"<i style=\"left:{x:0.###}pt;top:{y:0.###}pt;transform-origin:0 0;transform:rotate({turned.QuarterTurns * 90}deg)\">");
                foreach (var inner in turned.Piece.Items)
                {
                    AddText(inner, text);
                }

                text.Append("</i>\n");
                break;
        }
    }

    private static string Pen(double thickness) =>
        thickness == 0 ? "fill=\"#000\"" : string.Create(CultureInfo.InvariantCulture, $"fill=\"none\" stroke=\"#000\" stroke-width=\"{thickness}\"");

    private static char Class(Face face) => "tTmM"[(int)face];
}
