using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pieces;
using PaperFlock.Layout.Structure;
using PaperFlock.Layout.Tests.Fakes;

namespace PaperFlock.Layout.Tests.Structure;

public sealed class TaggingTests
{
    private static readonly TextStyle Style = new(Face.Text, 10);

    [Fact]
    public void Each_element_is_what_it_usually_is_unless_it_is_told()
    {
        Assert.Equal(StructureTag.Paragraph, TagOf(new Text("Sorrel", Style)));
        Assert.Equal(StructureTag.Heading(2), TagOf(new Text("Sorrel", Style) with { Tag = StructureTag.Heading(2) }));
        Assert.Equal(StructureTag.Table, TagOf(new Table([Track.Share()], [], [new TableRow([new TableCell(null)], MinHeight: 10)])));
        Assert.Equal(StructureTag.Figure("a disc"), TagOf(new Chart(10, 10, (_, _) => [new CircleItem(5, 5, 5, 0)], "a disc")));
        Assert.Equal(StructureTag.Paragraph, TagOf(new Chart(10, 10, (_, _) => [])));
        Assert.Null(TagOf(new Picture(new Size(5, 5), [new CircleItem(2, 2, 2, 0)])));
        Assert.Null(TagOf(new Rule(1)));
        Assert.Null(TagOf(new Column([new Text("Sorrel", Style)])));
    }

    [Fact]
    public void What_splits_stays_one_thing_and_what_does_not_is_its_own()
    {
        var text = new Text(string.Join('\n', Enumerable.Range(1, 10)), Style);
        var first = Assert.IsType<Placement.Splits>(text.Offer(new Space(100, 50, 50), Measurer()));
        var second = Assert.IsType<Placement.Splits>(first.Rest.Offer(new Space(100, 50, 50), Measurer()));
        var third = Assert.IsType<Placement.Fits>(second.Rest.Offer(new Space(100, 50, 50), Measurer()));
        Assert.NotNull(first.Piece.TagId);
        Assert.Same(first.Piece.TagId, second.Piece.TagId);
        Assert.Same(first.Piece.TagId, third.Piece.TagId);
        Assert.Equal([StructureTag.Paragraph, StructureTag.Paragraph], [first.Piece.Tag, third.Piece.Tag]);

        var again = Assert.IsType<Placement.Splits>(text.Offer(new Space(100, 50, 50), Measurer()));
        Assert.NotSame(first.Piece.TagId, again.Piece.TagId);
        Assert.Null(Assert.IsType<Placement.Fits>(text.Offer(new Space(100, 500, 500), Measurer())).Piece.TagId);
    }

    [Fact]
    public void A_wrapper_that_is_tagged_keeps_what_it_wraps()
    {
        var placement = Assert.IsType<Placement.Fits>((new KeepTogether(new Text("Sorrel", Style)) { Tag = StructureTag.Section }).Offer(new Space(100, 50, 50), Measurer()));
        Assert.Equal(StructureTag.Section, placement.Piece.Tag);
        Assert.Equal(StructureTag.Paragraph, Assert.IsType<PieceItem>(Assert.Single(placement.Piece.Items)).Piece.Tag);
    }

    [Fact]
    public void A_flattened_piece_is_nothing()
    {
        var piece = new Piece(new Size(100, 100), [new TextItem(10, 20, "Sorrel", Style, 40)]).As(StructureTag.Section);
        Assert.Null(piece.Flatten().Tag);
    }

    [Fact]
    public void A_heading_is_of_one_of_six_levels()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StructureTag.Heading(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => StructureTag.Heading(7));
    }

    private static StructureTag? TagOf(Element element) => Assert.IsType<Placement.Fits>(element.Offer(new Space(100, 100, 100), Measurer())).Piece.Tag;

    private static ITextMeasurer Measurer() => new FakeMeasurer();
}
