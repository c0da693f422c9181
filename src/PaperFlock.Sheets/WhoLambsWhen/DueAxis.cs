namespace PaperFlock.Sheets.WhoLambsWhen;

/// <summary>The days at the head of the chart: named where a week begins, by number between, or with a tick alone where a number has no room.</summary>
internal static class DueAxis
{
    public static readonly double Height = Mm(8);

    private const double Tick = 4;

    public static Element Of(DueDays days) => new Chart(
        null, Height, (size, measurer) => Draw(days, size, measurer), $"days from {DateText.Short(days.First)} to {DateText.Short(days.First.PlusDays(days.Count - 1))}");

    private static ImmutableArray<Item> Draw(DueDays days, Size size, ITextMeasurer measurer)
    {
        var items = ImmutableArray.CreateBuilder<Item>();
        var free = 0.0;
        foreach (var day in days.All)
        {
            var x = days.Left(day, size.Width);
            var words = DateText.Short(day);
            var width = measurer.WidthOf(words, TypeScale.Label);
            if (days.BeginsWeek(day) && x >= free && x + 3 + width <= size.Width)
            {
                items.Add(new TextItem(x + 3, size.Height - Tick - 4, words, TypeScale.Label, width));
                items.Add(new LineItem(x, 3, x, size.Height, Lines.Box));
                free = x + 3 + width + 4;
            }
            else if (x > 0)
            {
                items.Add(new LineItem(x, size.Height - Tick, x, size.Height, days.BeginsWeek(day) ? Lines.Box : Lines.Crop));
                var number = day.Day.ToString(CultureInfo.InvariantCulture);
                var wide = measurer.WidthOf(number, TypeScale.Label);
                if (x >= free && x + 3 + wide + 3 <= days.Left(day.PlusDays(1), size.Width))
                {
                    items.Add(new TextItem(x + 3, size.Height - Tick - 4, number, TypeScale.Label, wide));
                }
            }
        }

        return items.ToImmutable();
    }
}
