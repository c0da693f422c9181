using PaperFlock.Flocks;
using PaperFlock.Layout.Pieces;
using PaperFlock.Sheets.Issues;
using PaperFlock.Sheets.Tests.WorstCases;

namespace PaperFlock.Sheets.Tests.Parts;

public sealed class ShedPlanTests
{
    private static readonly FlockText FourPens = new()
    {
        Pens = ["{name: A, length: 4 m, width: 3 m, trough: 5 m}", "{name: B, length: 3 m, width: 3 m}", "{name: C, length: 4 m, width: 2 m, trough: 3 m}", "{name: D, length: 2 m, width: 4 m, at: {right: 3 m, down: 2 m}}"],
        Ewes = FlockText.Many(17, n => $"scan: {n % 4}, weight: {60 + n} kg", n => $"Ewe{n}"),
    };

    public static TheoryData<string, string> Sheds => new()
    {
        { Composed.SampleText("hollin-bank"), "2026-11-25" },
        { FourPens.ToString(), "2026-12-20" },
    };

    [Theory]
    [MemberData(nameof(Sheds))]
    public void Pens_stand_clear_of_each_other_at_one_scale_with_every_housed_ewe_in_hers(string flock, string day)
    {
        var composed = Composed.Of(flock, NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value);
        var front = composed.Pack.Sheets.Single(s => s.Code == "HOUS").Sides[0].Page.Content;
        var drawn = PensOn(front, default).ToDictionary(p => p.Key.Id, p => p.Place);
        var pens = composed.Plan.Housing.Pens;

        Assert.Equal(pens.Select(p => p.Pen.Name).Order(), drawn.Keys.Order());
        Assert.Single(pens.SelectMany(p => new[] { drawn[p.Pen.Name].Width / (double)p.Pen.Length.Metres, drawn[p.Pen.Name].Height / (double)p.Pen.Width.Metres }).Select(s => Math.Round(s, 3)).Distinct());
        Assert.All(pens, p => Assert.All(pens.Where(o => o != p), o => Assert.False(Overlap(drawn[p.Pen.Name], drawn[o.Pen.Name]), $"{p.Pen.Name} and {o.Pen.Name}")));

        var words = front.Flatten().Items.OfType<TextItem>().ToArray();
        Assert.NotEmpty(pens.SelectMany(p => p.Ewes));
        Assert.All(pens.SelectMany(p => p.Ewes, (pen, ewe) => (pen.Pen, ewe)), housed =>
        {
            var stands = Assert.Single(words, w => w.Text == housed.ewe.CallName);
            Assert.Equal(housed.Pen.Name, Assert.Single(drawn, d => Holds(d.Value, stands)).Key);
        });
    }

    [Fact]
    public void Pens_without_a_place_stand_beyond_those_that_have_one()
    {
        var pens = Composed.PlanOf(FourPens.ToString(), new(2026, 12, 20)).Flock.Housing.Pens;
        Assert.Equal([(5, 0), (9, 0), (12, 0), (3, 2)], PenPlace.Of(pens).Select(p => ((int)p.Right, (int)p.Down)));
    }

    private static IEnumerable<(RowKey Key, Bounds Place)> PensOn(Piece piece, Transform transform) =>
        piece.About is RowKey { Kind: RowKind.Pen } key
            ? [(key, transform.Apply(new Bounds(0, 0, piece.Size.Width, piece.Size.Height)))]
            : piece.Items.OfType<PieceItem>().SelectMany(item => PensOn(item.Piece, transform.Of(item)));

    private static bool Overlap(Bounds a, Bounds b) => a.X + 0.01 < b.Right && b.X + 0.01 < a.Right && a.Y + 0.01 < b.Bottom && b.Y + 0.01 < a.Bottom;

    private static bool Holds(Bounds pen, TextItem words) =>
        pen.X <= words.X && words.X + words.Width <= pen.Right && pen.Y <= words.Baseline && words.Baseline <= pen.Bottom;
}
