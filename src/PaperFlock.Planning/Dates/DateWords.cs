using PaperFlock.Planning.Text;

namespace PaperFlock.Planning.Dates;

internal static class DateWords
{
    /// <summary>Whole weeks as "3 weeks", anything else as "10 days".</summary>
    /// <param name="days">Not negative.</param>
    public static string Span(int days) =>
        days > 0 && days % 7 == 0 ? English.CountLoose(days / 7, "week", "weeks") : English.CountLoose(days, "day", "days");
}
