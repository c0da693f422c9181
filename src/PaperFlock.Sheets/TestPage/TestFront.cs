namespace PaperFlock.Sheets.TestPage;

/// <summary>What to do with the test page, step by step, and what to measure and read.</summary>
internal static class TestFront
{
    private const double Margin = 34;

    /// <summary>Points there are for a line of words beside a bar.</summary>
    private static readonly double OneLine = Mm(6);

    public static void Draw(TestInk ink, Size size, Paper paper)
    {
        var (left, right) = (Mm(Margin), size.Width - Mm(22));
        var (middleX, middleY) = (size.Width / 2, size.Height / 2);
        TestHead.Draw(ink, size, "Printer test page", "1 front", left, right);
        ink.Put(Smaller.Of(style => Steps(paper, style)), left, Mm(TestHead.Below), right - left, middleY - Mm(Crosshair.Arm + 1 + TestHead.Below));

        // The bar down stands left of the words, in the margin that binding would take; the bar across below the middle cross.
        ink.Add(TestBars.Down(Mm(25), middleY - Mm(TestBars.Length / 2)));
        var measure = Smaller.Than(TypeScale.Label, style => Block.Text("must measure 100 mm", style, TextAlign.Centre, 1));
        ink.PutUpwards(measure, Mm(28.5), middleY - Mm(TestBars.Length / 2), Mm(TestBars.Length), OneLine);
        var bar = middleY + Mm(Crosshair.Arm + 6);
        ink.Add(TestBars.Across(middleX - Mm(TestBars.Length / 2), bar));
        ink.Put(measure, middleX - Mm(TestBars.Length / 2), bar + Mm(3.5), Mm(TestBars.Length), OneLine);

        var below = bar + Mm(12);
        Weights(ink, left, below);

        // Samples of type keep their size, so long words take lines of what the table below them can spare.
        var foot = size.Height - Mm(Crosshair.FromCorner + Crosshair.Arm + 1);
        var found = ink.HeightOf(Found(TypeScale.Label), right - left);
        var types = ink.Put(
            new FirstThatFits([Types(1.2, 2), Types(1.1, 1), Types(1, 0)]),
            left + Mm(58), below, right - left - Mm(58), foot - found - below - Mm(2));
        var top = below + Math.Max(Mm(36), types + Mm(2));
        ink.Put(Smaller.Than(TypeScale.Label, style => Found(style)), left, top, right - left, foot - top);
    }

    private static Column Steps(Paper paper, TextStyle style)
    {
        ImmutableArray<string> steps =
        [
            $"Print this file at actual size (100 %), never \u201cfit to page\u201d, on {paper} paper, on both sides, flip on long edge. Without a tray for both sides: print page 1, turn the sheet over like the leaf of a book, print page 2.",
            "Lay a ruler on both bars: each must measure 100 mm.",
            "At each edge find the ladder. The first rung that was printed says how many millimetres this printer cannot reach. All lines marked 6 must be there, and those marked 12 at the foot: a pack prints up to 6 mm from the edge and 12\u00a0mm from the foot.",
            $"Hold the sheet to the light, front towards you. Both arrows point the same way. At all five crosses, count the ticks from the middle of the cross to the middle of the ring: each is 1 mm. Inside the ring ({Millimetres(Crosshair.Ring)}) is good enough.",
            "Punch it: the holes must fall on two circles 80\u00a0mm apart, or three 108\u00a0mm apart.",
            "Turn over: the back says what to change if something is out.",
        ];
        return Block.Numbered(3, steps.Select(s => Block.Text(s, style)));
    }

    /// <summary>The lines forms are ruled with.</summary>
    private static void Weights(TestInk ink, double x, double y)
    {
        var head = ink.Put(Smaller.Than(TypeScale.LabelBold, style => Block.Text("Lines: all unbroken, no two alike", style)), x, y, Mm(54), Mm(10));
        var line = y + Math.Max(Mm(9), head + 9);
        foreach (var (weight, what) in new[] { (Lines.Grid, "grid"), (Lines.Box, "box"), (Lines.Section, "section") })
        {
            ink.Add(new LineItem(x, line, x + Mm(22), line, weight));
            var words = $"{weight.ToString("0.0", CultureInfo.InvariantCulture)} pt, {what}";
            ink.Put(Smaller.Than(TypeScale.Label, style => Block.Text(words, style, leading: 1)), x + Mm(25), line - 5, Mm(30), OneLine);
            line += Mm(6);
        }
    }

    /// <summary>The smallest types a pack uses, each on the words it is used for.</summary>
    /// <param name="spacing">Points between one and the next.</param>
    private static Column Types(double leading, double spacing)
    {
        var card = TypeScale.Control with { Size = 7.5 };
        return Block.Column(
            spacing,
            Block.Text("Type: every letter clear, 8 and B, 0 and O told apart", TypeScale.LabelBold, leading: leading),
            Block.Text("7.5 pt, foot of a card: 0123456789 8B 0O 1lI 5S", card, leading: leading),
            Block.Text("8.5 pt, foot of a page: 0123456789 8B 0O 1lI 5S", TypeScale.Control, leading: leading),
            Block.Text("10 pt, heads of columns: which ewe, what you saw", TypeScale.Label, leading: leading),
            Block.Text("ZZ 0123456 00108 tag in a list", Who.TagStyle, leading: leading),
            Block.Text("12 pt, running text, to be read by torchlight", TypeScale.Body, leading: leading));
    }

    /// <summary>Room for what was read off: a sheet like this is kept with the printer.</summary>
    private static Table Found(TextStyle style)
    {
        TableCell Box(string words, int span = 1) => new(Block.Text(words, style), span, VerticalAlign.Top);
        return new Table(
            [Track.Share(1.25), Track.Share(), Track.Share(), Track.Share()],
            [],
            [
                new TableRow([Box("cannot reach: head, mm"), Box("foot, mm"), Box("left, mm"), Box("right, mm")], Mm(11)),
                new TableRow([Box("back is out: up, mm"), Box("down, mm"), Box("to the left, mm"), Box("to the right, mm")], Mm(11)),
                new TableRow([Box("printer, tray", 2), Box("day, paper", 2)], Mm(11)),
            ]);
    }

    private static string Millimetres(double mm) => $"{mm.ToString("0", CultureInfo.InvariantCulture)}\u00a0mm";
}
