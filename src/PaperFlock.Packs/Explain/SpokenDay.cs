using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using PaperFlock.Planning;

namespace PaperFlock.Packs.Explain;

/// <summary>A day as typed, or as it is printed on paper: "2026-12-27", "Sun 27 Dec", "27 December 2026".</summary>
internal static class SpokenDay
{
    private static readonly ImmutableArray<LocalDatePattern> Whole = Patterns("uuuu-MM-dd", "d MMM uuuu", "d MMMM uuuu");
    private static readonly ImmutableArray<LocalDatePattern> WithoutYear = Patterns("d MMM", "d MMMM");

    /// <summary>A day without its year is looked for in the days that are planned.</summary>
    /// <returns>Empty when it is no day, or its weekday is another.</returns>
    public static ImmutableArray<LocalDate> Parse(string text, SeasonPlan plan)
    {
        var (weekday, day) = SplitWeekday(text);
        if (Match(Whole, day) is { } date)
        {
            return weekday is null || date.DayOfWeek == weekday ? [date] : [];
        }

        return Match(WithoutYear, day) is { } yearless
            ? [.. InPlan(yearless, plan).Where(d => weekday is null || d.DayOfWeek == weekday)]
            : [];
    }

    /// <summary>Nothing but figures and what goes between them: meant as a date, however written.</summary>
    public static bool IsMeant(string text) =>
        text.Any(char.IsAsciiDigit) && text.AsSpan().ContainsAny('-', '/', '.') && text.All(c => char.IsAsciiDigit(c) || c is '-' or '/' or '.');

    private static IEnumerable<LocalDate> InPlan(LocalDate yearless, SeasonPlan plan) =>
        Enumerable.Range(plan.From.Year, plan.To.Year - plan.From.Year + 1)
            .Where(year => yearless.Day <= CalendarSystem.Iso.GetDaysInMonth(year, yearless.Month))
            .Select(year => new LocalDate(year, yearless.Month, yearless.Day))
            .Where(d => d >= plan.From && d <= plan.To);

    private static (IsoDayOfWeek? Weekday, string Day) SplitWeekday(string text)
    {
        var first = text.Split(' ', 2, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (first.Length < 2 || first[0].TrimEnd(',', '.') is not { Length: >= 3 } word)
        {
            return (null, text);
        }

        foreach (var day in Enum.GetValues<IsoDayOfWeek>().Where(d => d != IsoDayOfWeek.None))
        {
            if (day.ToString().StartsWith(word, StringComparison.OrdinalIgnoreCase))
            {
                return (day, first[1]);
            }
        }

        return (null, text);
    }

    private static LocalDate? Match(ImmutableArray<LocalDatePattern> patterns, string text)
    {
        foreach (var pattern in patterns)
        {
            if (pattern.Parse(text) is { Success: true } parsed)
            {
                return parsed.Value;
            }
        }

        return null;
    }

    private static ImmutableArray<LocalDatePattern> Patterns(params ReadOnlySpan<string> texts)
    {
        var patterns = ImmutableArray.CreateBuilder<LocalDatePattern>();
        foreach (var text in texts)
        {
            // A leap year, so that 29 February is a day where the year is not said.
            patterns.Add(LocalDatePattern.CreateWithInvariantCulture(text).WithTemplateValue(new LocalDate(2000, 1, 1)));
        }

        return patterns.ToImmutable();
    }
}
