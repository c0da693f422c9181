using System.Text;
using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;

namespace PaperFlock.Layout.Tests.Fakes;

/// <summary>Compares what stands where with a table of lines, and on failure shows the two interleaved.</summary>
internal static class Expect
{
    /// <summary>A line for each named piece: page, name, x, y, width, height; nested ones after the one they are in.</summary>
    public static void Blocks(Element body, double width, double height, string expected) => Blocks(Make.Paged(body, width, height), expected);

    public static void Blocks(IEnumerable<Page> pages, string expected)
    {
        var actual = new StringBuilder();
        foreach (var page in pages)
        {
            var before = actual.Length;
            Describe(page.Content, default, page.Number.Number, actual);
            if (actual.Length == before)
            {
                actual.Append(CultureInfo.InvariantCulture, $"{page.Number.Number} (empty)\n");
            }
        }

        Same(expected, actual.ToString());
    }

    /// <summary>A line for each item of the flattened piece.</summary>
    public static void Items(Piece piece, string expected) => Same(expected, string.Join('\n', piece.Flatten().Items.Select(Describe)));

    /// <summary>A line for each text: x, baseline, words; pages apart by a rule.</summary>
    public static void Texts(IEnumerable<Page> pages, string expected) =>
        Same(expected, string.Join("\n--\n", pages.Select(page => string.Join('\n', page.Content.Flatten().Items.OfType<TextItem>().Select(text => string.Create(CultureInfo.InvariantCulture, $"{text.X:0.##} {text.Baseline:0.##} {text.Text}"))))));

    public static void Same(string expected, string actual)
    {
        var wanted = Rows(expected);
        var got = Rows(actual);
        if (wanted.SequenceEqual(got))
        {
            return;
        }

        var report = new StringBuilder("what stands where differs (= identical, - expected, + actual)\n");
        for (var i = 0; i < Math.Max(wanted.Length, got.Length); i++)
        {
            var (want, have) = (wanted.ElementAtOrDefault(i), got.ElementAtOrDefault(i));
            report.Append(want == have ? $"= {have}\n" : $"- {want}\n+ {have}\n");
        }

        Assert.Fail(report.ToString());
    }

    private static string[] Rows(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static void Describe(Piece piece, Transform transform, int page, StringBuilder lines)
    {
        if (piece.Name is not null)
        {
            var box = transform.Apply(new Bounds(0, 0, piece.Size.Width, piece.Size.Height));
            lines.Append(CultureInfo.InvariantCulture, $"{page} {piece.Name} {box.X:0.##} {box.Y:0.##} {box.Width:0.##} {box.Height:0.##}\n");
        }

        foreach (var nested in piece.Items.OfType<PieceItem>())
        {
            Describe(nested.Piece, transform.Of(nested), page, lines);
        }
    }

    private static string Describe(Item item) => item switch
    {
        TextItem text => string.Create(CultureInfo.InvariantCulture, $"text {text.X:0.##} {text.Baseline:0.##} {text.Width:0.##} {text.Text}"),
        PageTextItem text => string.Create(CultureInfo.InvariantCulture, $"page text {text.X:0.##} {text.Baseline:0.##} {text.Width:0.##}"),
        LineItem line => string.Create(CultureInfo.InvariantCulture, $"line {line.X1:0.##} {line.Y1:0.##} {line.X2:0.##} {line.Y2:0.##} thick {line.Thickness:0.##}"),
        RectItem rect => string.Create(CultureInfo.InvariantCulture, $"rect {rect.X:0.##} {rect.Y:0.##} {rect.Width:0.##} {rect.Height:0.##} thick {rect.Thickness:0.##}"),
        PathItem path => string.Create(CultureInfo.InvariantCulture, $"path {string.Join(' ', path.Points.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.X:0.##},{p.Y:0.##}")))}{(path.Closed ? " closed" : "")} thick {path.Thickness:0.##}"),
        CircleItem circle => string.Create(CultureInfo.InvariantCulture, $"circle {circle.X:0.##} {circle.Y:0.##} {circle.Radius:0.##} thick {circle.Thickness:0.##}"),
        LinkItem link => string.Create(CultureInfo.InvariantCulture, $"link {link.X:0.##} {link.Y:0.##} {link.Width:0.##} {link.Height:0.##} {link.Target}"),
        AnchorItem anchor => string.Create(CultureInfo.InvariantCulture, $"anchor {anchor.X:0.##} {anchor.Y:0.##} {anchor.Target}"),
        PieceItem { Piece.Items: [TextItem turned] } nested => string.Create(CultureInfo.InvariantCulture, $"turned {nested.X:0.##} {nested.Y:0.##} by {nested.QuarterTurns} {turned.Text}"),
        _ => item.GetType().Name,
    };
}
