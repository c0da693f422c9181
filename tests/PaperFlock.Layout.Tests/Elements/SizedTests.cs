using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Tests.Fakes;
using static PaperFlock.Layout.Tests.Fakes.Make;

namespace PaperFlock.Layout.Tests.Elements;

public class SizedTests
{
    public static TheoryData<string, Sized, double, double> Sizes => new()
    {
        { "exact both", new Sized(Solid("a", 10, 20), 30, 40), 30, 40 },
        { "exact width", new Sized(Solid("a", 10, 20), Width: 30), 30, 20 },
        { "exact height", new Sized(Solid("a", 10, 20), Height: 40), 10, 40 },
        { "least, and the child is less", new Sized(Solid("a", 10, 20), MinWidth: 30), 30, 20 },
        { "least, and the child is more", new Sized(Solid("a", 10, 20), MinWidth: 5), 10, 20 },
        { "empty paper", new Sized(null, 30, 40), 30, 40 },
        { "a gap", new Sized(null, Height: 12), 0, 12 },
        { "a child with nothing to show", new Sized(Words(""), 30, 40), 30, 40 },
    };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void It_has_the_size_it_is_held_to(string why, Sized sized, double width, double height) =>
        Assert.True(PieceOf(sized).Size == new Size(width, height), why);

    [Theory]
    [InlineData(120, 10, "sized: needs 120.0 pt of width, has 95.0 pt")]
    [InlineData(10, 120, "sized: needs 120.0 pt, has 95.0 pt")]
    public void What_does_not_fit_says_both_numbers(double width, double height, string complaint) =>
        Assert.Equal(complaint, Complaint(new Sized(null, width, height) { Name = "sized" }, 95, 95));

    [Fact]
    public void A_child_too_high_for_an_exact_height_is_refused_with_its_own_height() =>
        Assert.Equal("label > note: needs 50.0 pt, has 30.0 pt", Complaint(new Sized(Lines("n", 4) with { Name = "note" }, Height: 30) { Name = "label" }, 100, 100));

    [Fact]
    public void Without_an_exact_height_the_child_splits() => Expect.Blocks(
        new Sized(Flow("f", 50, 150), MinWidth: 20) { Name = "sized" }, 100, 100,
        """
        1 sized 0 0 50 100
        1 f 0 0 50 100
        2 sized 0 0 50 50
        2 f 0 0 50 50
        """);

    [Fact]
    public void With_no_size_and_nothing_to_show_it_is_nothing() =>
        Assert.IsType<Placement.Nothing>(Place(new Sized(new NoBlock()), 100, 100));
}
