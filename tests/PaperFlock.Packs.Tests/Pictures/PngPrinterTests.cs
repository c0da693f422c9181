using PaperFlock.Cli.Pictures;
using PaperFlock.Layout;
using PaperFlock.Layout.Pieces;
using PaperFlock.Pdf.Tests;
using SkiaSharp;

namespace PaperFlock.Packs.Tests.Pictures;

public sealed class PngPrinterTests
{
    [Theory]
    [InlineData(72, 595, 842)]
    [InlineData(144, 1190, 1684)]
    [InlineData(100, 826, 1169)]
    public void The_picture_is_the_paper_at_the_given_fineness(double dotsPerInch, int width, int height)
    {
        using var picture = Picture(Sample.Page(), dotsPerInch);
        Assert.Equal((width, height), (picture.Width, picture.Height));
        Assert.All(Pixels(picture), pixel => Assert.Equal(SKColors.White, pixel));
    }

    [Fact]
    public void Shapes_stand_where_the_items_say()
    {
        var piece = new Piece(new Size(120, 40), [new RectItem(10, 5, 30, 10, 0)]);
        using var picture = Picture(
            Sample.Page(
                new RectItem(50, 60, 70, 80, 0),
                new CircleItem(300, 100, 20, 0),
                new LineItem(50, 400, 150, 400, 2),
                new PathItem([(400, 300), (440, 380), (360, 380)], true, 0),
                new PieceItem(200, 500, piece, 1)),
            144);
        Assert.Equal(SKColors.Black, At(85, 100));
        Assert.Equal(SKColors.White, At(49, 59));
        Assert.Equal(SKColors.Black, At(300, 100));
        Assert.Equal(SKColors.White, At(318, 118));
        Assert.Equal(SKColors.Black, At(100, 400));
        Assert.Equal(SKColors.White, At(100, 402));
        Assert.Equal(SKColors.Black, At(400, 360));
        Assert.Equal(SKColors.Black, At(230, 525));
        Assert.Equal(SKColors.White, At(215, 510));

        SKColor At(int x, int y) => picture.GetPixel(x * 2, y * 2);
    }

    [Fact]
    public void White_in_a_drawing_hides_what_is_behind_it()
    {
        ImmutableArray<(double X, double Y)> square = [(100, 100), (200, 100), (200, 200), (100, 200)];
        using var picture = Picture(
            Sample.Page(
                new RectItem(50, 50, 300, 300, 0),
                new OutlineItem("MLLLZ", square, Fill.White, 4),
                new OutlineItem("MCZ", [(250, 250), (250, 310), (310, 310), (310, 250)], Fill.White, 0)),
            72);
        Assert.Equal(SKColors.White, picture.GetPixel(150, 150));
        Assert.Equal(SKColors.Black, picture.GetPixel(150, 99));
        Assert.Equal(SKColors.White, picture.GetPixel(280, 290));
        Assert.Equal(SKColors.Black, picture.GetPixel(280, 300));
    }

    [Fact]
    public void Text_is_black_with_grey_edges_and_within_its_width()
    {
        var text = Sample.Text(100, 200, "Hebble", new TextStyle(Face.TextBold, 40));
        using var picture = Picture(Sample.Page(text), 72);
        var ink = Pixels(picture).Index().Where(pixel => pixel.Item != SKColors.White).ToList();
        Assert.Contains(ink, pixel => pixel.Item == SKColors.Black);
        Assert.Contains(ink, pixel => pixel.Item != SKColors.Black);
        Assert.All(ink, pixel => Assert.True(pixel.Item.Red == pixel.Item.Green && pixel.Item.Green == pixel.Item.Blue));
        Assert.All(ink, pixel => Assert.InRange(pixel.Index % 595, 100, 100 + text.Width));
        Assert.All(ink, pixel => Assert.InRange(pixel.Index / 595, 200 - (0.75 * 40), 201));
    }

    [Fact]
    public void The_same_page_gives_the_same_picture()
    {
        var page = Sample.Everything().Pages[0].Page;
        var once = PngPrinter.Paint(page, 100);
        Assert.All(Enumerable.Range(0, 8).AsParallel().Select(_ => PngPrinter.Paint(page, 100)), png => Assert.Equal(once, png));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-72)]
    public void There_must_be_some_dots(double dotsPerInch)
        => Assert.Throws<ArgumentOutOfRangeException>(() => PngPrinter.Paint(Sample.Page(), dotsPerInch));

    private static SKBitmap Picture(Layout.Pages.Page page, double dotsPerInch) => SKBitmap.Decode(PngPrinter.Paint(page, dotsPerInch));

    private static SKColor[] Pixels(SKBitmap picture) => picture.Pixels;
}
