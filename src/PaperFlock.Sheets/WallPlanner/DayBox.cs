namespace PaperFlock.Sheets.WallPlanner;

/// <summary>A day to strike off: its number, a heavy box where something is to be done, hatched where a sitter is in charge.</summary>
internal static class DayBox
{
    /// <summary>Points from the edge of a day to the middle of its heavy box.</summary>
    private const double Inset = 1.5;

    public static Element Of(PlannerDay day, PlannerFormat format, double height) =>
        new Chart(null, height, (size, measurer) => Draw(day, format, size, measurer), Says(day));

    private static string Says(PlannerDay day) =>
        string.Join(", ", new[] { DateText.WeekdayNumber(day.Date), day.HasJob ? "something to do" : null, day.Away is null ? null : "a sitter is in charge" }.OfType<string>());

    private static ImmutableArray<Item> Draw(PlannerDay day, PlannerFormat format, Size size, ITextMeasurer measurer)
    {
        var items = ImmutableArray.CreateBuilder<Item>();
        var number = day.Date.Day.ToString(CultureInfo.InvariantCulture);
        var width = measurer.WidthOf(number, format.Near);
        var baseline = Mm(1.6) + TypeScale.CapitalOf(format.Near);
        items.Add(new TextItem((size.Width - width) / 2, baseline, number, format.Near, width));
        if (day.Away is not null)
        {
            // Lines run on from strip to strip, round the number.
            var (left, right, below) = (((size.Width - width) / 2) - 2, ((size.Width + width) / 2) + 2, baseline + 3);
            foreach (var strip in new[] { new Bounds(0, 0, left, size.Height), new Bounds(left, below, right - left, size.Height - below), new Bounds(right, 0, size.Width - right, size.Height) })
            {
                items.AddRange(Hatching(strip, size, format.Hatch));
            }
        }

        if (day.HasJob)
        {
            items.Add(new RectItem(Inset, Inset, size.Width - (2 * Inset), size.Height - (2 * Inset), Lines.Section));
        }

        return items.ToImmutable();
    }

    /// <summary>Lines that rise to the right at 45 degrees over a day, as far as they lie in a strip of it.</summary>
    private static IEnumerable<LineItem> Hatching(Bounds strip, Size day, double apart)
    {
        for (var sum = apart; sum < day.Width + day.Height; sum += apart)
        {
            var (from, to) = (Math.Max(strip.X, sum - strip.Bottom), Math.Min(strip.Right, sum - strip.Y));
            if (from < to)
            {
                yield return new LineItem(from, sum - from, to, sum - to, Lines.Grid);
            }
        }
    }
}
