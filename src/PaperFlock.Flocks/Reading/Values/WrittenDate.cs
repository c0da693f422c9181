using System.Text.RegularExpressions;

namespace PaperFlock.Flocks.Reading.Values;

/// <summary>
/// Dates as people and spreadsheets write them: <c>10/8/26</c>, <c>Mon 10 Aug 2026</c>, <c>August 10, 2026</c>, <c>2026-08-10</c>. Every date
/// that is typed anywhere is read here; the flock file takes only the last form, and its advice comes from here.
/// </summary>
public static partial class WrittenDate
{
    private static readonly string[] Months = CultureInfo.InvariantCulture.DateTimeFormat.MonthNames;
    private static readonly string[] Ordinals = ["st", "nd", "rd", "th"];

    /// <summary>Every day that may be meant, the likeliest first: one where the text leaves no doubt, none where it is no date.</summary>
    /// <param name="today">What <c>today</c> and <c>yesterday</c> are counted from; null where they are no dates.</param>
    public static ImmutableArray<LocalDate> Days(string text, LocalDate? today = null)
    {
        if (today is { } now && text.ToUpperInvariant() is var word and ("TODAY" or "YESTERDAY"))
        {
            return [word == "TODAY" ? now : now.PlusDays(-1)];
        }

        var (dayFirst, monthFirst) = Read(text);
        // The usual way with the century left off: likelier than the day first, which people write with strokes.
        LocalDate? cutYear = YearCut().IsMatch(text.Trim()) ? Read($"20{text.Trim()}").DayFirst : null;
        return [.. new[] { cutYear, dayFirst, monthFirst }.OfType<LocalDate>().Distinct()];
    }

    /// <summary>Parts a text from the weekday before it.</summary>
    /// <returns>Null and the whole text where it begins with none.</returns>
    public static (IsoDayOfWeek? Weekday, string Day) SplitWeekday(string text)
    {
        var match = Weekday().Match(text);
        return match.Success
            ? (Enum.GetValues<IsoDayOfWeek>().First(d => d.ToString().StartsWith(match.Groups["first"].Value, StringComparison.OrdinalIgnoreCase)), text[match.Length..])
            : (null, text);
    }

    /// <summary>
    /// The day meant, read with the day before the month and the other way about. The two are the same where the text
    /// itself says which is which: the year first, or the month in letters. Two figures of a year are of this century.
    /// </summary>
    /// <returns>Null for a reading that makes no day, or another weekday than stands before it.</returns>
    public static (LocalDate? DayFirst, LocalDate? MonthFirst) Read(string text)
    {
        // A spreadsheet's date at midnight is that day.
        var (weekday, day) = SplitWeekday(Midnight().Replace(PastedMarks.AsTyped(text), ""));
        var (dayFirst, monthFirst) = ReadPlain(day);
        return (OnThat(dayFirst), OnThat(monthFirst));

        LocalDate? OnThat(LocalDate? date) => weekday is null || date?.DayOfWeek == weekday ? date : null;
    }

    private static (LocalDate? DayFirst, LocalDate? MonthFirst) ReadPlain(string text)
    {
        var parts = text.Split([' ', '/', '-', '.', ','], StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length == 1 && text.Length == 8 && text.All(char.IsAsciiDigit))
        {
            parts = [text[..4], text[4..6], text[6..]];
        }

        if (parts.Length != 3)
        {
            return (null, null);
        }

        if (parts[0].Length == 4 && Day(parts[0], parts[1], parts[2]) is { } yearFirst)
        {
            return (yearFirst, yearFirst);
        }

        if (Month(parts[0]) is not null && Number(parts[0]) is null)
        {
            var named = Day(parts[2], parts[0], parts[1]);
            return (named, named);
        }

        var dayFirst = Day(parts[2], parts[1], parts[0]);
        return (dayFirst, Number(parts[1]) is null ? dayFirst : Day(parts[2], parts[0], parts[1]));
    }

    /// <summary>A day of the month, with or without its month in letters: <c>14</c>, <c>14 feb</c>, <c>14th February</c>, <c>feb 14</c>, <c>14feb</c>.</summary>
    /// <returns>Null when it is neither.</returns>
    public static (int Day, int? Month)? ReadWithoutYear(string text)
    {
        var match = DayMonth().Match(text);
        var months = match.Groups["month"].Captures;
        var month = months.Count == 1 ? Month(months[0].Value) : null;
        return match.Success && (months.Count == 0 || month is not null) ? (int.Parse(match.Groups["day"].ValueSpan, CultureInfo.InvariantCulture), month) : null;
    }

    /// <summary>The days that a day and its month name in some years, on the weekday before them where there is one.</summary>
    /// <param name="last">Included.</param>
    /// <returns>None for a text that is no such day, or has no month.</returns>
    public static IEnumerable<LocalDate> InYears(string text, int first, int last)
    {
        var (weekday, rest) = SplitWeekday(text);
        return ReadWithoutYear(rest) is (var day and >= 1, { } month)
            ? Enumerable.Range(first, last - first + 1)
                .Where(year => day <= CalendarSystem.Iso.GetDaysInMonth(year, month))
                .Select(year => new LocalDate(year, month, day))
                .Where(d => weekday is null || d.DayOfWeek == weekday)
            : [];
    }

    /// <summary>The name of a month, or the beginning of one: three letters or more.</summary>
    public static bool IsMonth(string word) => Number(word) is null && Month(word) is not null;

    /// <summary>Whether the text may be the number by which a spreadsheet counts days: 36,526 is the first of 2000 and 73,415 the first of 2101.</summary>
    public static bool IsDayNumber(string text) => text is [>= '3' and <= '7', _, _, _, _] && text.All(char.IsAsciiDigit);

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
        var figures = Ordinals.Any(ending => text.EndsWith(ending, StringComparison.OrdinalIgnoreCase)) ? text[..^2] : text;
        return int.TryParse(figures, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
    }

    [GeneratedRegex("^[0-9]{2}-[0-9]{1,2}-[0-9]{1,2}$")]
    private static partial Regex YearCut();

    [GeneratedRegex("[T ]0?0:00(:00(\\.0+)?)?$")]
    private static partial Regex Midnight();

    [GeneratedRegex("^(?:(?<first>mon)|(?<first>tue)s?|(?<first>wed)(?:nes)?|(?<first>thu)(?:rs?)?|(?<first>fri)|(?<first>sat)(?:ur)?|(?<first>sun))(?:day)?[,.]? +", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Weekday();

    [GeneratedRegex(@"^\s*((?<month>[a-z]{3,})[ .,-]*)?(?<day>[0-9]{1,2})(st|nd|rd|th)?([ .,-]*(?<month>[a-z]{3,}))?[ .,-]*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex DayMonth();
}
