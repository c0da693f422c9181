using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Tests.Fakes;
using static PaperFlock.Layout.Tests.Fakes.Make;

namespace PaperFlock.Layout.Tests.Elements;

public class ColumnTests
{
    [Fact]
    public void Children_stand_one_under_another_with_spacing_between() => Expect.Blocks(
        Stack(10, Solid("a", 100, 50), Solid("b", 80, 20), Solid("c", 60, 10)) with { Name = "column" }, 200, 300,
        """
        1 column 0 0 100 100
        1 a 0 0 100 50
        1 b 0 60 80 20
        1 c 0 90 60 10
        """);

    // A document library's users met an item of no height that still pushed the next one down.
    [Fact]
    public void A_child_without_height_gets_no_spacing_before_or_after() => Expect.Blocks(
        Stack(10, Solid("none", 50, 0), Solid("a", 50, 20), Solid("flat", 50, 0), new NoBlock(), Solid("b", 50, 20)), 100, 100,
        """
        1 none 0 0 50 0
        1 a 0 0 50 20
        1 flat 0 20 50 0
        1 b 0 30 50 20
        """);

    [Fact]
    public void It_splits_before_a_child_that_does_not_fit_what_is_left() => Expect.Blocks(
        Stack(10, Solid("a", 50, 60), Solid("b", 50, 31), Solid("c", 50, 10)), 100, 100,
        """
        1 a 0 0 50 60
        2 b 0 0 50 31
        2 c 0 41 50 10
        """);

    [Fact]
    public void A_child_that_exactly_fills_the_page_stays_on_it() => Expect.Blocks(
        Stack(10, Solid("a", 50, 60), Solid("b", 50, 30)), 100, 100,
        """
        1 a 0 0 50 60
        1 b 0 70 50 30
        """);

    [Theory]
    [InlineData(30.009, 1)]
    [InlineData(30.011, 2)]
    public void A_hundredth_of_a_point_is_rounding(double height, int pages) =>
        Assert.Equal(pages, Paged(Stack(10, Solid("a", 50, 60), Solid("b", 50, height)), 100, 100).Length);

    [Fact]
    public void It_splits_inside_a_child_that_splits() => Expect.Blocks(
        Stack(10, Solid("a", 50, 60), Flow("f", 40, 150), Solid("b", 50, 20)), 100, 100,
        """
        1 a 0 0 50 60
        1 f 0 70 40 30
        2 f 0 0 40 100
        3 f 0 0 40 20
        3 b 0 30 50 20
        """);

    // Space that went negative once gave an element a height below zero.
    [Fact]
    public void Spacing_that_does_not_fit_offers_the_next_child_nothing_rather_than_less() => Expect.Blocks(
        Stack(20, Solid("a", 50, 90), Flow("f", 50, 30)), 100, 100,
        """
        1 a 0 0 50 90
        2 f 0 0 50 30
        """);

    [Fact]
    public void A_child_without_height_after_a_full_page_stays_on_it() => Expect.Blocks(
        Stack(20, Solid("a", 50, 95), Solid("flat", 50, 0)), 100, 100,
        """
        1 a 0 0 50 95
        1 flat 0 95 50 0
        """);

    [Fact]
    public void What_takes_no_room_goes_with_the_child_it_stands_before() => Expect.Blocks(
        Stack(0, Solid("first", 50, 80), Stack(0, Solid("flat", 0, 0), Solid("a", 50, 40))), 100, 100,
        """
        1 first 0 0 50 80
        2 flat 0 0 0 0
        2 a 0 0 50 40
        """);

    [Fact]
    public void A_child_no_page_can_hold_is_named_by_its_path_and_both_heights()
    {
        var body = Stack(0, Solid("a", 50, 20), Stack(0, new Picture(new Size(0, 120), []) { Name = "photo" }) with { Name = "card Bramble" }) with { Name = "cards" };

        Assert.Equal("cards > card Bramble > photo: needs 120.0 pt, has 95.0 pt", Complaint(body, 100, 95));
    }

    [Fact]
    public void With_nothing_to_show_it_is_nothing() =>
        Assert.IsType<Placement.Nothing>(Place(Stack(10, new NoBlock(), Words("")), 100, 100));

    [Fact]
    public void A_thousand_children_are_placed_once_each_and_once_more_at_page_ends()
    {
        var blocks = Enumerable.Range(1, 1000).Select(n => new SolidBlock(50, 30)).ToArray();

        var pages = Paged(new Column([.. blocks]), 100, 100);

        Assert.Equal(334, pages.Length);
        Assert.Equal(1000 + 333, blocks.Sum(block => block.Placed));
    }

    [Fact]
    public void A_break_starts_a_fresh_page() => Expect.Blocks(
        Stack(10, Solid("a", 50, 20), new PageBreak(), Solid("b", 50, 20)), 100, 100,
        """
        1 a 0 0 50 20
        2 b 0 0 50 20
        """);

    // A break that was skipped while drawing but not while measuring once looped for ever.
    [Fact]
    public void A_break_on_a_fresh_page_does_nothing() => Expect.Blocks(
        Stack(10, new PageBreak(), Solid("none", 50, 0), new PageBreak(), Solid("a", 50, 20), new PageBreak(), new PageBreak(), Solid("b", 50, 100), new PageBreak(), Solid("c", 50, 5)), 100, 100,
        """
        1 none 0 0 50 0
        1 a 0 0 50 20
        2 b 0 0 50 100
        3 c 0 0 50 5
        """);

    [Fact]
    public void A_break_at_the_end_makes_no_page() => Expect.Blocks(
        Stack(10, Solid("a", 50, 20), Stack(5, Solid("b", 50, 20), new PageBreak()), new NoBlock()), 100, 100,
        """
        1 a 0 0 50 20
        1 b 0 30 50 20
        """);

    [Fact]
    public void A_break_deep_inside_breaks_the_page_for_all_that_follows() => Expect.Blocks(
        Stack(10, Solid("a", 50, 20), Stack(5, Solid("b", 50, 20), Stack(0, new PageBreak())), Solid("c", 50, 20)), 100, 100,
        """
        1 a 0 0 50 20
        1 b 0 30 50 20
        2 c 0 0 50 20
        """);

    [Fact]
    public void A_break_at_the_start_of_a_nested_column_breaks_before_it() => Expect.Blocks(
        Stack(10, Solid("a", 50, 20), Stack(5, new PageBreak(), Solid("b", 50, 20)), Solid("c", 50, 20)), 100, 100,
        """
        1 a 0 0 50 20
        2 b 0 0 50 20
        2 c 0 30 50 20
        """);

    [Fact]
    public void A_child_that_gets_nowhere_on_a_fresh_page_is_our_mistake_and_is_named()
    {
        var stuck = new ScriptedBlock((space, self) => new Placement.Splits(new PaperFlock.Layout.Pieces.Piece(default, []), self with { })) { Name = "stuck" };

        var error = Assert.Throws<InvalidOperationException>(() => Paged(Stack(0, new Box(stuck, Edges.All(5))), 100, 100));

        Assert.Contains("ScriptedBlock “stuck” made no progress", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rest_that_is_the_whole_again_is_our_mistake()
    {
        var stuck = new ScriptedBlock((space, self) => new Placement.Splits(new PaperFlock.Layout.Pieces.Piece(new Size(10, 10), []), self)) { Name = "stuck" };

        Assert.Throws<InvalidOperationException>(() => Paged(stuck, 100, 100));
    }

    [Fact]
    public void A_child_that_takes_more_than_it_was_offered_is_our_mistake_and_is_named()
    {
        var greedy = new ScriptedBlock((space, self) => new Placement.Fits(new PaperFlock.Layout.Pieces.Piece(new Size(10, space.Height + 1), []))) { Name = "greedy" };

        var error = Assert.Throws<InvalidOperationException>(() => Paged(greedy, 100, 100));

        Assert.Equal("ScriptedBlock “greedy” took 10.0 pt by 101.0 pt of 100.0 pt by 100.0 pt", error.Message);
    }

    [Fact]
    public void A_body_with_nothing_to_show_still_makes_a_page()
    {
        var page = Assert.Single(Paged(new NoBlock(), 100, 100));

        Assert.Equal(new PageNumber(1, 1, PageSide.Front), page.Number);
    }
}
