using CsCheck;
using PaperFlock.Layout.Pieces;
using PaperFlock.Layout.Tests.Fakes;
using static PaperFlock.Layout.Tests.Fakes.Make;

namespace PaperFlock.Layout.Tests.Pieces;

public class FlattenTests
{
    /// <summary>One of everything on 100 by 40 points.</summary>
    private static readonly Piece Everything = new(new Size(100, 40),
    [
        new TextItem(10, 20, "ewe", Ten, 18),
        new LineItem(0, 0, 30, 10, 1),
        new RectItem(10, 5, 20, 30, 2),
        new PathItem([(0, 0), (10, 0), (10, 5)], true, 0),
        new CircleItem(50, 10, 4, 1),
        new LinkItem(60, 10, 20, 5, "there", "a link"),
        new AnchorItem(90, 30, "here"),
    ]);

    [Fact]
    public void A_piece_that_is_only_moved_keeps_its_text_upright() => Expect.Items(Nested(5, 7, 0),
        """
        text 15 27 18 ewe
        line 5 7 35 17 thick 1
        rect 15 12 20 30 thick 2
        path 5,7 15,7 15,12 closed thick 0
        circle 55 17 4 thick 1
        link 65 17 20 5 there
        anchor 95 37 here
        """);

    // The text's box is from 9 above the baseline to 2.5 below: 18 by 11.5 with its corner at 10, 11.
    [Fact]
    public void A_quarter_turn_clockwise_puts_the_top_on_the_right() => Expect.Items(Nested(0, 0, 1),
        """
        turned 17.5 10 by 1 ewe
        line 40 0 30 30 thick 1
        rect 5 10 30 20 thick 2
        path 40,0 40,10 35,10 closed thick 0
        circle 30 50 4 thick 1
        link 25 60 5 20 there
        anchor 10 90 here
        """);

    [Fact]
    public void A_half_turn_puts_the_top_at_the_bottom() => Expect.Items(Nested(0, 0, 2),
        """
        turned 72 17.5 by 2 ewe
        line 100 40 70 30 thick 1
        rect 70 5 20 30 thick 2
        path 100,40 90,40 90,35 closed thick 0
        circle 50 30 4 thick 1
        link 20 25 20 5 there
        anchor 10 10 here
        """);

    [Fact]
    public void A_quarter_turn_the_other_way_puts_the_top_on_the_left() => Expect.Items(Nested(0, 0, 3),
        """
        turned 11 72 by 3 ewe
        line 0 100 10 70 thick 1
        rect 5 70 30 20 thick 2
        path 0,100 0,90 5,90 closed thick 0
        circle 10 50 4 thick 1
        link 10 20 5 20 there
        anchor 30 10 here
        """);

    [Fact]
    public void Turns_within_turns_add_up()
    {
        var once = new Piece(new Size(40, 100), [new PieceItem(0, 0, Everything, 1)]);
        var back = new Piece(new Size(100, 40), [new PieceItem(0, 0, once, 3)]);

        Assert.Equal(Described(Everything), Described(back));
    }

    // Checked against the matrix of a turn by 90 degrees and System.Numerics, which knows nothing of ours.
    [Fact]
    public void A_point_lands_where_a_rotation_matrix_puts_it() =>
        Gen.Select(Gen.Double[0, 100], Gen.Double[0, 40], Gen.Int[0, 3]).Sample((x, y, turns) =>
        {
            var turn = System.Numerics.Complex.Pow(System.Numerics.Complex.ImaginaryOne, turns);
            System.Numerics.Complex[] corners = [0, 100, new(0, 40), new(100, 40)];
            var turned = corners.Select(corner => corner * turn).ToArray();
            var expected = (new System.Numerics.Complex(x, y) * turn) - new System.Numerics.Complex(turned.Min(c => c.Real), turned.Min(c => c.Imaginary));

            var anchor = new Piece(new Size(100, 40), [new AnchorItem(x, y, "")]);
            var found = (AnchorItem)new Piece(new Size(100, 100), [new PieceItem(0, 0, anchor, turns)]).Flatten().Items[0];

            Assert.Equal(expected.Real, found.X, 1e-9);
            Assert.Equal(expected.Imaginary, found.Y, 1e-9);
        }, iter: 1000);

    [Fact]
    public void Flattening_what_is_flat_changes_nothing()
    {
        var flat = Nested(5, 7, 1).Flatten();

        Assert.Equal(Described(flat), Described(flat.Flatten()));
    }

    private static Piece Nested(double x, double y, int turns) => new(new Size(200, 200), [new PieceItem(x, y, Everything, turns)]);

    // Paths and nested pieces compare by the array they hold, so by what they say instead.
    private static string Described(Piece piece) => string.Join('\n', piece.Flatten().Items.Select(item => item switch
    {
        PathItem path => string.Join(' ', path.Points),
        PieceItem nested => $"{nested.X} {nested.Y} {nested.QuarterTurns} {nested.Piece.Items[0]}",
        _ => item.ToString(),
    }));
}
