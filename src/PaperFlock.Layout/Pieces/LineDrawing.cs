using System.Xml;

namespace PaperFlock.Layout.Pieces;

/// <summary>A line drawing, of outlines one over another.</summary>
public sealed record LineDrawing(Size Size, ImmutableArray<OutlineItem> Outlines)
{
    private const string Steps = "MLCZ";

    /// <summary>Reads the little of SVG there is in one: paths of M, L, C and Z in whole numbers within the view box, white, black or not filled, with or without a black stroke.</summary>
    /// <exception cref="FormatException">It holds anything else.</exception>
    public static LineDrawing Read(TextReader svg)
    {
        using var xml = XmlReader.Create(svg, new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, IgnoreWhitespace = true });
        if (xml.MoveToContent() != XmlNodeType.Element || xml.Name != "svg" || xml["viewBox"]?.Split(' ') is not ["0", "0", var width, var height])
        {
            throw new FormatException("a drawing begins with an svg element whose viewBox begins at 0 0");
        }

        var size = new Size(Whole(width), Whole(height));
        var outlines = ImmutableArray.CreateBuilder<OutlineItem>();
        while (xml.Read() && xml.NodeType != XmlNodeType.EndElement)
        {
            outlines.Add(xml is { NodeType: XmlNodeType.Element, Name: "path", IsEmptyElement: true } && xml["transform"] is null
                ? Path(xml, size)
                : throw new FormatException($"a drawing holds plain paths and nothing else, not {xml.Name}"));
        }

        return new LineDrawing(size, outlines.DrainToImmutable());
    }

    /// <summary>As large as a space holds it, in the middle of it.</summary>
    public ImmutableArray<Item> Within(Size space)
    {
        var scale = Math.Min(space.Width / Size.Width, space.Height / Size.Height);
        double x = (space.Width - (Size.Width * scale)) / 2, y = (space.Height - (Size.Height * scale)) / 2;
        return [.. Outlines.Select(o => o with { Points = [.. o.Points.Select(p => (x + (p.X * scale), y + (p.Y * scale)))], Thickness = o.Thickness * scale })];
    }

    private static OutlineItem Path(XmlReader xml, Size size)
    {
        var fill = xml["fill"] switch
        {
            "none" => Fill.None,
            "#fff" => Fill.White,
            "#000" => Fill.Black,
            var other => throw new FormatException($"a path is filled with none, #fff or #000, not {other}"),
        };
        var thickness = xml["stroke"] switch
        {
            "none" => 0,
            "#000" => Whole(xml["stroke-width"]),
            var other => throw new FormatException($"a stroke is none or #000, not {other}"),
        };
        var drawn = xml["d"] ?? "";
        var steps = string.Concat(drawn.Where(char.IsAsciiLetter));
        var points = ImmutableArray.CreateBuilder<(double X, double Y)>();
        var numbers = drawn.Split(['M', 'L', 'C', 'Z', ' '], StringSplitOptions.RemoveEmptyEntries);
        for (var i = 0; i + 1 < numbers.Length; i += 2)
        {
            var (x, y) = (Whole(numbers[i]), Whole(numbers[i + 1]));
            points.Add(x <= size.Width && y <= size.Height ? (x, y) : throw new FormatException($"{x} {y} lies outside the view box"));
        }

        return steps.StartsWith('M') && steps.All(s => Steps.Contains(s)) && numbers.Length == 2 * steps.Sum(OutlineItem.PointsOf)
            ? new OutlineItem(steps, points.DrainToImmutable(), fill, thickness)
            : throw new FormatException($"a path is made of M, L, C and Z, each with its points: {drawn}");
    }

    private static int Whole(string? number) => int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var value)
        ? value
        : throw new FormatException($"a drawing has whole numbers, none below nought, not {number}");
}
