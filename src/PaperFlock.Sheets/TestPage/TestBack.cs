namespace PaperFlock.Sheets.TestPage;

/// <summary>What to change when the test page is out.</summary>
internal static class TestBack
{
    public static void Draw(TestInk ink, Size size, Paper paper)
    {
        var (left, right) = (Mm(22), size.Width - Mm(22));
        var (inner, width) = (left, right - left);
        TestHead.Draw(ink, size, "If it is out", "2 back", left, right);

        // The middle is left clear for the crosses, and words behind the front's crosses would hide them.
        var middle = size.Height / 2;
        var clear = Mm(Crosshair.Arm + 2);
        ink.Put(Smaller.Of(style => Rows(Turning(paper), style)), inner, Mm(TestHead.Below), width, middle - clear - Mm(TestHead.Below));
        ink.Put(Smaller.Of(style => Rows(Feeding(), style)), inner, middle + clear, width, size.Height - middle - clear - Mm(Crosshair.FromCorner + Crosshair.Arm + 1));
    }

    private static ImmutableArray<(string Seen, string Change)> Turning(Paper paper) =>
    [
        ("The arrows point opposite ways", "In the print window choose \u201cflip on long edge\u201d. If it turns on the short edge all the same, write `duplex: short-edge` below `print:` in your flock file: the backs of the pack are then turned to suit."),
        ("This side is on another sheet", "The printer prints one side only, or was told to. Choose \u201cboth sides\u201d; if it cannot, write `duplex: single-sided` in your flock file."),
        ("A bar is not 100\u00a0mm", $"The scale is not 100 %. Choose \u201cactual size\u201d, take away \u201cfit\u201d, \u201cshrink\u201d and \u201cborderless\u201d, and see that the paper chosen is {paper}."),
    ];

    private static ImmutableArray<(string Seen, string Change)> Feeding() =>
    [
        ("A line marked 6, or 12 at the foot, is missing", "The printer cannot reach so far. Try another tray or the manual feed; else another printer."),
        ("All crosses out the same way", "The paper lies to one side in the tray. Push the guides up to it, or move it by as much as it is out, and print again."),
        ("Crosses out at one end only", "The paper goes in askew. Square the stack, fewer sheets, guides tight."),
        ("Out by more than 3\u00a0mm", "Do not print cards on both sides with this printer: print the fronts, and write on the backs."),
        ("A thin line is broken or pale", "Take away \u201cdraft\u201d, \u201ctoner saving\u201d and \u201ceconomy\u201d; clean the head, or change the cartridge."),
        ("Holes beside the circles", "Set the middle mark of the punch to the middle of the long edge. Punches differ in how deep they go: the pack keeps 20\u00a0mm free for them."),
    ];

    /// <summary>What is to be typed stands between backquotes and is set in the mono face.</summary>
    private static Text Keys(string words, TextStyle style) =>
        new([.. words.Split('`').Select((part, i) => i % 2 == 0 ? new Run(part, style) : new Run(part, Who.TagStyle with { Size = Math.Min(style.Size, Who.TagStyle.Size) }, Whole: true))], Leading: 1.2);

    private static Table Rows(ImmutableArray<(string Seen, string Change)> rows, TextStyle style) => new(
        [Track.Fixed(Mm(50)), Track.Share()],
        [Block.Heads("what you see", "what to change")],
        [.. rows.Select(r => new TableRow([Block.Cell(r.Seen, Block.Bold(style)), Block.Cell(Keys(r.Change, style))]))])
    { RowHeaders = true };
}
