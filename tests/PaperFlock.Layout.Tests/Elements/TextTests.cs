using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Tests.Fakes;
using static PaperFlock.Layout.Tests.Fakes.Make;

namespace PaperFlock.Layout.Tests.Elements;

/// <summary>Lines are 12.5 pt high: letters of 10 pt with a half-leading of 1.25 pt above and below, so the first baseline is at 9.25.</summary>
public class TextTests
{
    [Fact]
    public void Baselines_are_evenly_spaced_within_and_between_paragraphs() => Expect.Texts(
        Paged(Stack(0, Words("one\ntwo"), Words("three")), 100, 100),
        """
        0 9.25 one
        0 21.75 two
        0 34.25 three
        """);

    [Fact]
    public void The_largest_type_on_a_line_sets_its_height() => Expect.Items(
        PieceOf(new Text([new Run("a ", Ten), new Run("B", new TextStyle(Face.Text, 20)), new Run("\nc", Ten)])),
        """
        text 0 18.5 12 a
        text 12 18.5 12 B
        text 0 34.25 6 c
        """);

    [Fact]
    public void Once_placed_it_is_what_it_was_and_made_into_another_it_is_placed_anew()
    {
        var text = Words("one two");
        var (same, right) = (text with { }, text with { Align = TextAlign.Right });
        Assert.Equal(18, PieceOf(text, 20).Size.Width, 6);

        Assert.Equal(same, text);
        Assert.Equal(same.GetHashCode(), text.GetHashCode());
        Assert.Equal(42, PieceOf(text, 100).Size.Width, 6);
        Assert.Equal(18, PieceOf(text, 20).Size.Width, 6);
        Assert.Equal(20, PieceOf(text with { Align = TextAlign.Right }, 20).Size.Width, 6);
        Assert.Equal(100, PieceOf(right, 100).Size.Width, 6);
    }

    [Fact]
    public void Leading_is_a_multiple_of_the_em() => Assert.Equal(new Size(18, 30), PieceOf(new Text("one\ntwo", Ten, leading: 1.5)).Size);

    [Theory]
    [InlineData(TextAlign.Left, 0, 0, 36)]
    [InlineData(TextAlign.Centre, 32, 41, 100)]
    [InlineData(TextAlign.Right, 64, 82, 100)]
    public void Lines_stand_left_centred_or_right(TextAlign align, double first, double second, double width)
    {
        var piece = PieceOf(Words("longer\none", align), 100);

        Assert.Equal(width, piece.Size.Width, 6);
        Expect.Items(piece,
            $"""
            text {first} 9.25 36 longer
            text {second} 21.75 18 one
            """);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData(" \n\t\r\n")]
    public void Without_words_it_is_nothing(string words) => Assert.IsType<Placement.Nothing>(Place(Words(words), 100, 100));

    // Lines left of the page, total lines, lines that stay: at least two on either side of a split.
    [Theory]
    [InlineData(5, 5, 5)]
    [InlineData(4, 5, 3)]
    [InlineData(3, 5, 3)]
    [InlineData(2, 5, 2)]
    [InlineData(1, 5, 0)]
    [InlineData(0, 5, 0)]
    [InlineData(3, 4, 2)]
    [InlineData(2, 4, 2)]
    [InlineData(2, 3, 0)]
    [InlineData(1, 2, 0)]
    [InlineData(1, 1, 1)]
    public void No_line_stands_alone_at_the_foot_or_the_head_of_a_page(int room, int lines, int stay)
    {
        var pages = Paged(Stack(0, Solid("a", 10, 125 - (12.5 * room)), Lines("l", lines)), 100, 125);

        Assert.Equal(stay, pages[0].Content.Texts().Count());
        Assert.Equal(lines - stay, pages.Skip(1).Sum(page => page.Content.Texts().Count()));
    }

    [Fact]
    public void A_page_too_low_for_the_rule_takes_what_it_can() => Expect.Texts(
        Paged(Lines("l", 3), 100, 13),
        """
        0 9.25 l1
        --
        0 9.25 l2
        --
        0 9.25 l3
        """);

    [Theory]
    [InlineData(2, 5, "needs 25.0 pt, has 20.0 pt")]
    [InlineData(3, 3, "needs 37.5 pt, has 20.0 pt")]
    public void What_does_not_fit_says_what_it_needs_here(int _, int lines, string reason) =>
        Assert.Equal(reason, Assert.IsType<Placement.Wraps>(Place(Lines("l", lines), 100, 20, full: 100)).Reason);

    [Fact]
    public void A_page_lower_than_a_line_is_refused() =>
        Assert.Equal("note: needs 12.5 pt, has 12.0 pt", Complaint(Lines("l", 3) with { Name = "note" }, 100, 12));

    [Fact]
    public void The_rest_is_the_same_lines_even_where_it_is_wider()
    {
        var first = Assert.IsType<Placement.Splits>(Place(Words("one two three four five six seven"), 60, 30));
        var rest = Assert.IsType<Placement.Fits>(first.Rest.Place(new Space(200, 100, 100), Measurer()));

        Assert.Equal(["one two", "three four"], first.Piece.Texts().Select(text => text.Text));
        Assert.Equal(["five six", "seven"], rest.Piece.Texts().Select(text => text.Text));
    }

    [Fact]
    public void A_rest_wider_than_its_next_page_says_so()
    {
        var first = Assert.IsType<Placement.Splits>(Place(Lines("line", 5), 60, 30));

        Assert.Equal("needs 30.0 pt of width, has 20.0 pt", Assert.IsType<Placement.Wraps>(first.Rest.Place(new Space(20, 100, 100), Measurer())).Reason);
    }

    [Fact]
    public void Parts_of_a_paragraph_are_equally_wide_in_a_frame() => Expect.Blocks(
        new Align(new Box(Words("one two three four five six seven"), default, 1) { Name = "box" }), 62, 40,
        """
        1 box 0 0 62 27
        2 box 0 0 50 27
        """);
}
