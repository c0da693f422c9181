using NodaTime.Text;

namespace PaperFlock.Flocks.Lists;

/// <summary>
/// The dates of one list. One person writes them all the same way, so a single date with a day after the twelfth tells how the
/// others are to be read; where none does, or two tell differently, a date that could be two is refused.
/// </summary>
internal sealed class ListDates
{
    private readonly bool? _isDayFirst;

    /// <param name="dates">Every date of the list.</param>
    public ListDates(IEnumerable<string> dates)
    {
        var read = dates.Select(d => WrittenDate.Read(d)).Where(d => d.DayFirst != d.MonthFirst).ToArray();
        var (dayFirst, monthFirst) = (read.Any(d => d.MonthFirst is null), read.Any(d => d.DayFirst is null));
        _isDayFirst = dayFirst == monthFirst ? null : dayFirst;
    }

    /// <summary>A cell may hold several, with a semicolon, a bar or a line break between.</summary>
    public static ImmutableArray<string> Split(string text) =>
        [.. text.Split([';', '|', '\n', '\r'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

    /// <returns>As the flock file writes it; null after saying why not.</returns>
    public string? Read(string text, CsvCell cell, DiagnosticBag bag) => WrittenDate.IsDayNumber(text)
        ? bag.Refuse<string>(ListMessages.DayNumber(cell.Span, text))
        : WrittenDate.Read(text) switch
        {
            (null, null) => bag.Refuse<string>(ListMessages.NotADate(cell.Span, text)),
            ({ } day, { } other) when day != other && _isDayFirst is null => bag.Refuse<string>(ListMessages.TwoDays(cell.Span, text, day, other)),
            ({ } day, { } other) when day != other => Iso(_isDayFirst is true ? day : other),
            var (day, other) => Iso((day ?? other)!.Value),
        };

    private static string Iso(LocalDate day) => LocalDatePattern.Iso.Format(day);
}
