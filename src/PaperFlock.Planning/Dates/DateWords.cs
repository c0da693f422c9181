using NodaTime;
using NodaTime.Text;

namespace PaperFlock.Planning.Dates;

/// <summary>Dates and spans of days as a shepherd says them.</summary>
internal static class DateWords
{
    private static readonly LocalDatePattern DayPattern = LocalDatePattern.CreateWithInvariantCulture("ddd d MMM");

    /// <summary>Such as "Fri 14 Aug". A season is under a year long on paper, so the year is left off.</summary>
    public static string Day(LocalDate day) => DayPattern.Format(day);

    /// <summary>Whole weeks as "3 weeks", anything else as "10 days".</summary>
    /// <param name="days">Not negative.</param>
    public static string Span(int days) =>
        days > 0 && days % 7 == 0 ? Count(days / 7, "week") : Count(days, "day");

    /// <summary>"1 ewe", "3 ewes".</summary>
    public static string Count(int number, string noun) => number == 1 ? $"1 {noun}" : $"{number} {noun}s";
}
