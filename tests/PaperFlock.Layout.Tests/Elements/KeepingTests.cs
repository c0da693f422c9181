using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Tests.Fakes;
using static PaperFlock.Layout.Tests.Fakes.Make;

namespace PaperFlock.Layout.Tests.Elements;

public class KeepingTests
{
    [Fact]
    public void What_is_kept_together_moves_to_a_fresh_page_whole() => Expect.Blocks(
        Stack(10, Solid("a", 50, 50), new KeepTogether(Flow("f", 50, 60)), Solid("b", 50, 20)), 100, 100,
        """
        1 a 0 0 50 50
        2 f 0 0 50 60
        2 b 0 70 50 20
        """);

    [Fact]
    public void What_fits_where_it_is_stays_there() => Expect.Blocks(
        Stack(10, Solid("a", 50, 30), new KeepTogether(Flow("f", 50, 60))), 100, 100,
        """
        1 a 0 0 50 30
        1 f 0 40 50 60
        """);

    [Fact]
    public void What_is_higher_than_a_page_splits_on_a_fresh_one() => Expect.Blocks(
        Stack(10, Solid("a", 50, 50), new KeepTogether(Flow("f", 50, 130)), Solid("b", 50, 20)), 100, 100,
        """
        1 a 0 0 50 50
        2 f 0 0 50 100
        3 f 0 0 50 30
        3 b 0 40 50 20
        """);

    [Fact]
    public void Space_that_is_needed_and_not_there_starts_a_page() => Expect.Blocks(
        Stack(0, Solid("a", 50, 61), new NeedSpace(Flow("f", 50, 60), 40)), 100, 100,
        """
        1 a 0 0 50 61
        2 f 0 0 50 60
        """);

    [Fact]
    public void Space_that_is_there_is_used_and_no_longer_needed_by_the_rest() => Expect.Blocks(
        Stack(0, Solid("a", 50, 60), new NeedSpace(Flow("f", 50, 60), 40)), 100, 100,
        """
        1 a 0 0 50 60
        1 f 0 60 50 40
        2 f 0 0 50 20
        """);

    [Fact]
    public void More_space_than_a_page_has_is_not_waited_for() => Expect.Blocks(
        Stack(0, Solid("a", 50, 10), new NeedSpace(Solid("b", 50, 20), 400)), 100, 100,
        """
        1 a 0 0 50 10
        2 b 0 0 50 20
        """);

    [Fact]
    public void Nothing_needs_no_space() =>
        Assert.IsType<Placement.Nothing>(Place(new NeedSpace(new NoBlock(), 40), 100, 10, full: 100));

    [Fact]
    public void A_heading_is_never_left_alone_at_the_foot() => Expect.Blocks(
        Stack(5, Solid("text", 50, 70), new NeedSpace(Stack(5, Solid("heading", 50, 12), Flow("f", 50, 60)), 40)), 100, 100,
        """
        1 text 0 0 50 70
        2 heading 0 0 50 12
        2 f 0 17 50 60
        """);

    [Fact]
    public void The_names_of_wrappers_stay_in_the_path_on_later_pages()
    {
        var body = new KeepTogether(new NeedSpace(new Link(Stack(0, Flow("f", 50, 150), Solid("big", 50, 101)), "x") { Name = "link" }, 10) { Name = "need" }) { Name = "keep" };

        Assert.Equal("keep > need > link > big: solid 101 high in 100", Complaint(body, 100, 100));
    }
}
