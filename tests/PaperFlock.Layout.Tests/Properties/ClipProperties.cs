using CsCheck;
using PaperFlock.Layout.Pieces;
using PaperFlock.Layout.Tests.Pieces;

namespace PaperFlock.Layout.Tests.Properties;

/// <summary>
/// Clips that partition a piece hold all of it, once. Coordinates are half points and the edges of clips whole ones,
/// so that lines often lie exactly on an edge.
/// </summary>
public class ClipProperties
{
    private const int Width = 60;
    private const int Height = 40;

    private static readonly Gen<double> X = Gen.Int[4, (2 * Width) - 4].Select(x => x / 2.0);
    private static readonly Gen<double> Y = Gen.Int[4, (2 * Height) - 4].Select(y => y / 2.0);
    private static readonly Gen<(double X, double Y)> Point = Gen.Select(X, Y);

    private static readonly Gen<Item> Drawn = Gen.OneOf<Item>(
        Gen.Select(Point, Point, (a, b) => (Item)new LineItem(a.X, a.Y, b.X, b.Y, 1)),
        Gen.Select(Point, Y, (a, y) => (Item)new LineItem(a.X, a.Y, a.X, y, 1)),
        Gen.Select(Point, X, (a, x) => (Item)new LineItem(a.X, a.Y, x, a.Y, 1)),
        Gen.Select(Point, Point, Gen.Int[0, 1], Outlined),
        Gen.Select(Point.Array[3, 6], Gen.Bool, (points, closed) => (Item)new PathItem([.. points], closed, 1)),
        Gen.Select(Point, Point, Point, (a, b, c) => (Item)new PathItem([a, b, c], true, 0)));

    // Half of each drawing is in a turned piece.
    private static readonly Gen<Piece> Drawing = Gen.Select(Drawn.Array[1, 6], Drawn.Array[1, 6], Gen.Int[0, 1]).Select((plain, turned, half) =>
        new Piece(new Size(Width, Height), [.. plain, new PieceItem(0, 0, new Piece(new Size(Width, Height), [.. turned]), 2 * half)]));

    private static readonly Gen<(double[] Columns, double[] Rows)> Partition = Gen.Select(
        Gen.Int[1, Width - 1].Array[0, 3].Select(cuts => Edges(cuts, Width)),
        Gen.Int[1, Height - 1].Array[0, 3].Select(cuts => Edges(cuts, Height)));

    [Fact]
    public void Every_length_and_every_area_is_in_exactly_one_clip() =>
        Gen.Select(Drawing, Partition).Sample((piece, cuts) =>
        {
            double length = 0, area = 0;
            for (var column = 1; column < cuts.Columns.Length; column++)
            {
                for (var row = 1; row < cuts.Rows.Length; row++)
                {
                    var (x, y) = (cuts.Columns[column - 1], cuts.Rows[row - 1]);
                    var clip = piece.Clip(x, y, cuts.Columns[column] - x, cuts.Rows[row] - y);
                    Assert.All(clip.Items, item => AssertInside(item, clip.Size));
                    length += clip.Items.Sum(Length);
                    area += clip.Items.Sum(FilledArea);
                }
            }

            var whole = piece.Flatten().Items;
            Assert.Equal(whole.Sum(Length), length, 1e-6);
            Assert.Equal(whole.Sum(FilledArea), area, 1e-6);
        }, iter: 5000);

    [Fact]
    public void A_clip_of_the_whole_is_the_whole() =>
        Drawing.Sample(piece => Assert.Equal(
            piece.Flatten().Items.Select(Length).ToArray(),
            piece.Clip(0, 0, Width, Height).Items.Select(Length).ToArray()), iter: 500);

    private static Item Outlined((double X, double Y) a, (double X, double Y) b, int thickness) =>
        new RectItem(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y) + thickness, thickness);

    private static double[] Edges(int[] cuts, int end) => [0, .. cuts.Distinct().Order().Select(cut => (double)cut), end];

    private static double Length(Item item) => item switch
    {
        LineItem line => Distance((line.X1, line.Y1), (line.X2, line.Y2)),
        RectItem { IsFilled: false } rect => 2 * (rect.Width + rect.Height),
        PathItem { Thickness: > 0 } path => Enumerable.Range(0, path.Points.Length - (path.Closed ? 0 : 1)).Sum(i => Distance(path.Points[i], path.Points[(i + 1) % path.Points.Length])),
        _ => 0,
    };

    private static double FilledArea(Item item) => item switch
    {
        RectItem { IsFilled: true } rect => rect.Width * rect.Height,
        PathItem { Thickness: 0 } path => ClipTests.Area(path),
        _ => 0,
    };

    private static double Distance((double X, double Y) a, (double X, double Y) b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    private static void AssertInside(Item item, Size size)
    {
        (double X, double Y)[] points = item switch
        {
            LineItem line => [(line.X1, line.Y1), (line.X2, line.Y2)],
            RectItem rect => [(rect.X, rect.Y), (rect.X + rect.Width, rect.Y + rect.Height)],
            PathItem path => [.. path.Points],
            _ => [],
        };
        Assert.NotEmpty(points);
        Assert.All(points, point =>
        {
            Assert.InRange(point.X, -1e-9, size.Width + 1e-9);
            Assert.InRange(point.Y, -1e-9, size.Height + 1e-9);
        });
    }
}
