using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Tests.Fakes;
using static PaperFlock.Layout.Tests.Fakes.Make;

namespace PaperFlock.Layout.Tests.Tables;

public class TableTests
{
    private static readonly ImmutableArray<Track> TwoColumns = [Track.Fixed(40), Track.Share()];

    [Fact]
    public void Cells_have_a_usual_padding_and_stand_in_the_middle() => Expect.Blocks(
        new Table(TwoColumns, [], [Row(Cell("a", 10, 30), Cell("b", 10, 10)), Row(Cell("c", 10, 10), Cell("d", 10, 10))]) { Name = "table" }, 200, 100,
        """
        1 table 0 0 200 48
        1 a 4 2 10 30
        1 b 44 12 10 10
        1 c 4 36 10 10
        1 d 44 36 10 10
        """);

    [Theory]
    [InlineData(VerticalAlign.Top, 3)]
    [InlineData(VerticalAlign.Middle, 13)]
    [InlineData(VerticalAlign.Bottom, 23)]
    public void A_cell_may_have_its_own_padding_and_place(VerticalAlign align, double y) => Expect.Blocks(
        new Table([Track.Share()], [], [new TableRow([new TableCell(Solid("a", 10, 10), Align: align, Padding: new Edges(1, 3, 5, 7))], MinHeight: 40)]) { Name = "table" }, 200, 100,
        $"""
        1 table 0 0 200 40
        1 a 1 {y} 10 10
        """);

    [Fact]
    public void A_spanning_cell_has_the_width_of_its_columns() => Expect.Blocks(
        new Table([Track.Fixed(40), Track.Fixed(50), Track.Fixed(60)], [], [Row(new TableCell(new Box(Solid("a", 10, 10), default) { Name = "box" }, Span: 2), Cell("b", 10, 10))]) { Name = "table" }, 200, 100,
        """
        1 table 0 0 150 14
        1 box 4 2 82 10
        1 a 4 2 10 10
        1 b 94 2 10 10
        """);

    [Fact]
    public void The_head_is_repeated_and_rows_stay_whole() => Expect.Blocks(
        new Table([Track.Share()], [Row(Cell("head", 10, 6))], [Row(Cell("a", 10, 36)), Row(Cell("b", 10, 36)), Row(Cell("c", 10, 46)), Row(Cell("d", 10, 6))]), 100, 100,
        """
        1 head 4 2 10 6
        1 a 4 12 10 36
        1 b 4 52 10 36
        2 head 4 2 10 6
        2 c 4 12 10 46
        2 d 4 62 10 6
        """);

    // Rows once were torn across pages, and their neighbours printed twice.
    [Fact]
    public void A_row_whose_cell_could_split_moves_whole_and_once() => Expect.Blocks(
        new Table(TwoColumns, [], [Row(Cell("a", 10, 66), Cell("b", 10, 6)), Row(new TableCell(Flow("f", 10, 60)), Cell("c", 10, 6))]), 100, 100,
        """
        1 a 4 2 10 66
        1 b 44 32 10 6
        2 f 4 2 10 60
        2 c 44 29 10 6
        """);

    [Fact]
    public void A_head_is_never_left_without_a_row() => Expect.Blocks(
        Stack(0, Solid("x", 10, 70), new Table([Track.Share()], [Row(Cell("head", 10, 6))], [Row(Cell("a", 10, 17)), Row(Cell("b", 10, 6))])), 100, 100,
        """
        1 x 0 0 10 70
        2 head 4 2 10 6
        2 a 4 12 10 17
        2 b 4 33 10 6
        """);

    [Fact]
    public void A_head_without_any_body_stands_alone() => Expect.Blocks(
        new Table([Track.Share()], [Row(Cell("head", 10, 6))], []), 100, 100, "1 head 4 2 10 6");

    [Fact]
    public void Without_rows_it_is_nothing() => Assert.IsType<Placement.Nothing>(Place(new Table([Track.Share()], [], []), 100, 100));

    [Fact]
    public void A_row_kept_with_its_next_is_never_last_on_a_page() => Expect.Blocks(
        new Table([Track.Share()], [], [Row(Cell("a", 10, 46)), Row(Cell("month", 10, 6)) with { KeepWithNext = true }, Row(Cell("week", 10, 6)) with { KeepWithNext = true }, Row(Cell("b", 10, 36))]), 100, 100,
        """
        1 a 4 2 10 46
        2 month 4 2 10 6
        2 week 4 12 10 6
        2 b 4 22 10 36
        """);

    [Fact]
    public void A_table_whose_first_rows_keep_together_moves_as_one() => Expect.Blocks(
        Stack(0, Solid("x", 10, 60), new Table([Track.Share()], [], [Row(Cell("month", 10, 6)) with { KeepWithNext = true }, Row(Cell("a", 10, 36))])), 100, 100,
        """
        1 x 0 0 10 60
        2 month 4 2 10 6
        2 a 4 12 10 36
        """);

    [Fact]
    public void Rows_that_all_keep_with_their_next_part_where_the_page_is_full() => Expect.Blocks(
        new Table([Track.Share()], [], [.. Enumerable.Range(1, 5).Select(n => Row(Cell($"r{n}", 10, 36)) with { KeepWithNext = true })]), 100, 100,
        """
        1 r1 4 2 10 36
        1 r2 4 42 10 36
        2 r3 4 2 10 36
        2 r4 4 42 10 36
        3 r5 4 2 10 36
        """);

    [Fact]
    public void A_page_spares_rows_so_that_none_stands_alone_on_the_last() => Expect.Blocks(
        new Table([Track.Share()], [], [.. Enumerable.Range(1, 6).Select(n => Row(Cell($"r{n}", 10, 16)))], LeastCarried: 2), 100, 100,
        """
        1 r1 4 2 10 16
        1 r2 4 22 10 16
        1 r3 4 42 10 16
        1 r4 4 62 10 16
        2 r5 4 2 10 16
        2 r6 4 22 10 16
        """);

    [Fact]
    public void A_page_that_would_itself_be_left_too_few_spares_none() => Expect.Blocks(
        new Table([Track.Share()], [], [.. Enumerable.Range(1, 4).Select(n => Row(Cell($"r{n}", 10, 26)))], LeastCarried: 3), 100, 100,
        """
        1 r1 4 2 10 26
        1 r2 4 32 10 26
        1 r3 4 62 10 26
        2 r4 4 2 10 26
        """);

    [Fact]
    public void The_last_row_has_nothing_to_keep_with() => Expect.Blocks(
        new Table([Track.Share()], [], [Row(Cell("a", 10, 6)) with { KeepWithNext = true }]), 100, 100, "1 a 4 2 10 6");

    [Theory]
    [InlineData(false, "jobs > row 3 > column 2 > note > f: needs 120.0 pt, has 84.0 pt")]
    [InlineData(true, "jobs > Bramble > column 2 > note > f: needs 120.0 pt, has 84.0 pt")]
    public void A_row_higher_than_a_page_is_named(bool named, string complaint)
    {
        var tall = new TableRow([Cell("c", 10, 6), new TableCell(Stack(0, new KeepTogether(new Row([new RowCell(Track.Share(), Flow("f", 10, 120))]))) with { Name = "note" })], Name: named ? "Bramble" : null);
        var table = new Table(TwoColumns, [Row(Cell("head", 10, 8), new TableCell(null))], [Row(Cell("a", 10, 6), new TableCell(null)), Row(Cell("b", 10, 6), new TableCell(null)), tall]) { Name = "jobs" };

        Assert.Equal(complaint, Complaint(table, 100, 100));
    }

    [Theory]
    [InlineData(10, 120, "table > row 1: needs 120.0 pt, has 90.0 pt")]
    [InlineData(120, 0, "table > head row 1: needs 120.0 pt, has 100.0 pt")]
    [InlineData(98, 0, "table > row 1: needs 4.0 pt, has 2.0 pt")]
    public void A_least_height_no_page_has_is_refused(double head, double row, string complaint) => Assert.Equal(
        complaint,
        Complaint(new Table([Track.Share()], [new TableRow([new TableCell(null)], head)], [new TableRow([new TableCell(null)], row)]) { Name = "table" }, 100, 100));

    [Fact]
    public void Columns_wider_than_the_page_are_refused() =>
        Assert.Equal("table: needs 130.0 pt of width, has 100.0 pt", Complaint(new Table([Track.Fixed(130)], [], [Row(Cell("a", 1, 1))]) { Name = "table" }, 100, 100));

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void A_row_that_does_not_cover_the_columns_is_a_mistake_of_ours(int span) =>
        Assert.Throws<InvalidOperationException>(() => Paged(new Table(TwoColumns, [], [Row(new TableCell(null, Span: span))]), 100, 100));

    [Theory]
    [InlineData(60, 1)]
    [InlineData(80, 2)]
    [InlineData(400, 2)]
    public void A_cell_that_needs_space_counts_what_the_rows_above_it_take(double needs, int page) => Expect.Blocks(
        new Table([Track.Share()], [Row(Cell("head", 10, 6))], [Row(Cell("a", 10, 11)), Row(new TableCell(new NeedSpace(Solid("b", 10, 6), needs)))]), 100, 100,
        page == 1
            ? """
            1 head 4 2 10 6
            1 a 4 12 10 11
            1 b 4 27 10 6
            """
            : """
            1 head 4 2 10 6
            1 a 4 12 10 11
            2 head 4 2 10 6
            2 b 4 12 10 6
            """);

    [Fact]
    public void A_page_break_before_a_table_on_a_fresh_page_changes_nothing() => Expect.Blocks(
        Stack(0, new PageBreak(), new Table([Track.Share()], [], [Row(Cell("a", 10, 6))])), 100, 100, "1 a 4 2 10 6");

    // A long table once took time that grew with the square of its rows.
    [Fact]
    public void Three_thousand_rows_are_planned_once_each_and_once_more_at_page_ends()
    {
        var head = new SolidBlock(10, 6);
        var blocks = Enumerable.Range(1, 3000).Select(_ => new SolidBlock(10, 26)).ToArray();

        var pages = Paged(new Table([Track.Share()], [Row(new TableCell(head))], [.. blocks.Select(block => Row(new TableCell(block)))]), 100, 100);

        Assert.Equal(1000, pages.Length);
        Assert.Equal(1000, head.Placed);
        Assert.Equal(3000 + 999, blocks.Sum(block => block.Placed));
        Assert.All(blocks, block => Assert.InRange(block.Placed, 1, 2));
    }

    private static TableRow Row(params ImmutableArray<TableCell> cells) => new(cells);

    private static TableCell Cell(string name, double width, double height) => new(Solid(name, width, height));
}
