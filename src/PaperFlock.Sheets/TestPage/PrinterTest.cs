namespace PaperFlock.Sheets.TestPage;

/// <summary>
/// One leaf that shows what a printer does to a page: its scale, how near the edge it can print, and whether the back falls behind
/// the front. It needs no flock, and is printed before the first pack is.
/// </summary>
public static class PrinterTest
{
    private const string Code = "TEST";

    /// <returns>A front and its back. Block goes to the edge of the paper on purpose: what a printer cannot reach is to be seen.</returns>
    /// <exception cref="SheetException">The words do not fit the paper.</exception>
    public static Sheet Compose(Paper paper, ITextMeasurer measurer)
    {
        var size = Papers.Of(paper);
        return new Sheet(
            new SheetDefinition("testpage", Code, SheetUse.Binder),
            Code,
            "Printer test page",
            [
                new SheetSide(Side(size, PageSide.Front, paper, measurer), $"{Code} 1 front", []),
                new SheetSide(Side(size, PageSide.Back, paper, measurer), $"{Code} 2 back", []),
            ]);
    }

    private static Page Side(Size size, PageSide side, Paper paper, ITextMeasurer measurer)
    {
        var ink = new TestInk(Code, measurer);
        ImmutableArray<Item> marks = [.. Crosshair.Places(size).SelectMany(point => Crosshair.On(side, point)), .. EdgeLadders.Around(size, ink), .. PunchHoles.On(size, side)];
        ink.Add(new PieceItem(0, 0, new Piece(size, marks).As(StructureTag.PrintersMark)));
        if (side == PageSide.Front)
        {
            TestFront.Draw(ink, size, paper);
        }
        else
        {
            TestBack.Draw(ink, size, paper);
        }

        return new Page(size, side, new PageNumber(side == PageSide.Front ? 1 : 2, 2, side), new Piece(size, ink.Items).As(StructureTag.Section));
    }
}
