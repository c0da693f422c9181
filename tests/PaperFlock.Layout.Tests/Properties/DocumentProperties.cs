using CsCheck;
using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;
using PaperFlock.Layout.Tests.Fakes;

namespace PaperFlock.Layout.Tests.Properties;

public class DocumentProperties
{
    private const int Samples = 2000;

    [Fact]
    public void All_words_are_on_the_pages_once_and_in_order() => SampleDocuments((body, pages) =>
        Assert.Equal(RandomDocuments.Source(body), RandomDocuments.Letters(string.Concat(pages.SelectMany(page => page.Content.Texts()).Select(text => text.Text)))));

    [Fact]
    public void Nothing_lies_outside_its_piece() => SampleDocuments((_, pages) => Assert.All(pages, page => AssertInside(page.Content)));

    [Fact]
    public void The_same_body_gives_the_same_pages_whatever_was_laid_out_before() => SampleDocuments((body, pages) =>
    {
        var measurer = Make.Measurer();
        Paginator.Paginate(body, Make.Bare(RandomDocuments.Width + 50, 5000), measurer);
        var again = Paginator.Paginate(body, Make.Bare(RandomDocuments.Width, RandomDocuments.Height), measurer);

        Assert.Equal(pages.Select(Described), again.Select(Described));
    });

    // A rest is the same element every time it is asked, so a rest placed twice gives the same part twice.
    [Fact]
    public void Placing_any_part_twice_gives_the_same_answer() =>
        Gen.Select(RandomDocuments.Body, Gen.Double[20, 200]).Sample((body, height) =>
        {
            var measurer = Make.Measurer();
            var space = new Space(RandomDocuments.Width, height, RandomDocuments.Height);
            var (once, twice) = (body.Place(space, measurer), body.Place(space, measurer));
            Assert.Equal(Described(once), Described(twice));
            if (once is Placement.Splits a && twice is Placement.Splits b)
            {
                var fresh = new Space(RandomDocuments.Width, RandomDocuments.Height, RandomDocuments.Height);
                Assert.Equal(Described(a.Rest.Place(fresh, measurer)), Described(b.Rest.Place(fresh, Make.Measurer())));
            }
        }, iter: Samples);

    [Fact]
    public void Flowing_blocks_lose_no_height() =>
        Gen.Select(Gen.Double[1, 250].Array[1, 8], Gen.Double[0, 20]).Sample((heights, spacing) =>
        {
            var pages = Make.Paged(new Column([.. heights.Select((height, i) => Make.Flow($"f{i}", 10, height))], spacing), 100, 100);

            var found = pages.SelectMany(page => Pieces(page.Content)).Where(piece => piece.Name is not null).GroupBy(piece => piece.Name).ToDictionary(parts => parts.Key!, parts => parts.Sum(part => part.Size.Height));
            Assert.All(heights.Index(), block => Assert.Equal(block.Item, found[$"f{block.Index}"], 1e-6));
        }, iter: Samples);

    [Fact]
    public void Table_rows_are_all_there_once_and_in_order_with_a_head_on_every_page() =>
        Gen.Select(Gen.Double[0, 96].Array[1, 60], Gen.Int[0, 9].Array[60]).Sample((heights, keeps) =>
        {
            var head = new TableRow([new TableCell(null)], 4, Name: "head");
            var rows = heights.Select((height, i) => new TableRow([new TableCell(Make.Words($"{i}"), Padding: Edges.None)], Math.Max(12.5, height), KeepWithNext: keeps[i] == 0));
            var table = new Table([Track.Share()], [head with { Cells = [new TableCell(Make.Solid("head", 1, 1), Padding: Edges.None)] }], [.. rows]);

            var pages = Make.Paged(table, 100, 100);

            Assert.Equal(Enumerable.Range(0, heights.Length).Select(i => $"{i}"), pages.SelectMany(page => page.Content.Texts()).Select(text => text.Text));
            Assert.All(pages, page => Assert.Single(Pieces(page.Content), piece => piece.Name == "head" && piece.Size.Height == 1));
        }, iter: Samples);

    /// <summary>Lays out random bodies; those that cannot fit are left out, and must be few.</summary>
    private static void SampleDocuments(Action<Element, ImmutableArray<Page>> check)
    {
        int all = 0, refused = 0;
        RandomDocuments.Body.Sample(body =>
        {
            Interlocked.Increment(ref all);
            ImmutableArray<Page> pages;
            try
            {
                pages = Make.Paged(body, RandomDocuments.Width, RandomDocuments.Height);
            }
            catch (LayoutException)
            {
                Interlocked.Increment(ref refused);
                return;
            }

            check(body, pages);
        }, iter: Samples);
        Assert.InRange(refused, 0, all / 10);
    }

    private static void AssertInside(Piece piece)
    {
        foreach (var item in piece.Items)
        {
            var box = item switch
            {
                TextItem text => new Bounds(text.X, text.Baseline - (0.8 * text.Style.Size), text.Width, text.Style.Size),
                LineItem line => new Bounds(Math.Min(line.X1, line.X2), Math.Min(line.Y1, line.Y2), Math.Abs(line.X2 - line.X1), Math.Abs(line.Y2 - line.Y1)),
                RectItem rect => new Bounds(rect.X - (rect.Thickness / 2), rect.Y - (rect.Thickness / 2), rect.Width + rect.Thickness, rect.Height + rect.Thickness),
                PieceItem nested => default(Transform).Of(nested).Apply(new Bounds(0, 0, nested.Piece.Size.Width, nested.Piece.Size.Height)),
                LinkItem link => new Bounds(link.X, link.Y, link.Width, link.Height),
                AnchorItem anchor => new Bounds(anchor.X, anchor.Y, 0, 0),
                _ => throw new InvalidOperationException($"what is {item}?"),
            };
            Assert.InRange(box.X, -Space.Epsilon, piece.Size.Width + Space.Epsilon);
            Assert.InRange(box.Y, -Space.Epsilon, piece.Size.Height + Space.Epsilon);
            Assert.InRange(box.Right, -Space.Epsilon, piece.Size.Width + Space.Epsilon);
            Assert.InRange(box.Bottom, -Space.Epsilon, piece.Size.Height + Space.Epsilon);
            if (item is PieceItem inner)
            {
                AssertInside(inner.Piece);
            }
        }
    }

    private static IEnumerable<Piece> Pieces(Piece piece) => [piece, .. piece.Items.OfType<PieceItem>().SelectMany(nested => Pieces(nested.Piece))];

    private static string Described(Page page) => $"{page.Number} {Described(page.Content)}";

    private static string Described(Placement placement) => placement switch
    {
        Placement.Fits fits => $"fits {Described(fits.Piece)}",
        Placement.Splits splits => $"splits {Described(splits.Piece)}",
        Placement.Wraps wraps => $"wraps {string.Join('>', wraps.Path)} {wraps.Reason}",
        _ => "nothing",
    };

    private static string Described(Piece piece) => $"{piece.Size} {string.Join('\n', piece.Flatten().Items.Select(item => item is PieceItem turned ? $"{turned.X} {turned.Y} {turned.QuarterTurns} {turned.Piece.Items[0]}" : item.ToString()))}";
}
