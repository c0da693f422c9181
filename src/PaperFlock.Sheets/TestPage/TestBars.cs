namespace PaperFlock.Sheets.TestPage;

/// <summary>Bars of 100 mm with a tick each 10 mm, one along each side of the paper, because a printer may stretch one way only.</summary>
internal static class TestBars
{
    public const int Length = 100;
    private const int Step = 10;
    private const double EndTick = 3;
    private const double Tick = 1.5;

    /// <param name="x">Left end, in points.</param>
    public static IEnumerable<LineItem> Across(double x, double y)
    {
        yield return new LineItem(x, y, x + Mm(Length), y, Lines.Box);
        for (var mm = 0; mm <= Length; mm += Step)
        {
            var half = Mm(mm is 0 or Length ? EndTick : Tick);
            yield return new LineItem(x + Mm(mm), y - half, x + Mm(mm), y + half, Lines.Grid);
        }
    }

    /// <param name="y">Upper end, in points.</param>
    public static IEnumerable<LineItem> Down(double x, double y) => Across(y, x).Select(line => new LineItem(line.Y1, line.X1, line.Y2, line.X2, line.Thickness));
}
