using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Tests.Fakes;
using static PaperFlock.Layout.Tests.Fakes.Make;

namespace PaperFlock.Layout.Tests.Tables;

/// <summary>Three columns of 30 pt and rows of 20 pt.</summary>
public class TableRuleTests
{
    private static readonly ImmutableArray<Track> Columns = [Track.Fixed(30), Track.Fixed(30), Track.Fixed(30)];
    private static readonly TableCell Blank = new(null);
    private static readonly TableRow Plain = new([Blank, Blank, Blank], 20);

    [Fact]
    public void Each_boundary_is_one_line_and_the_frame_lies_inside() => Expect.Items(
        PieceOf(new Table(Columns, [Plain], [Plain, Plain], HeadRule: 1)),
        """
        line 0 20 90 20 thick 1
        line 0 40 90 40 thick 0.5
        line 30 0 30 60 thick 0.5
        line 60 0 60 60 thick 0.5
        rect 0.5 0.5 89 59 thick 1
        """);

    [Fact]
    public void No_line_goes_through_a_spanning_cell() => Expect.Items(
        PieceOf(new Table(Columns, [], [Plain, new TableRow([new TableCell(null, Span: 2), Blank], 20), Plain, new TableRow([new TableCell(null, Span: 3)], 20)])),
        """
        line 0 20 90 20 thick 0.5
        line 0 40 90 40 thick 0.5
        line 0 60 90 60 thick 0.5
        line 30 0 30 20 thick 0.5
        line 30 40 30 60 thick 0.5
        line 60 0 60 60 thick 0.5
        rect 0.5 0.5 89 79 thick 1
        """);

    [Fact]
    public void A_row_may_have_its_own_line_above() => Expect.Items(
        PieceOf(new Table([Track.Fixed(30)], [], [One(), One(1.5), One(0), One()])),
        """
        line 0 20 30 20 thick 1.5
        line 0 60 30 60 thick 0.5
        rect 0.5 0.5 29 79 thick 1
        """);

    [Theory]
    [InlineData(1, 2, 2)]
    [InlineData(3, 2, 3)]
    [InlineData(3, 0, 3)]
    public void Under_the_head_the_thicker_line_wins(double headRule, double above, double expected) => Expect.Items(
        PieceOf(new Table([Track.Fixed(30)], [One()], [One(above)], HeadRule: headRule)), $"line 0 20 30 20 thick {expected}\nrect 0.5 0.5 29 39 thick 1");

    [Fact]
    public void Each_page_s_part_is_closed_with_the_frame()
    {
        var pages = Paged(new Table([Track.Fixed(30)], [One()], [One(), One(), One()]), 90, 60);

        Expect.Items(pages[0].Content,
            """
            line 0 20 30 20 thick 1
            line 0 40 30 40 thick 0.5
            rect 0.5 0.5 29 59 thick 1
            """);
        Expect.Items(pages[1].Content,
            """
            line 0 20 30 20 thick 1
            rect 0.5 0.5 29 39 thick 1
            """);
    }

    [Fact]
    public void A_big_table_has_few_lines()
    {
        var row = new TableRow([.. Enumerable.Repeat(Blank, 10)], 10);
        var table = new Table([.. Enumerable.Repeat(Track.Share(), 10)], [row], [.. Enumerable.Repeat(row, 49)]);

        // 49 boundaries between 50 rows, 9 between 10 columns, and the frame.
        Assert.Equal(49 + 9 + 1, PieceOf(table).Flatten().Items.Length);
    }

    private static TableRow One(double? above = null) => new([Blank], 20, above);
}
