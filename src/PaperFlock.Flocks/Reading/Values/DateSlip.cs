using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Guesses which day was meant by a date in another form, and says so when it could be two.</summary>
internal static class DateSlip
{
    private static readonly string[] Months =
    [
        "january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december",
    ];

    /// <returns>Null when no day can be made out.</returns>
    public static string? Advice(string text)
    {
        var parts = text.Split([' ', '/', '-', '.', ','], StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length == 1 && text.Length == 8 && text.All(char.IsAsciiDigit))
        {
            parts = [text[..4], text[4..6], text[6..]];
        }

        if (parts.Length != 3)
        {
            return null;
        }

        if (Day(parts[0], parts[1], parts[2]) is { } yearFirst && parts[0].Length == 4)
        {
            return $"write `{Iso(yearFirst)}`";
        }

        if (Month(parts[0]) is not null && Number(parts[0]) is null)
        {
            return Day(parts[2], parts[0], parts[1]) is { } monthFirst ? $"write `{Iso(monthFirst)}`" : null;
        }

        var british = Day(parts[2], parts[1], parts[0]);
        var american = Number(parts[1]) is null ? null : Day(parts[2], parts[0], parts[1]);
        return (british, american) switch
        {
            (null, null) => null,
            ({ } day, { } other) when day != other => $"write `{Iso(day)}` if you mean {Words(day)}, or `{Iso(other)}` if you mean {Words(other)}",
            _ => $"write `{Iso((british ?? american)!.Value)}`",
        };
    }

    private static LocalDate? Day(string year, string month, string day) =>
        Year(year) is { } y && Month(month) is { } m && Number(day) is { } d && d >= 1 && d <= CalendarSystem.Iso.GetDaysInMonth(y, m)
            ? new LocalDate(y, m, d)
            : null;

    private static int? Year(string text) => Number(text) switch
    {
        { } two when text.Length == 2 => 2000 + two,
        { } four when text.Length == 4 && four > 0 => four,
        _ => null,
    };

    private static int? Month(string text)
    {
        if (Number(text) is { } number)
        {
            return number is >= 1 and <= 12 ? number : null;
        }

        var at = text.Length < 3 ? -1 : Array.FindIndex(Months, m => m.StartsWith(text, StringComparison.OrdinalIgnoreCase));
        return at < 0 ? null : at + 1;
    }

    /// <summary>Figures, an ordinal's ending allowed.</summary>
    private static int? Number(string text)
    {
        var figures = text.EndsWith("st", StringComparison.OrdinalIgnoreCase) || text.EndsWith("nd", StringComparison.OrdinalIgnoreCase)
            || text.EndsWith("rd", StringComparison.OrdinalIgnoreCase) || text.EndsWith("th", StringComparison.OrdinalIgnoreCase)
            ? text[..^2]
            : text;
        return int.TryParse(figures, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
    }

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);

    private static string Words(LocalDate date) =>
        LocalDatePattern.CreateWithInvariantCulture("d MMMM").Format(date);
}
