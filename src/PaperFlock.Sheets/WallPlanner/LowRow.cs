namespace PaperFlock.Sheets.WallPlanner;

/// <summary>
/// A row hardly higher than one line of words. All that stands in it is lifted off its middle alike, as far as the tails of its letters need to
/// clear the line below.
/// </summary>
/// <param name="Height">Of the row, in points.</param>
/// <param name="Below">What the line below takes of it.</param>
/// <param name="Lift">Points; 0 where there is room.</param>
internal readonly record struct LowRow(double Height, double Below, double Lift)
{
    /// <summary>Points of white between letters and lines.</summary>
    public const double Clear = 0.4;

    public static LowRow Of(double height, TextStyle style, double below) =>
        new(height, below, Math.Max(0, Tail(style) + Clear + below - ((height - TypeScale.CapitalOf(style)) / 2)));

    /// <summary>The lowest there may be: its letters clear the lines above and below.</summary>
    public static double Least(TextStyle style, double above, double below)
    {
        var capital = TypeScale.CapitalOf(style);
        return Math.Max((capital * 1.5) + 1, (style.Size * (TypeScale.AscenderOfEm + TypeScale.TailOfEm)) + above + below + (2 * Clear));
    }

    /// <summary>One line of words. It gives up height above itself, so that the room kept below it makes the row no higher.</summary>
    public Text Line(string words, TextStyle style, TextAlign align) => Block.Text(words, style, align, 1 - (2 * Lift / style.Size));

    /// <summary>Padding that keeps the lift free below the line in a cell set to the middle.</summary>
    public Edges Padding(double across = 0) => new(across, 0, across, 2 * Lift);

    private static double Tail(TextStyle style) => style.Size * TypeScale.TailOfEm;
}
