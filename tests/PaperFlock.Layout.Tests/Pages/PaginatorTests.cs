using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;
using PaperFlock.Layout.Tests.Fakes;
using static PaperFlock.Layout.Tests.Fakes.Make;

namespace PaperFlock.Layout.Tests.Pages;

public class PaginatorTests
{
    private static readonly PageDesign Design = new(
        new Size(200, 150), new Edges(20, 10, 5, 15), new Edges(5, 10, 20, 15), Solid("head", 50, 12), null, Solid("foot", 50, 8), 5);

    [Fact]
    public void Head_body_and_foot_stand_within_the_margins_of_the_side() => Expect.Blocks(
        Paginate(Stack(0, Flow("f", 60, 200)), Design),
        """
        1 head 20 10 50 12
        1 f 20 27 60 95
        1 foot 20 127 50 8
        2 head 5 10 50 12
        2 f 5 27 60 95
        2 foot 5 127 50 8
        3 head 20 10 50 12
        3 f 20 27 60 10
        3 foot 20 127 50 8
        """);

    [Fact]
    public void A_continued_head_stands_on_later_pages_and_its_height_counts() => Expect.Blocks(
        Paginate(Flow("f", 60, 120), Design with { ContinuedHead = Solid("continued", 50, 40), Foot = null }),
        """
        1 head 20 10 50 12
        1 f 20 27 60 108
        2 continued 5 10 50 40
        2 f 5 55 60 12
        """);

    [Fact]
    public void Without_head_and_foot_there_are_no_gaps() => Expect.Blocks(
        Paginate(Flow("f", 60, 125), Design with { Head = null, Foot = Words("") }), "1 f 20 10 60 125");

    [Fact]
    public void When_the_first_head_leaves_too_little_the_body_starts_on_the_second_page() => Expect.Blocks(
        Paginate(Solid("body", 60, 100), Design with { Head = Solid("tall", 50, 90), ContinuedHead = Solid("low", 50, 10), Foot = null }),
        """
        1 tall 20 10 50 90
        2 low 5 10 50 10
        2 body 5 25 60 100
        """);

    [Theory]
    [InlineData(PageSide.Front, false, "FBF")]
    [InlineData(PageSide.Back, false, "BFB")]
    [InlineData(PageSide.Front, true, "FFF")]
    [InlineData(PageSide.Back, true, "FFF")]
    public void Sides_alternate_unless_paper_is_printed_on_one(PageSide startsOn, bool singleSided, string sides)
    {
        var pages = Paginator.Paginate(Flow("f", 60, 250), Bare(100, 100), Measurer(), startsOn, singleSided);

        Assert.Equal(sides, string.Concat(pages.Select(page => page.Side.ToString()[0])));
        Assert.Equal(pages.Select((page, i) => new PageNumber(i + 1, 3, page.Side)), pages.Select(page => page.Number));
        Assert.All(pages, page => Assert.Equal(new Size(100, 100), page.Paper));
    }

    [Fact]
    public void Marks_lie_over_the_whole_paper_and_know_the_side() => Expect.Blocks(
        Paginate(Flow("f", 60, 120), Design with { Head = null, Foot = null, Marks = side => new Board(new Size(200, 150), [new BoardPlace(side == PageSide.Front ? 5 : 190, 70, 5, 5, Solid($"hole {side}", 5, 5))]) }),
        """
        1 f 20 10 60 120
        1 hole Front 5 70 5 5
        """);

    [Fact]
    public void Page_texts_get_their_words_when_the_count_is_known()
    {
        var foot = new Row([
            new RowCell(Track.Share(), new PageText(n => $"{n.Number} of {n.Of}", Ten)),
            new RowCell(Track.Share(), new Row([new RowCell(Track.Fixed(40), new PageText(n => $"{n.Side}", Ten))])),
            new RowCell(Track.Share(), new Box(new PageText(n => $"p{n.Number}", Ten), Edges.All(5)))]);
        var pages = Paginate(Flow("f", 60, 150), Design with { Head = null, Foot = foot, Front = default, Back = default });

        Expect.Texts(pages,
            """
            0 136.75 1 of 2
            66.67 136.75 Front
            138.33 141.75 p1
            --
            0 136.75 2 of 2
            66.67 136.75 Back
            138.33 141.75 p2
            """);
        Assert.Equal(["1 of 2", "Front", "p1", "2 of 2", "Back", "p2"], pages.SelectMany(page => page.Content.Texts()).Select(text => text.Text));
        Assert.DoesNotContain(pages.SelectMany(page => page.Content.Flatten().Items), item => item is PageTextItem or PieceItem { Piece.Items: [PageTextItem] });
    }

    [Fact]
    public void A_page_text_too_long_for_its_room_is_an_error() => Assert.Equal(
        "number: “page 1 of 1” needs 66.0 pt of width, has 50.0 pt",
        Complaint(new PageText(n => $"page {n.Number} of {n.Of}", Ten) { Name = "number" }, 50, 100));

    [Fact]
    public void A_page_text_with_no_room_for_a_line_wraps() =>
        Assert.Equal("needs 12.5 pt, has 12.0 pt", Assert.IsType<Placement.Wraps>(Place(new PageText(_ => "", Ten), 50, 12)).Reason);

    public static TheoryData<string, PageDesign, string> Unfitting => new()
    {
        { "head", Design with { Head = Solid("head", 50, 126) }, "head: solid 126 high in 125" },
        { "head that splits", Design with { Head = Flow("head", 50, 126) }, "head: needs 126.0 pt, has 125.0 pt" },
        { "foot", Design with { Foot = Solid("foot", 180, 1) }, "foot: solid 180 wide in 175" },
        { "marks", Design with { Marks = _ => Solid("marks", 201, 1) }, "marks: solid 201 wide in 200" },
        { "no room between", Design with { Head = Solid("head", 50, 70), Foot = Solid("foot", 50, 60) }, "body: solid 20 high in 0" },
    };

    [Theory]
    [MemberData(nameof(Unfitting))]
    public void What_does_not_fit_is_named(string what, PageDesign design, string complaint)
    {
        var error = Assert.Throws<LayoutException>(() => Paginate(Solid("body", 50, 20), design));

        Assert.True(complaint == error.Message, $"{what}: {error.Message}");
    }

    [Fact]
    public void An_error_without_names_is_the_reason_alone() => Assert.Equal("needs 120.0 pt, has 100.0 pt", Complaint(new Picture(new Size(0, 120), []), 100, 100));

    [Theory]
    [InlineData(20, 10, 6, 15)]
    [InlineData(20, 11, 5, 15)]
    public void Margins_that_leave_different_sizes_are_a_mistake_of_ours(double left, double top, double right, double bottom) =>
        Assert.Throws<ArgumentException>(() => Paginate(Solid("a", 1, 1), Design with { Back = new Edges(left, top, right, bottom) }));

    [Fact]
    public void Margins_wider_than_the_paper_are_a_mistake_of_ours() =>
        Assert.Throws<ArgumentException>(() => Paginate(Solid("a", 1, 1), Design with { Front = Edges.All(100), Back = Edges.All(100) }));

    private static IEnumerable<Page> Paginate(Element body, PageDesign design) => Paginator.Paginate(body, design, Measurer());
}
