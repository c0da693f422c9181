using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Packs.Explain;

/// <summary>A day as typed, or as it is printed on paper: "2026-12-27", "Sun 27 Dec", "27 December 2026".</summary>
internal static class SpokenDay
{
    /// <summary>A day without its year is looked for in the days that are planned.</summary>
    /// <returns>All that may be meant; empty when it is no day, or its weekday is another.</returns>
    public static ImmutableArray<LocalDate> Parse(string text, SeasonPlan plan) => WrittenDate.Days(text) is { IsEmpty: false } days
        ? days
        : [.. WrittenDate.InYears(text, plan.From.Year, plan.To.Year).Where(d => d >= plan.From && d <= plan.To)];

    /// <summary>Nothing but figures and what goes between them: meant as a date, however written.</summary>
    public static bool IsMeant(string text) =>
        text.Any(char.IsAsciiDigit) && text.AsSpan().ContainsAny('-', '/', '.') && text.All(c => char.IsAsciiDigit(c) || c is '-' or '/' or '.');
}
