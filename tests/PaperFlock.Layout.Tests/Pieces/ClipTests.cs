using PaperFlock.Layout.Pieces;
using PaperFlock.Layout.Tests.Fakes;
using static PaperFlock.Layout.Tests.Fakes.Make;

namespace PaperFlock.Layout.Tests.Pieces;

/// <summary>A clip of 40 by 30 at 10, 20 in a piece of 100 by 100.</summary>
public class ClipTests
{
    public static TheoryData<string, Item, string> Cases => new()
    {
        { "text wholly inside", new TextItem(12, 40, "ewe", Ten, 18), "text 2 20 18 ewe" },
        { "text just inside on all sides", new TextItem(10, 29, "ewe ewe", Ten, 40), "text 0 9 40 ewe ewe" },
        { "text over the left edge", new TextItem(9, 40, "ewe", Ten, 18), "" },
        { "text over the right edge", new TextItem(33, 40, "ewe", Ten, 18), "" },
        { "text with its ascenders over the top", new TextItem(12, 28, "ewe", Ten, 18), "" },
        { "text with its descenders over the foot", new TextItem(12, 48, "ewe", Ten, 18), "" },
        { "turned text inside", Turned(20, 22, "ewe"), "turned 10 2 by 1 ewe" },
        { "turned text over the foot", Turned(20, 35, "ewe"), "" },
        { "page text inside", new PageTextItem(12, 40, 18, Ten, _ => ""), "page text 2 20 18" },
        { "page text outside", new PageTextItem(0, 40, 18, Ten, _ => ""), "" },
        { "a line across", new LineItem(0, 30, 100, 30, 1), "line 0 10 40 10 thick 1" },
        { "a line up", new LineItem(30, 100, 30, 0, 1), "line 20 30 20 0 thick 1" },
        { "a line aslant", new LineItem(0, 10, 100, 110, 1), "line 0 0 30 30 thick 1" },
        { "a line inside", new LineItem(12, 22, 14, 25, 1), "line 2 2 4 5 thick 1" },
        { "a line past a corner", new LineItem(0, 25, 25, 0, 1), "" },
        { "a line on the left edge", new LineItem(10, 0, 10, 100, 1), "line 0 0 0 30 thick 1" },
        { "a line on the right edge belongs to the next clip", new LineItem(50, 0, 50, 100, 1), "" },
        { "a line that ends at the edge", new LineItem(0, 30, 10, 30, 1), "" },
        { "an outline inside", new RectItem(12, 22, 10, 10, 2), "rect 2 2 10 10 thick 2" },
        { "an outline cut at a corner becomes two sides, the level one with the corner", new RectItem(0, 0, 30, 40, 2), "line 0 20 21 20 thick 2\nline 20 0 20 19 thick 2" },
        { "an outline all round", new RectItem(0, 0, 100, 100, 2), "" },
        { "a filled rectangle", new RectItem(0, 0, 30, 40, 0), "rect 0 0 20 20 thick 0" },
        { "a filled rectangle outside", new RectItem(0, 0, 10, 40, 0), "" },
        { "a triangle cut on the right", new PathItem([(40, 25), (60, 35), (40, 45)], true, 0), "path 30,5 40,10 40,20 30,25 closed thick 0" },
        { "a filled triangle outside", new PathItem([(60, 25), (70, 35), (60, 45)], true, 0), "" },
        { "a zigzag leaves and comes back", new PathItem([(40, 25), (60, 25), (60, 45), (40, 45), (20, 45)], false, 1), "path 30,5 40,5 thick 1\npath 40,25 30,25 10,25 thick 1" },
        { "a ring begun inside goes on where it ends", new PathItem([(40, 30), (60, 30), (60, 40), (40, 40)], true, 1), "path 40,20 30,20 30,10 40,10 thick 1" },
        { "a path inside", new PathItem([(12, 22), (14, 25)], false, 1), "path 2,2 4,5 thick 1" },
        { "a circle inside", new CircleItem(30, 30, 5, 1), "circle 20 10 5 thick 1" },
        { "a circle outside", new CircleItem(70, 70, 5, 1), "" },
        { "a link", new LinkItem(0, 0, 30, 40, "there", "a link"), "link 0 0 20 20 there" },
        { "a link outside", new LinkItem(60, 0, 30, 40, "there", "a link"), "" },
        { "an anchor inside", new AnchorItem(10, 20, "here"), "anchor 0 0 here" },
        { "an anchor in the next clip", new AnchorItem(50, 20, "here"), "" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void What_lies_in_the_clip_is_kept(string what, Item item, string expected)
    {
        Assert.NotEmpty(what);
        var clip = new Piece(new Size(100, 100), [item]).Clip(10, 20, 40, 30);

        Assert.Equal(new Size(40, 30), clip.Size);
        Expect.Items(clip, expected);
    }

    [Fact]
    public void What_stands_on_the_far_edge_of_the_piece_is_in_the_last_clip()
    {
        var piece = new Piece(new Size(100, 100), [new LineItem(100, 0, 100, 100, 1), new LineItem(0, 100, 100, 100, 1), new AnchorItem(100, 100, "here")]);

        Expect.Items(piece.Clip(50, 50, 50, 50),
            """
            line 50 0 50 50 thick 1
            line 0 50 50 50 thick 1
            anchor 50 50 here
            """);
    }

    [Fact]
    public void A_circle_that_is_cut_becomes_chords_close_to_it()
    {
        var piece = new Piece(new Size(100, 100), [new CircleItem(50, 50, 30, 1)]);

        // The right half: one path from the top round to the foot.
        var path = Assert.IsType<PathItem>(Assert.Single(piece.Clip(50, 0, 50, 100).Items));

        Assert.All(path.Points, point => Assert.Equal(30, Math.Sqrt((point.X * point.X) + ((point.Y - 50) * (point.Y - 50))), 3));
        Assert.Equal(33, path.Points.Length);
    }

    [Fact]
    public void A_disc_that_is_cut_keeps_its_area_to_a_fifth_of_a_per_cent()
    {
        var piece = new Piece(new Size(100, 100), [new CircleItem(50, 50, 30, 0)]);

        var area = Area(Assert.IsType<PathItem>(Assert.Single(piece.Clip(0, 0, 50, 100).Items)));

        Assert.InRange(area, Math.PI * 450 * 0.998, Math.PI * 450);
    }

    [Fact]
    public void Pieces_nested_and_turned_are_cut_where_they_stand()
    {
        var inner = new Piece(new Size(60, 10), [new LineItem(0, 5, 60, 5, 1)]);

        Expect.Items(new Piece(new Size(100, 100), [new PieceItem(20, 0, inner, 1)]).Clip(10, 20, 40, 30), "line 15 0 15 30 thick 1");
    }

    internal static double Area(PathItem path)
    {
        double twice = 0;
        for (var i = 0; i < path.Points.Length; i++)
        {
            var (a, b) = (path.Points[i], path.Points[(i + 1) % path.Points.Length]);
            twice += (a.X * b.Y) - (b.X * a.Y);
        }

        return Math.Abs(twice) / 2;
    }

    private static PieceItem Turned(double x, double y, string words)
    {
        var text = new TextItem(0, 9, words, Ten, 6 * words.Length);
        return new PieceItem(x, y, new Piece(new Size(text.Width, 11.5), [text]), 1);
    }
}
