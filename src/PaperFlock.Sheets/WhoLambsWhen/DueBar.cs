namespace PaperFlock.Sheets.WhoLambsWhen;

/// <summary>A ewe's row of days: a box over those in which nine in ten would lamb, a diamond on the likeliest.</summary>
internal static class DueBar
{
    private const double BoxOfRow = 0.56;
    private const double DiamondOfRow = 0.34;

    public static Element Of(DueRow row, DueDays days, double height) => new Chart(null, height, (size, _) => Draw(row, days, size), Says(row.Window));

    /// <summary>A line through words.</summary>
    public static Element Strike() => new Chart(null, null, (size, _) => [new LineItem(0, size.Height / 2, size.Width, size.Height / 2, Lines.Box)]) { Tag = StructureTag.Decoration };

    private static string Says(DueWindow window) => $"likeliest {DateText.Short(window.Likely)}; 9 in 10 lamb from {DateText.Short(window.Earliest)} to {DateText.Short(window.Latest)}";

    private static ImmutableArray<Item> Draw(DueRow row, DueDays days, Size size)
    {
        var items = ImmutableArray.CreateBuilder<Item>();
        var (left, right) = (days.Left(row.Window.Earliest, size.Width), days.Left(row.Window.Latest.PlusDays(1), size.Width));
        var middle = size.Height / 2;
        var (top, bottom) = (middle - (size.Height * BoxOfRow / 2), middle + (size.Height * BoxOfRow / 2));

        // The box stays white within: lines between days pass above and below it.
        foreach (var day in days.All.Skip(1))
        {
            var x = days.Left(day, size.Width);
            var thickness = days.BeginsWeek(day) ? Lines.Box : Lines.Crop;
            var (to, on) = left - 0.1 < x && x < right + 0.1 ? (top, bottom) : (middle, middle);
            items.Add(new LineItem(x, 0, x, to, thickness));
            items.Add(new LineItem(x, on, x, size.Height, thickness));
        }

        items.Add(new RectItem(left, top, right - left, bottom - top, 1.4));
        var centre = (days.Left(row.Window.Likely, size.Width) + days.Left(row.Window.Likely.PlusDays(1), size.Width)) / 2;
        var reach = size.Height * DiamondOfRow;
        items.Add(new PathItem([(centre - reach, middle), (centre, middle - reach), (centre + reach, middle), (centre, middle + reach)], Closed: true, Thickness: 0));
        if (row.Ewe.Standing != Standing.ToLamb)
        {
            items.Add(new LineItem(0, middle, size.Width, middle, Lines.Box));
        }

        return items.ToImmutable();
    }
}
