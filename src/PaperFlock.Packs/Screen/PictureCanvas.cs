using PaperFlock.Layout;
using PaperFlock.Layout.Painting;
using PaperFlock.Layout.Pieces;

namespace PaperFlock.Packs.Screen;

/// <summary>
/// Writes down what is drawn, as SVG has it, for whoever builds the picture: no text of a flock file is ever part of a markup.
/// </summary>
/// <remarks>
/// Two kinds of things, in the order they are painted. Text: <c>text</c>, <c>face</c> (0 text, 1 bold, 2 mono, 3 mono bold), <c>size</c>, <c>x</c>, <c>y</c> of its baseline, <c>turns</c>, quarters clockwise.
/// All else: <c>d</c>, the data of a path, <c>fill</c> (<c>none</c>, <c>black</c>, <c>white</c>), <c>stroke</c>, its thickness or 0 for none, and <c>round</c> where ends and corners are round.
/// </remarks>
internal sealed class PictureCanvas : ICanvas
{
    public JsonArray Drawn { get; } = [];

    public void Text(string text, TextStyle style, double x, double y, int quarterTurns) => Drawn.Add((JsonNode)new JsonObject
    {
        ["text"] = text,
        ["face"] = (int)style.Face,
        ["size"] = style.Size,
        ["x"] = Short(x),
        ["y"] = Short(y),
        ["turns"] = quarterTurns,
    });

    public void Line(double x1, double y1, double x2, double y2, double thickness) => Draw($"M{At(x1, y1)}L{At(x2, y2)}", "none", thickness);

    public void Rectangle(Bounds box, double thickness) =>
        Draw(FormattableString.Invariant($"M{At(box.X, box.Y)}h{Short(box.Width)}v{Short(box.Height)}h{Short(-box.Width)}z"), FillOf(thickness), thickness);

    public void Path(ReadOnlySpan<(double X, double Y)> points, bool closed, double thickness)
    {
        var steps = string.Concat(points.ToArray().Select((p, i) => $"{(i == 0 ? 'M' : 'L')}{At(p.X, p.Y)}"));
        Draw(closed ? steps + "z" : steps, FillOf(thickness), thickness);
    }

    public void Outline(string steps, ReadOnlySpan<(double X, double Y)> points, Fill fill, double thickness)
    {
        var d = new System.Text.StringBuilder();
        foreach (var step in steps)
        {
            var count = OutlineItem.PointsOf(step);
            d.Append(step).AppendJoin(' ', points[..count].ToArray().Select(p => At(p.X, p.Y)));
            points = points[count..];
        }

        Draw(d.ToString(), fill switch { Fill.White => "white", Fill.Black => "black", _ => "none" }, thickness, round: true);
    }

    public void Circle(double x, double y, double radius, double thickness)
    {
        var arc = FormattableString.Invariant($"a{Short(radius)},{Short(radius)} 0 1 0");
        Draw(FormattableString.Invariant($"M{At(x - radius, y)}{arc} {Short(2 * radius)},0{arc} {Short(-2 * radius)},0z"), FillOf(thickness), thickness);
    }

    private static string FillOf(double thickness) => thickness == 0 ? "black" : "none";

    private static string At(double x, double y) => FormattableString.Invariant($"{Short(x)},{Short(y)}");

    /// <summary>A thousandth of a point is a ten thousandth of a pixel.</summary>
    private static double Short(double points) => Math.Round(points, 3);

    private void Draw(string d, string fill, double thickness, bool round = false) =>
        Drawn.Add((JsonNode)new JsonObject { ["d"] = d, ["fill"] = fill, ["stroke"] = Short(thickness), ["round"] = round });
}
