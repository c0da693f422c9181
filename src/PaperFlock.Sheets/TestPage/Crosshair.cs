namespace PaperFlock.Sheets.TestPage;

/// <summary>
/// A mark on the front and one at the same spot of the back. The front's has a tick each millimetre; the back's is a ring, so that held to
/// the light the one can be read against the other.
/// </summary>
internal static class Crosshair
{
    /// <summary>Millimetres each arm reaches from the middle.</summary>
    public const double Arm = 8;

    /// <summary>
    /// Millimetres. A second pass by hand is 1 to 3 mm out (from memory: general experience of hand duplexing), and the cards allow for 3.
    /// </summary>
    public const double Ring = 3;

    /// <summary>Millimetres from each of the two edges that meet there.</summary>
    public const double FromCorner = 24;
    private const int LongTickEach = 5;

    /// <summary>The four corners and the middle. They are symmetrical both ways, so they meet whichever edge the paper turns on.</summary>
    public static IEnumerable<(double X, double Y)> Places(Size paper)
    {
        var inset = Mm(FromCorner);
        return
        [
            (inset, inset), (paper.Width - inset, inset),
            (paper.Width / 2, paper.Height / 2),
            (inset, paper.Height - inset), (paper.Width - inset, paper.Height - inset),
        ];
    }

    public static IEnumerable<Item> On(PageSide side, (double X, double Y) middle) =>
        side == PageSide.Front ? Scale(middle.X, middle.Y) : Target(middle.X, middle.Y);

    private static IEnumerable<Item> Scale(double x, double y)
    {
        yield return new LineItem(x - Mm(Arm), y, x + Mm(Arm), y, Lines.Crop);
        yield return new LineItem(x, y - Mm(Arm), x, y + Mm(Arm), Lines.Crop);
        for (var mm = -(int)Arm; mm <= Arm; mm++)
        {
            var half = Mm(mm % LongTickEach == 0 ? 1.5 : 0.7);
            if (mm != 0)
            {
                yield return new LineItem(x + Mm(mm), y - half, x + Mm(mm), y + half, Lines.Crop);
                yield return new LineItem(x - half, y + Mm(mm), x + half, y + Mm(mm), Lines.Crop);
            }
        }
    }

    /// <summary>A cross with heavier lines than the front's, which show through paper.</summary>
    private static IEnumerable<Item> Target(double x, double y)
    {
        yield return new LineItem(x - Mm(Arm), y, x + Mm(Arm), y, Lines.Box);
        yield return new LineItem(x, y - Mm(Arm), x, y + Mm(Arm), Lines.Box);
        yield return new CircleItem(x, y, Mm(Ring), Lines.Box);
    }
}
