namespace PaperFlock.Sheets.WhoLambsWhen;

/// <summary>Below the chart, night by night: the most ewes to expect in nine nights of ten as a number, and in black how many are likely.</summary>
internal static class NightStrip
{
    private static readonly TextStyle Largest = TypeScale.LabelBold with { Size = 11 };
    private static readonly TextStyle Least = TypeScale.LabelBold with { Size = 9 };

    public static Element Of(DueDays days, LambingCurve curve, double height) => new Chart(
        null, height, (size, measurer) => Draw(days, curve, size, measurer), $"Most ewes to expect, in 9 nights of 10: {Says(days, curve)}");

    private static string Says(DueDays days, LambingCurve curve) =>
        string.Join(", ", days.All.Where((day, i) => i == 0 || Most(curve, day) != Most(curve, day.PlusDays(-1))).Select(day => $"from {DateText.Short(day)} {Most(curve, day)}"));

    private static int Most(LambingCurve curve, LocalDate day) => curve.On(day)?.P90 ?? 0;

    private static double Likely(LambingCurve curve, LocalDate day) => curve.On(day)?.ExpectedEwes ?? 0;

    private static ImmutableArray<Item> Draw(DueDays days, LambingCurve curve, Size size, ITextMeasurer measurer)
    {
        var items = ImmutableArray.CreateBuilder<Item>();
        var night = size.Width / days.Count;
        var widest = days.All.Max(day => measurer.WidthOf(Number(curve, day), Largest)) + 1;
        var style = widest <= night ? Largest : Least;
        var below = TypeScale.CapitalOf(style) + 6;
        var perEwe = (size.Height - below) / Math.Max(0.5, days.All.Max(day => Likely(curve, day)));
        var free = 0.0;
        foreach (var day in days.All)
        {
            var x = days.Left(day, size.Width);
            var words = Number(curve, day);
            var width = measurer.WidthOf(words, style);
            var at = x + ((night - width) / 2);

            // Where nights are narrower than numbers, some have theirs from the night before.
            if (words.Length > 0 && at >= free && at + width <= size.Width)
            {
                items.Add(new TextItem(at, below - 3, words, style, width));
                free = at + width + 0.6;
            }

            var tall = Likely(curve, day) * perEwe;
            if (tall > 0.2)
            {
                items.Add(new RectItem(x + 0.4, size.Height - tall, night - 0.8, tall, 0));
            }
        }

        items.Add(new LineItem(0, size.Height, size.Width, size.Height, Lines.Grid));
        return items.ToImmutable();
    }

    private static string Number(LambingCurve curve, LocalDate day) => Most(curve, day) is > 0 and var most ? most.ToString(CultureInfo.InvariantCulture) : "";
}
