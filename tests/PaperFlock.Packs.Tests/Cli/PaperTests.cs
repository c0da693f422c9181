using PaperFlock.Layout;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;
using PaperFlock.Pdf;
using PaperFlock.Sheets;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Packs.Tests.Cli;

public sealed class PaperTests
{
    private static readonly Size A4 = new(Mm(210), Mm(297));
    private static readonly Size A4OnItsSide = new(Mm(297), Mm(210));

    /// <summary>ISO 216; Letter is 8½ × 11 inches and Tabloid 11 × 17, an inch being 72 points.</summary>
    [Theory]
    [InlineData(595.28, 841.89, "A4")]
    [InlineData(841.89, 595.28, "A4")]
    [InlineData(841.89, 1190.55, "A3")]
    [InlineData(1190.55, 1683.78, "A2")]
    [InlineData(612, 792, "Letter")]
    [InlineData(1224, 792, "Tabloid")]
    [InlineData(283.46, 425.2, "100 × 150 mm paper")]
    public void Paper_has_the_name_a_shop_knows(double width, double height, string name) =>
        Assert.Equal(name, PaperName.Of(new Size(width, height)));

    /// <summary>A letter for each page, F or B for its side, small for card; and first-last:leaves of each run.</summary>
    [Theory]
    [InlineData("FB", DuplexHint.LongEdge, "1-2:1")]
    [InlineData("FBFB", DuplexHint.LongEdge, "1-4:2")]
    [InlineData("FBF", DuplexHint.LongEdge, "1-3:2")]
    [InlineData("FFF", DuplexHint.LongEdge, "1-3:3")]
    [InlineData("FBFB", DuplexHint.Simplex, "1-4:4")]
    [InlineData("FBfbfbFB", DuplexHint.LongEdge, "1-2:1 3-6:2 7-8:1")]
    [InlineData("F", DuplexHint.Simplex, "1-1:1")]
    public void Leaves_are_counted_by_their_sides(string pages, DuplexHint duplex, string runs)
    {
        var found = PaperRun.Of(Document(string.Empty, duplex, [.. pages.Select((p, i) => (Label: $"P{i}", Code: p))]));
        Assert.Equal(runs, string.Join(' ', found.Select(r => FormattableString.Invariant($"{r.First}-{r.Last}:{r.Leaves}"))));
    }

    [Fact]
    public void Paper_on_its_side_is_the_same_paper()
    {
        var document = Document(string.Empty, DuplexHint.LongEdge, [("A", 'F'), ("B", 'F')]);
        var turned = document.Print.Pages[1] with { Page = document.Print.Pages[1].Page with { Paper = A4OnItsSide } };
        var pages = document.Print.Pages.SetItem(1, turned);
        Assert.Single(PaperRun.Of(document with { Print = document.Print with { Pages = pages } }));
    }

    [Fact]
    public void Pictures_have_names_that_any_disk_takes_and_no_two_alike()
    {
        PackDocument[] documents =
        [
            Document(string.Empty, DuplexHint.LongEdge, [("REG", 'F'), ("CARD 1", 'F'), ("CARD 1", 'B'), ("a/b:c", 'F'), ("", 'F'), ("reg", 'F')]),
            Document("-wall", DuplexHint.Simplex, [("WALL", 'F')]),
        ];
        Assert.Equal(
            ["REG-1.png", "CARD-1-1.png", "CARD-1-2.png", "a-b-c.png", "page.png", "reg-2.png", "WALL-wall.png"],
            PackFileNames.Pictures(documents));
    }

    private static PackDocument Document(string suffix, DuplexHint duplex, (string Label, char Code)[] pages)
    {
        var made = pages.Select(p =>
        {
            var side = char.ToUpperInvariant(p.Code) == 'F' ? PageSide.Front : PageSide.Back;
            return new PrintPage(new Page(A4, side, new PageNumber(1, 1, side), new Piece(A4, [])), p.Label);
        });
        ImmutableArray<SheetUse> uses = [.. pages.Select(p => char.IsLower(p.Code) ? SheetUse.CutUp : SheetUse.Binder)];
        return new PackDocument(suffix, new PrintDocument("A pack", null, "en-GB", [.. made], [], duplex), uses);
    }
}
