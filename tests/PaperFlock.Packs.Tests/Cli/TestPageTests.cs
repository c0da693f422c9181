using PaperFlock.Cli;
using PaperFlock.Flocks;
using PaperFlock.Layout.Pieces;
using PaperFlock.Pdf;
using PaperFlock.Sheets.TestPage;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>The leaf that shows what a printer does to a page.</summary>
public sealed class TestPageTests
{
    [Theory]
    [InlineData("", "testpage-A4.pdf", 595, 842)]
    [InlineData("--paper A4", "testpage-A4.pdf", 595, 842)]
    [InlineData("--paper letter", "testpage-Letter.pdf", 612, 792)]
    public void It_needs_no_flock_file_and_is_one_leaf_for_both_sides(string options, string file, double width, double height)
    {
        using var bench = new Workbench();
        var outcome = bench.Run(["testpage", .. options.Split(' ', StringSplitOptions.RemoveEmptyEntries)]);
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        Assert.StartsWith($"wrote {file}: 2 pages on 1 sheet of ", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("on both sides, flip on long edge", outcome.Out, StringComparison.Ordinal);
        Assert.Equal([file], bench.Everything());
        using var pdf = new PackPdf(bench.PathOf(file));
        Assert.Equal("DuplexFlipLongEdge", pdf.Duplex);
        Assert.Equal(2, pdf.Pages);
        Assert.All(pdf.AllPages, p => Assert.Equal((width, height), (p.MediaBox.Bounds.Width, p.MediaBox.Bounds.Height)));
        Assert.Contains("1 front", pdf.Texts[0], StringComparison.Ordinal);
        Assert.Contains("2 back", pdf.Texts[1], StringComparison.Ordinal);
        Assert.Contains("actual size", pdf.Texts[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("testpage --paper A5", "there is no paper 'A5'; there are A4 and Letter")]
    [InlineData("testpage flock.yaml", "'flock.yaml' is one thing too many: testpage wants no file")]
    [InlineData("testpage --papr A4", "no option '--papr'; did you mean '--paper'?")]
    public void A_wrong_command_line_is_status_2(string args, string complaint)
    {
        using var bench = new Workbench();
        var outcome = bench.Run(args.Split(' '));
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains(complaint, outcome.Error, StringComparison.Ordinal);
        Assert.Empty(bench.Everything());
    }

    [Fact]
    public void It_goes_where_it_is_told_and_not_over_a_file()
    {
        using var bench = new Workbench();
        bench.Run("testpage", "--out", "new/folder");
        Assert.Contains("new/folder/testpage-A4.pdf", bench.Everything());
        bench.Write("taken", "a file");
        Assert.Equal(ExitStatus.WrongUse, bench.Run("testpage", "--out", "taken").Status);
    }

    public static TheoryData<Paper> Papers => [Paper.A4, Paper.Letter];

    /// <summary>The ends of the bars, the millimetres from the edges, and the crosses, measured on the pieces the PDF is painted from.</summary>
    [Theory]
    [MemberData(nameof(Papers))]
    public void Bars_are_100_mm_both_ways_and_rungs_stand_6_and_12_mm_from_every_edge(Paper paper)
    {
        var sheet = PrinterTest.Compose(paper, FontLibrary.Measurer);
        foreach (var side in sheet.Sides)
        {
            var (width, height) = (side.Page.Paper.Width, side.Page.Paper.Height);
            var lines = side.Page.Content.Flatten().Items.OfType<LineItem>().ToArray();
            foreach (var mm in new[] { 6.0, 12.0 })
            {
                Assert.Contains(lines, l => Level(l) && Is(Length(l), 10) && Is(l.Y1, mm));
                Assert.Contains(lines, l => Level(l) && Is(Length(l), 10) && Is(height - l.Y1, mm));
                Assert.Contains(lines, l => !Level(l) && Is(Length(l), 10) && Is(l.X1, mm));
                Assert.Contains(lines, l => !Level(l) && Is(Length(l), 10) && Is(width - l.X1, mm));
            }
        }

        var front = sheet.Sides[0].Page.Content.Flatten().Items.OfType<LineItem>().ToArray();
        Assert.Single(front, l => Level(l) && Is(Length(l), 100));
        Assert.Single(front, l => !Level(l) && Is(Length(l), 100));
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Crosses_and_holes_fall_behind_each_other_when_the_leaf_is_turned_on_its_long_edge(Paper paper)
    {
        var sheet = PrinterTest.Compose(paper, FontLibrary.Measurer);
        var width = sheet.Paper.Width;
        var (front, back) = (Items(0), Items(1));
        // The arms of a cross are 8 mm each way.
        var crosses = Middles(front, x => x);
        Assert.Equal(5, crosses.Length);
        Assert.Equal(crosses, Middles(back, x => width - x));

        var rings = back.OfType<CircleItem>().Where(c => c.Thickness == 1).Select(c => (Math.Round(width - c.X, 3), Math.Round(c.Y, 3))).Order();
        Assert.Equal(crosses, rings);

        // ISO 838: two holes, centres 80 mm apart and 12 mm in, 6 mm across; three are 108 mm apart.
        var holes = front.OfType<CircleItem>().OrderBy(c => c.Y).ToArray();
        Assert.All(holes, c => Assert.True(Is(c.Radius, 3)));
        Assert.Equal(holes.Select(c => (Math.Round(c.X, 3), c.Y)), back.OfType<CircleItem>().Where(c => c.Thickness != 1).OrderBy(c => c.Y).Select(c => (Math.Round(width - c.X, 3), c.Y)));
        Assert.Equal([-108, -40, 0, 40, 108], holes.Select(c => Math.Round((c.Y - (sheet.Paper.Height / 2)) / PointsPerMillimetre, 3)));
        Assert.All([holes[1], holes[3]], c => Assert.True(Is(c.X, 12)));

        Item[] Items(int side) => [.. sheet.Sides[side].Page.Content.Flatten().Items];

        static (double, double)[] Middles(Item[] items, Func<double, double> seen) =>
        [
            .. items.OfType<LineItem>().Where(l => Level(l) && Is(Length(l), 16))
                .Where(l => items.OfType<LineItem>().Any(o => !Level(o) && Is(Length(o), 16) && Math.Abs(o.X1 - ((l.X1 + l.X2) / 2)) < 0.001 && Math.Abs(((o.Y1 + o.Y2) / 2) - l.Y1) < 0.001))
                .Select(l => (Math.Round(seen((l.X1 + l.X2) / 2), 3), Math.Round(l.Y1, 3))).Order(),
        ];
    }

    private static bool Level(LineItem line) => line.Y1 == line.Y2;

    private static double Length(LineItem line) => Math.Abs(line.X2 - line.X1) + Math.Abs(line.Y2 - line.Y1);

    private static bool Is(double points, double millimetres) => Math.Abs(points - Mm(millimetres)) < Mm(0.05);
}
