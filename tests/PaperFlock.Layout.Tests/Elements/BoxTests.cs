using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Tests.Fakes;
using static PaperFlock.Layout.Tests.Fakes.Make;

namespace PaperFlock.Layout.Tests.Elements;

public class BoxTests
{
    [Fact]
    public void Its_size_is_child_padding_and_border_together() => Expect.Blocks(
        new Align(new Box(Solid("a", 50, 20), new Edges(1, 2, 3, 4), 2) { Name = "box" }), 200, 100,
        """
        1 box 0 0 58 30
        1 a 3 4 50 20
        """);

    [Fact]
    public void The_border_lies_inside_its_size() => Expect.Items(PieceOf(new Box(Solid("a", 50, 20), default, 2)), "rect 1 1 52 22 thick 2");

    [Fact]
    public void Only_the_sides_asked_for_are_drawn_and_take_room() => Expect.Items(
        PieceOf(new Box(Solid("a", 50, 20), default, 2, Sides.Left | Sides.Bottom)),
        """
        line 1 0 1 22 thick 2
        line 0 21 52 21 thick 2
        """);

    [Fact]
    public void It_is_as_wide_as_the_page_in_a_column_and_hugs_its_child_in_an_align() => Expect.Blocks(
        Stack(0, new Box(Solid("a", 50, 20), default) { Name = "wide" }, new Align(new Box(Solid("b", 50, 20), default) { Name = "hug" }, TextAlign.Right)), 200, 100,
        """
        1 wide 0 0 200 20
        1 a 0 0 50 20
        1 hug 150 20 50 20
        1 b 150 20 50 20
        """);

    [Fact]
    public void It_fills_its_place_on_a_board_and_so_does_a_box_in_it() => Expect.Blocks(
        new Board(new Size(100, 80), [new BoardPlace(0, 0, 100, 80, new Box(new Box(Solid("a", 50, 20), default) { Name = "inner" }, Edges.All(5), 1) { Name = "outer" })]), 200, 100,
        """
        1 outer 0 0 100 80
        1 inner 6 6 88 68
        1 a 6 6 50 20
        """);

    [Fact]
    public void Each_part_of_a_child_that_splits_has_the_whole_border()
    {
        var pages = Paged(new Box(Flow("f", 50, 150), Edges.All(10), 2) { Name = "box" }, 100, 100);

        Expect.Blocks(pages,
            """
            1 box 0 0 100 100
            1 f 12 12 50 76
            2 box 0 0 100 98
            2 f 12 12 50 74
            """);
        Expect.Items(pages[0].Content, "rect 1 1 98 98 thick 2");
        Expect.Items(pages[1].Content, "rect 1 1 98 96 thick 2");
    }

    [Fact]
    public void Round_no_child_it_is_padding_and_border() => Assert.Equal(new Size(12, 12), PieceOf(new Box(null, Edges.All(5), 1)).Size);

    [Fact]
    public void Round_nothing_to_show_a_border_is_still_drawn_but_padding_alone_is_not()
    {
        Assert.Equal(new Size(12, 12), PieceOf(new Box(Words(""), Edges.All(5), 1)).Size);
        Assert.IsType<Placement.Nothing>(Place(new Box(Words(""), Edges.All(5)), 100, 100));
        Assert.IsType<Placement.Nothing>(Place(new Box(Words(""), Edges.All(5)), 100, 1));
    }

    [Fact]
    public void Padding_that_does_not_fit_moves_it_on() => Expect.Blocks(
        Stack(0, Solid("a", 50, 95), new Box(Solid("b", 50, 1), Edges.All(5)) { Name = "box" }), 100, 100,
        """
        1 a 0 0 50 95
        2 box 0 0 100 11
        2 b 5 5 50 1
        """);

    [Theory]
    [InlineData(30, 8, "box: needs 30.0 pt of width, has 20.0 pt")]
    [InlineData(10, 60, "box: needs 120.0 pt, has 100.0 pt")]
    public void Padding_larger_than_the_page_is_refused(double horizontal, double vertical, string complaint) =>
        Assert.Equal(complaint, Complaint(new Box(Solid("a", 1, 1), Edges.Of(horizontal / 2, vertical)) { Name = "box" }, 20, 100));

    [Fact]
    public void A_break_at_the_end_of_a_box_leaves_no_empty_box_on_the_next_page() => Expect.Blocks(
        Stack(0, new Box(Stack(0, Solid("a", 50, 20), new PageBreak()), Edges.All(10), 1) { Name = "box" }, Solid("b", 50, 20)), 100, 100,
        """
        1 box 0 0 100 42
        1 a 11 11 50 20
        2 b 0 0 50 20
        """);

    [Fact]
    public void A_box_on_a_fresh_page_is_fresh_inside() => Expect.Blocks(
        new Box(Stack(0, new PageBreak(), new KeepTogether(Flow("f", 50, 120))), Edges.All(10)), 100, 100,
        """
        1 f 10 10 50 80
        2 f 10 10 50 40
        """);
}
