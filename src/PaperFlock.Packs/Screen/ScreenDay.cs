using NodaTime.Text;
using PaperFlock.Flocks.Reading.Values;
using PaperFlock.Packs.Figures;

namespace PaperFlock.Packs.Screen;

/// <summary>Days as a screen and its fields have them.</summary>
public static class ScreenDay
{
    /// <summary>What somebody typed as a date: <c>day</c> (<c>iso</c> and <c>words</c>), or <c>either</c>, several such to choose from, or neither when it is no date, or has another weekday.</summary>
    /// <param name="today">What <c>today</c> and <c>yesterday</c> mean; a day without its year is the one nearest to it.</param>
    public static JsonObject Read(string typed, string today)
    {
        var days = Meant(typed.Trim(), Day(today)).Where(d => d.Year is >= ScreenText.FirstYear and <= ScreenText.LastYear).ToList();
        return days switch
        {
            [var day] => new JsonObject { ["day"] = Of(day) },
            [_, _, ..] => new JsonObject { ["either"] = Shown.List(days, Of) },
            _ => [],
        };
    }

    /// <returns>Why what was typed is no one day; null where it is.</returns>
    internal static string? WhyNone(string typed, JsonObject read) =>
        read["day"] is not null ? null
        : read["either"] is JsonArray either ? $"'{typed}' could be two days: {ScreenText.List(either.Select(d => d!["words"]!.GetValue<string>()), "or")}"
        : $"'{typed}' is no date: write it year first, such as 2026-11-05";

    /// <exception cref="PackRequestException">It is no day that can be planned for.</exception>
    internal static LocalDate Day(string iso) =>
        LocalDatePattern.Iso.Parse(iso) is { Success: true, Value: { Year: >= ScreenText.FirstYear and <= ScreenText.LastYear } day }
            ? day
            : throw new PackRequestException($"'{iso}' is no date: write it year first, such as 2026-11-25");

    internal static JsonObject Of(LocalDate day) => new() { ["iso"] = Shown.Date(day), ["words"] = ScreenText.Day(day) };

    private static IEnumerable<LocalDate> Meant(string typed, LocalDate today) => WrittenDate.Days(typed, today) is { IsEmpty: false } days
        ? days
        : WrittenDate.InYears(typed, today.Year - 1, today.Year + 1).OrderBy(d => Math.Abs(Period.DaysBetween(today, d))).Take(1);
}
