namespace PaperFlock.Sheets.WallPlanner;

/// <summary>
/// A day to strike off: its number top left, a heavy box when something is done, a band on top when a sitter has the pack,
/// and at the foot a hatched bar as high as the ewes expected, with a line from the 10 % to the 90 % figure.
/// </summary>
internal static class DayCell
{
    private const double Hatch = 4;
    private static readonly double Band = Mm(1.3);

    /// <summary>What a bar leaves of its row beside the height of the number: a sitter's band, and air above the number, below it and at the foot.</summary>
    public static readonly double AboveBar = Band + 11;

    /// <summary>Points from the edge of a day to the middle of its heavy box, and from there to what is in it.</summary>
    private const double BoxInset = 1.5;

    /// <summary>Points that a day leaves free at the foot of its row, for the line there.</summary>
    private const double Foot = 1;

    /// <param name="perEwe">Height of one ewe in the bar, in points.</param>
    public static Element Of(PlannerDay day, PlannerFormat format, LowRow row, double perEwe) =>
        new Chart(null, row.Height - Foot, (size, measurer) => Draw(day, format, row, size, measurer, perEwe), Says(day));

    /// <summary>The lowest row in which its number clears the band, the box and the line below.</summary>
    /// <param name="below">What the line below takes of the row, in points.</param>
    public static double LeastHeight(PlannerDay day, PlannerFormat format, double below)
    {
        var number = TypeScale.CapitalOf(format.NearBold) + (2 * LowRow.Clear);
        var band = day.SitterDay ? Band : 0;
        return day.HasJob ? band + number + (2 * BoxInset) + Lines.Section + Math.Max(Foot, below) : band + number + below;
    }

    /// <summary>Ewes to a tenth: a bar that differs by less looks the same.</summary>
    private static string Says(PlannerDay day)
    {
        List<string> says = [DateText.WeekdayNumber(day.Date)];
        if (day.HasJob)
        {
            says.Add("something to do");
        }

        if (day.SitterDay)
        {
            says.Add("sitter");
        }

        if (day.ExpectedEwes >= 0.05)
        {
            says.Add($"{day.ExpectedEwes:0.0} ewes expected ({day.Low} to {day.High})");
        }

        return string.Join(", ", says);
    }

    private static ImmutableArray<Item> Draw(PlannerDay day, PlannerFormat format, LowRow row, Size size, ITextMeasurer measurer, double perEwe)
    {
        var items = ImmutableArray.CreateBuilder<Item>();
        var style = day.Free ? format.NearBold : format.Near;
        var capital = measurer.MetricsOf(style).CapHeight;
        var number = day.Date.Day.ToString(CultureInfo.InvariantCulture);
        var top = day.SitterDay ? Band : 0;
        var tall = size.Height > capital * 2.6;
        var baseline = tall ? top + capital + 4.5 : InLowRow(day, row, top, capital);
        var width = measurer.WidthOf(number, style);

        // In a narrow column the heavy box would run through a number of two figures.
        items.Add(new TextItem(Math.Min(4, (size.Width - width) / 2), baseline, number, style, width));
        if (day.SitterDay)
        {
            items.Add(new RectItem(0, 0, size.Width, Band, 0));
        }

        if (day.ExpectedEwes > 0 && perEwe > 0 && tall)
        {
            Bar(items, day, size, perEwe);
        }

        if (day.HasJob)
        {
            items.Add(new RectItem(BoxInset, top + BoxInset, size.Width - (2 * BoxInset), size.Height - top - (2 * BoxInset), Lines.Section));
        }

        return items.ToImmutable();
    }

    /// <summary>Baseline of a number in the middle of its box, between the band above it and the line below, or level with the words beside it.</summary>
    private static double InLowRow(PlannerDay day, LowRow row, double top, double capital) => (day.HasJob, day.SitterDay) switch
    {
        (true, _) => (top + row.Height - Foot + capital) / 2,
        (_, true) => (top + row.Height - row.Below + capital) / 2,
        _ => ((row.Height + capital) / 2) - row.Lift,
    };

    private static void Bar(ImmutableArray<Item>.Builder items, PlannerDay day, Size size, double perEwe)
    {
        var floor = size.Height - (day.HasJob ? 4 : 1.5);
        var top = floor - (day.ExpectedEwes * perEwe);
        if (floor - top < 1)
        {
            return;
        }

        var left = size.Width * 0.42;
        var right = size.Width - (day.HasJob ? 6 : 4);
        items.Add(new RectItem(left, top, right - left, floor - top, Lines.Grid));
        for (var start = Hatch; start < right - left + floor - top; start += Hatch)
        {
            Stroke(items, left, right, top, floor, start);
        }

        if (day.High > 0)
        {
            var x = size.Width * 0.3;
            var (high, low) = (floor - (day.High * perEwe), floor - (day.Low * perEwe));
            items.Add(new LineItem(x, high, x, low, Lines.Box));
            items.Add(new LineItem(x - 2.5, high, x + 2.5, high, Lines.Box));
            items.Add(new LineItem(x - 2.5, low, x + 2.5, low, Lines.Box));
        }
    }

    /// <summary>One line of hatching at 45 degrees, cut to the bar.</summary>
    private static void Stroke(ImmutableArray<Item>.Builder items, double left, double right, double top, double floor, double start)
    {
        var (x1, y1) = left + start <= right ? (left + start, floor) : (right, floor - (left + start - right));
        var (x2, y2) = floor - start >= top ? (left, floor - start) : (left + (start - (floor - top)), top);
        if (y1 > top && x2 < right)
        {
            items.Add(new LineItem(x1, y1, x2, y2, Lines.Grid));
        }
    }
}
