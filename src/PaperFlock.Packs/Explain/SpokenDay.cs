using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Packs.Explain;

/// <summary>A day as typed, or as it is printed on paper: "2026-12-27", "Sun 27 Dec", "27 December 2026".</summary>
internal static class SpokenDay
{
    /// <summary>A day without its year is looked for in the days that are planned.</summary>
    /// <returns>Empty when it is no day, or its weekday is another.</returns>
    public static ImmutableArray<LocalDate> Parse(string text, SeasonPlan plan)
    {
        var (weekday, day) = SplitWeekday(text);
        IEnumerable<LocalDate> days = WrittenDate.Read(day) is ({ } whole, { } same) && whole == same ? [whole]
            : WrittenDate.ReadWithoutYear(day) is (var number, { } month) ? InPlan(number, month, plan)
            : [];
        return [.. days.Where(d => weekday is null || d.DayOfWeek == weekday)];
    }

    /// <summary>Nothing but figures and what goes between them: meant as a date, however written.</summary>
    public static bool IsMeant(string text) =>
        text.Any(char.IsAsciiDigit) && text.AsSpan().ContainsAny('-', '/', '.') && text.All(c => char.IsAsciiDigit(c) || c is '-' or '/' or '.');

    private static IEnumerable<LocalDate> InPlan(int day, int month, SeasonPlan plan) =>
        Enumerable.Range(plan.From.Year, plan.To.Year - plan.From.Year + 1)
            .Where(year => day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month))
            .Select(year => new LocalDate(year, month, day))
            .Where(d => d >= plan.From && d <= plan.To);

    /// <summary>A weekday before a date, in full or by three letters or more, and the rest; no weekday where there is none.</summary>
    internal static (IsoDayOfWeek? Weekday, string Day) SplitWeekday(string text)
    {
        var parts = text.Split(' ', 2, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var word = parts.Length < 2 ? "" : parts[0].TrimEnd(',', '.');
        var day = Enum.GetValues<IsoDayOfWeek>().FirstOrDefault(d => d != IsoDayOfWeek.None && word.Length >= 3 && d.ToString().StartsWith(word, StringComparison.OrdinalIgnoreCase));
        return day == IsoDayOfWeek.None ? (null, text) : (day, parts[1]);
    }
}
