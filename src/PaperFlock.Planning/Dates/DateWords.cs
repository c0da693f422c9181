using PaperFlock.Languages;

namespace PaperFlock.Planning.Dates;

internal static class DateWords
{
    /// <summary>Whole weeks as "3 weeks", anything else as "10 days".</summary>
    /// <param name="days">Not negative.</param>
    public static string Span(int days, Language language) =>
        days > 0 && days % 7 == 0 ? language.CountLoose(days / 7, "week", "weeks") : language.CountLoose(days, "day", "days");
}
