using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Cli.Entering;

/// <summary>
/// A day typed short: <c>14</c>, <c>14 feb</c>, <c>2027-02-14</c>, <c>today</c>. The month and the year left out are those
/// that make it a day on which the thing can have happened; where there are two, it is for the keeper to say which.
/// </summary>
internal static class SeasonDay
{
    /// <param name="within">Stretches of days on which it can have happened, both ends included, in order.</param>
    /// <param name="happening">For the sentence that refuses: "the tup is in".</param>
    public static (LocalDate? Day, string? WhyNot) Read(string text, IReadOnlyList<DateInterval> within, LocalDate today, string happening)
    {
        var window = new DateInterval(within[0].Start, within[^1].End);
        var meant = Candidates(text.Trim(), window, today).Distinct().Order().ToList();
        var possible = meant.Where(d => d <= today && within.Any(w => w.Contains(d))).ToList();
        return possible.Count switch
        {
            1 => (possible[0], null),
            > 1 => (null, EnterMessages.TwoDays(text, possible)),
            _ when meant.Count == 0 => (null, EnterMessages.NoDay(text, Example(within, today))),
            _ when meant.Exists(d => d > today && within.Any(w => w.Contains(d))) => (null, EnterMessages.NotYet(text, today)),
            _ => (null, EnterMessages.NotThen(text, happening, within, Example(within, today))),
        };
    }

    private static IEnumerable<LocalDate> Candidates(string text, DateInterval window, LocalDate today)
    {
        var (weekday, day) = WrittenDate.SplitWeekday(text);
        return WrittenDate.Days(text, today) is { IsEmpty: false } days ? days
            // A stretch of days has each day of the month at most a few times.
            : WrittenDate.ReadWithoutYear(day) is (var number, null) ? window.Where(d => d.Day == number && (weekday is null || d.DayOfWeek == weekday))
            : WrittenDate.InYears(text, window.Start.Year, window.End.Year);
    }

    /// <summary>The latest day that would be taken.</summary>
    private static LocalDate Example(IReadOnlyList<DateInterval> within, LocalDate today) =>
        within.Where(w => w.Start <= today).Select(w => LocalDate.Min(w.End, today)).LastOrDefault(within[0].Start);
}
