using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pieces;
using PaperFlock.Layout.Tests.Fakes;
using static PaperFlock.Layout.Tests.Fakes.Make;

namespace PaperFlock.Layout.Tests.Elements;

public class SmallElementTests
{
    [Theory]
    [InlineData(TextAlign.Left, null, 0, 0, 20)]
    [InlineData(TextAlign.Centre, null, 25, 0, 20)]
    [InlineData(TextAlign.Right, null, 50, 0, 20)]
    [InlineData(TextAlign.Right, VerticalAlign.Top, 50, 0, 100)]
    [InlineData(TextAlign.Right, VerticalAlign.Middle, 50, 40, 100)]
    [InlineData(TextAlign.Right, VerticalAlign.Bottom, 50, 80, 100)]
    public void Align_moves_and_never_resizes(TextAlign horizontal, VerticalAlign? vertical, double x, double y, double height) => Expect.Blocks(
        new Align(Solid("a", 50, 20), horizontal, vertical) { Name = "align" }, 100, 100,
        $"""
        1 align 0 0 100 {height}
        1 a {x} {y} 50 20
        """);

    [Fact]
    public void Align_splits_as_its_child_does() => Expect.Blocks(
        new Align(Flow("f", 50, 150), TextAlign.Right), 100, 100,
        """
        1 f 50 0 50 100
        2 f 50 0 50 50
        """);

    [Fact]
    public void Align_of_nothing_is_nothing() =>
        Assert.IsType<Placement.Nothing>(Place(new Align(new NoBlock(), Vertical: VerticalAlign.Middle), 100, 100));

    [Fact]
    public void A_rule_crosses_the_width_and_is_as_high_as_it_is_thick()
    {
        var piece = PieceOf(new Rule(2), 80);

        Assert.Equal(new Size(80, 2), piece.Size);
        Expect.Items(piece, "line 0 1 80 1 thick 2");
    }

    [Fact]
    public void A_rule_moves_on_when_there_is_no_room_for_its_thickness() =>
        Assert.Equal("needs 2.0 pt, has 1.5 pt", Assert.IsType<Placement.Wraps>(Place(new Rule(2), 80, 1.5, 100)).Reason);

    [Theory]
    [InlineData(30, 40, null)]
    [InlineData(51, 40, "needs 51.0 pt of width, has 50.0 pt")]
    [InlineData(30, 51, "needs 51.0 pt, has 50.0 pt")]
    public void A_picture_fits_at_its_size_or_wraps(double width, double height, string? reason)
    {
        var placement = Place(new Picture(new Size(width, height), [new CircleItem(5, 5, 3, 1)]), 50, 50);

        Assert.Equal(reason, (placement as Placement.Wraps)?.Reason);
        Assert.Equal(reason is null ? new Size(width, height) : null, (placement as Placement.Fits)?.Piece.Size);
    }

    [Theory]
    [InlineData(null, null, 80, 60)]
    [InlineData(30.0, null, 30, 60)]
    [InlineData(null, 40.0, 80, 40)]
    public void A_chart_is_drawn_for_the_size_it_gets(double? width, double? height, double expectedWidth, double expectedHeight)
    {
        var chart = new Chart(width, height, (size, measurer) =>
        [
            new RectItem(0, 0, size.Width, size.Height, 1),
            new TextItem(0, 10, "ewes", Ten, measurer.WidthOf("ewes", Ten)),
        ]);

        Expect.Items(PieceOf(chart, 80, 60),
            $"""
            rect 0 0 {expectedWidth} {expectedHeight} thick 1
            text 0 10 24 ewes
            """);
    }

    [Theory]
    [InlineData(90.0, 10.0, 60, "needs 90.0 pt of width, has 80.0 pt")]
    [InlineData(10.0, 70.0, 60, "needs 70.0 pt, has 60.0 pt")]
    [InlineData(null, null, 0, "needs 1.0 pt, has 0.0 pt")]
    public void A_chart_never_splits(double? width, double? height, double left, string reason) =>
        Assert.Equal(reason, Assert.IsType<Placement.Wraps>(Place(new Chart(width, height, (_, _) => []), 80, left, 60)).Reason);

    [Fact]
    public void What_is_over_content_gets_its_size_on_each_page() => Expect.Blocks(
        new Layers(Flow("f", 50, 150), new Align(Solid("over", 10, 10), TextAlign.Right, VerticalAlign.Bottom)) { Name = "layers" }, 100, 100,
        """
        1 layers 0 0 50 100
        1 f 0 0 50 100
        1 over 40 90 10 10
        2 layers 0 0 50 50
        2 f 0 0 50 50
        2 over 40 40 10 10
        """);

    [Fact]
    public void A_layer_larger_than_the_content_is_refused() => Assert.Equal(
        "layers > over: solid 60 wide in 50",
        Complaint(new Layers(Solid("a", 50, 20), Over: Solid("over", 60, 10)) { Name = "layers" }, 100, 100));

    [Fact]
    public void What_is_over_nothing_is_nothing() =>
        Assert.IsType<Placement.Nothing>(Place(new Layers(new NoBlock(), Solid("over", 10, 10)), 100, 100));

    [Theory]
    [InlineData(100, "large")]
    [InlineData(60, "small")]
    [InlineData(30, "two lines")]
    public void The_first_alternative_that_fits_whole_is_taken(double width, string name) => Assert.Equal(name, PieceOf(
        new FirstThatFits([Solid("large", 80, 30), Solid("small", 50, 20), Solid("two lines", 30, 40)]), width, 50).Name);

    [Fact]
    public void When_none_fits_whole_the_last_decides()
    {
        Expect.Blocks(new FirstThatFits([Solid("high", 50, 120), Flow("f", 50, 120)]), 100, 100,
            """
            1 f 0 0 50 100
            2 f 0 0 50 20
            """);
        Assert.Equal("name > b: solid 70 wide in 60", Complaint(new FirstThatFits([Solid("a", 80, 1), Solid("b", 70, 1)]) { Name = "name" }, 60, 60));
    }

    [Fact]
    public void Log_lines_fill_what_is_left_with_whole_rows()
    {
        var pages = Paged(Stack(0, Solid("a", 50, 35), new LogLines(20) { Name = "log" }), 80, 100);

        Expect.Blocks(pages,
            """
            1 a 0 0 50 35
            1 log 0 35 80 60
            """);
        Expect.Items(pages[0].Content,
            """
            line 0 54.75 80 54.75 thick 0.5
            line 0 74.75 80 74.75 thick 0.5
            line 0 94.75 80 94.75 thick 0.5
            """);
    }

    [Fact]
    public void Too_few_log_lines_move_to_the_next_page() => Expect.Blocks(
        Stack(0, Solid("a", 50, 45), new LogLines(20, AtLeast: 3) { Name = "log" }), 80, 100,
        """
        1 a 0 0 50 45
        2 log 0 0 80 100
        """);

    [Fact]
    public void Log_lines_that_need_none_and_find_no_room_are_nothing() =>
        Assert.IsType<Placement.Nothing>(new LogLines(110, AtLeast: 0).Place(new Space(80, 100, 100), new FakeMeasurer()));

    [Theory]
    [InlineData(60, 2, "log: needs 120.0 pt, has 100.0 pt")]
    [InlineData(110, 1, "log: needs 110.0 pt, has 100.0 pt")]
    public void Log_lines_that_no_page_can_hold_are_refused(double height, int atLeast, string complaint) =>
        Assert.Equal(complaint, Complaint(new LogLines(height, AtLeast: atLeast) { Name = "log" }, 80, 100));

    [Fact]
    public void A_grid_has_equal_cells_filled_row_by_row() => Expect.Blocks(
        new Grid(2, [Solid("a", 5, 5), Solid("b", 5, 5), Solid("c", 5, 5)], 20) { Name = "grid" }, 100, 100,
        """
        1 grid 0 0 100 40
        1 a 0 0 5 5
        1 b 50 0 5 5
        1 c 0 20 5 5
        """);

    [Theory]
    [InlineData(60.0, "grid: needs 120.0 pt, has 100.0 pt")]
    [InlineData(20.0, "grid > row 2 > column 1 > big: solid 30 high in 20")]
    public void A_grid_is_all_or_nothing(double cellHeight, string complaint) =>
        Assert.Equal(complaint, Complaint(new Grid(2, [Solid("a", 5, 5), Solid("b", 5, 5), Solid("big", 5, 30)], cellHeight) { Name = "grid" }, 100, 100));

    [Fact]
    public void A_board_has_its_children_at_their_places() => Expect.Blocks(
        new Board(new Size(100, 80), [new BoardPlace(5, 10, 40, 30, Solid("a", 20, 10)), new BoardPlace(50, 40, 50, 40, new Box(null, default) { Name = "card" })]) { Name = "board" }, 200, 100,
        """
        1 board 0 0 100 80
        1 a 5 10 20 10
        1 card 50 40 50 40
        """);

    [Theory]
    [InlineData(300, 80, 10, "board: needs 300.0 pt of width, has 200.0 pt")]
    [InlineData(100, 120, 10, "board: needs 120.0 pt, has 100.0 pt")]
    [InlineData(100, 80, 31, "board > card: needs 31.0 pt, has 30.0 pt")]
    public void A_board_never_splits_and_each_child_fits_its_place(double width, double height, double card, string complaint) => Assert.Equal(
        complaint,
        Complaint(new Board(new Size(width, height), [new BoardPlace(5, 10, 40, 30, Flow("card", 20, card))]) { Name = "board" }, 200, 100));

    [Fact]
    public void A_link_covers_its_child_on_every_page()
    {
        var pages = Paged(new Link(Flow("f", 50, 150), "there"), 100, 100);

        Expect.Items(pages[0].Content, "link 0 0 50 100 there");
        Expect.Items(pages[1].Content, "link 0 0 50 50 there");
        Assert.IsType<Placement.Nothing>(Place(new Link(new NoBlock(), "there"), 100, 100));
    }

    [Fact]
    public void A_chart_that_draws_within_its_size_lies_within_its_piece()
    {
        var chart = new Chart(null, null, (size, _) => [.. Enumerable.Range(0, 10).Select(i => new LineItem(size.Width * i / 9, 0, size.Width * i / 9, size.Height, 0.5))]);

        Assert.All(PieceOf(chart, 90, 50).Items.OfType<LineItem>(), line => Assert.InRange(line.X1, 0, 90));
    }
}
