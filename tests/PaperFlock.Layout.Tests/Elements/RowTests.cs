using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Tests.Fakes;
using static PaperFlock.Layout.Tests.Fakes.Make;

namespace PaperFlock.Layout.Tests.Elements;

public class RowTests
{
    [Fact]
    public void Fixed_widths_come_first_and_shares_divide_what_is_left() => Expect.Blocks(
        new Row([
            new RowCell(Track.Fixed(40), Solid("a", 10, 20)),
            new RowCell(Track.Share(), Solid("b", 10, 30)),
            new RowCell(Track.Share(3), Solid("c", 10, 10))], 10)
        { Name = "row" }, 200, 100,
        """
        1 row 0 0 200 30
        1 a 0 0 10 20
        1 b 50 0 10 30
        1 c 95 0 10 10
        """);

    [Fact]
    public void Without_shares_it_is_as_wide_as_its_cells() =>
        Assert.Equal(new Size(80, 20), PieceOf(new Row([new RowCell(Track.Fixed(40), Solid("a", 10, 20)), new RowCell(Track.Fixed(30), Solid("b", 10, 20))], 10)).Size);

    [Theory]
    [InlineData(VerticalAlign.Top, 0)]
    [InlineData(VerticalAlign.Middle, 15)]
    [InlineData(VerticalAlign.Bottom, 30)]
    public void A_low_child_stands_where_its_cell_says(VerticalAlign align, double y) => Expect.Blocks(
        new Row([new RowCell(Track.Share(), Solid("high", 10, 50)), new RowCell(Track.Share(), Solid("low", 10, 20), align)]), 100, 100,
        $"""
        1 high 0 0 10 50
        1 low 50 {y} 10 20
        """);

    [Fact]
    public void Boxes_side_by_side_end_level() => Expect.Blocks(
        new Row([
            new RowCell(Track.Share(), new Box(Solid("a", 10, 50), default, 1) { Name = "A" }),
            new RowCell(Track.Share(), new Box(Solid("b", 10, 20), default, 1) { Name = "B" })]), 100, 100,
        """
        1 A 0 0 50 52
        1 a 1 1 10 50
        1 B 50 0 50 52
        1 b 51 1 10 20
        """);

    [Fact]
    public void It_moves_to_the_next_page_rather_than_split() => Expect.Blocks(
        Stack(0, Solid("x", 50, 60), new Row([new RowCell(Track.Share(), Flow("a", 10, 50)), new RowCell(Track.Share(), Solid("b", 10, 20))])), 100, 100,
        """
        1 x 0 0 50 60
        2 a 0 0 10 50
        2 b 50 0 10 20
        """);

    [Theory]
    [InlineData(150, "row > a: needs 150.0 pt, has 100.0 pt")]
    [InlineData(4000, "row > a: needs 4000.0 pt, has 100.0 pt")]
    [InlineData(100.04, "row > a: needs 100.040 pt, has 100.000 pt")]
    public void Higher_than_a_page_it_says_how_high(double height, string complaint) =>
        Assert.Equal(complaint, Complaint(new Row([new RowCell(Track.Share(), Flow("a", 10, height))]) { Name = "row" }, 100, 100));

    [Fact]
    public void A_page_break_in_a_cell_is_refused_in_words() => Assert.Equal(
        "row > column: holds a page break, which 100.0 pt in one piece cannot have",
        Complaint(new Row([new RowCell(Track.Share(), Stack(0, Solid("a", 10, 10), new PageBreak(), Solid("b", 10, 10)) with { Name = "column" })]) { Name = "row" }, 100, 100));

    [Fact]
    public void Cells_wider_than_the_row_are_refused() => Assert.Equal(
        "row: needs 130.0 pt of width, has 100.0 pt",
        Complaint(new Row([new RowCell(Track.Fixed(60), Solid("a", 10, 20)), new RowCell(Track.Fixed(60), Solid("b", 10, 20))], 10) { Name = "row" }, 100, 100));

    [Fact]
    public void A_cell_with_nothing_to_show_keeps_its_width() => Expect.Blocks(
        new Row([new RowCell(Track.Share(), new NoBlock()), new RowCell(Track.Share(), Solid("b", 10, 20))]), 100, 100,
        "1 b 50 0 10 20");

    [Fact]
    public void With_nothing_in_any_cell_it_is_nothing() =>
        Assert.IsType<Placement.Nothing>(Place(new Row([new RowCell(Track.Share(), new NoBlock())]), 100, 100));
}
