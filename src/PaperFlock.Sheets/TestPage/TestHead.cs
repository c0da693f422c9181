namespace PaperFlock.Sheets.TestPage;

/// <summary>Which side this is, and an arrow at its head: on a leaf turned on the long edge both arrows point the same way.</summary>
internal static class TestHead
{
    /// <summary>Millimetres from the head to the words below the heavy rule.</summary>
    public const double Below = 49;
    private const double ArrowTop = 8;
    private const double ArrowFoot = 24;

    /// <summary>Points in which any title stands on one line.</summary>
    private const double Plenty = 10_000;

    /// <param name="left">Left edge of the words, in points; they end at <paramref name="right"/>.</param>
    public static void Draw(TestInk ink, Size paper, string title, string side, double left, double right)
    {
        Arrow(ink, paper.Width / 2);
        var words = right - left - Mm(4);
        var (titleWidth, sideWidth) = (Math.Min(Mm(110), words * 0.7), Math.Min(Mm(50), words * 0.3));
        Put(title, left, titleWidth, TextAlign.Left, StructureTag.Heading(1));
        Put(side, right - sideWidth, sideWidth, TextAlign.Right, StructureTag.Paragraph);
        ink.Add(new LineItem(left, Mm(46.2), right, Mm(46.2), Lines.Section));

        // Set smaller they stand as low.
        void Put(string said, double x, double width, TextAlign align, StructureTag tag)
        {
            var element = Block.Largest(said, ink.Measurer, width, align, TypeScale.Title, TypeScale.SmallerTitle, TypeScale.Heading);
            var lower = ink.HeightOf(Block.Text(said, TypeScale.Title, leading: 1.1), Plenty) - ink.HeightOf(element, width);
            ink.Put(element with { Tag = tag }, x, Mm(34) + lower, width, Mm(12));
        }
    }

    private static void Arrow(TestInk ink, double middle)
    {
        ink.Add(
            new PathItem([(middle, Mm(ArrowTop)), (middle + Mm(5), Mm(ArrowTop + 8)), (middle - Mm(5), Mm(ArrowTop + 8))], Closed: true, 0),
            new LineItem(middle, Mm(ArrowTop + 7), middle, Mm(ArrowFoot), Lines.Section),
            ink.Centred("head of the page", TypeScale.Label, middle, Mm(ArrowFoot + 3)));
    }
}
