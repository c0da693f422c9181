using System.Globalization;
using NodaTime;
using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Cli.Entering;

/// <summary>
/// A day typed short: <c>14</c>, <c>14 feb</c>, <c>2027-02-14</c>, <c>today</c>. The month and the year left out are those
/// that make it a day on which the thing can have happened; where there are two, it is for the keeper to say which.
/// </summary>
internal static class SeasonDay
{
    private static readonly string[] Months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

    /// <param name="within">Stretches of days on which it can have happened, both ends included, in order.</param>
    /// <param name="happening">For the sentence that refuses: "the tup is in".</param>
    public static (LocalDate? Day, string? WhyNot) Read(string text, IReadOnlyList<DateInterval> within, LocalDate today, string happening)
    {
        var window = new DateInterval(within[0].Start, within[^1].End);
        var meant = Candidates(text.Trim(), window, today).Distinct().Order().ToList();
        if (meant.Count == 0)
        {
            return (null, EnterMessages.NoDay(text, Example(within, today)));
        }

        var possible = meant.Where(d => d <= today && within.Any(w => w.Contains(d))).ToList();
        return possible.Count switch
        {
            1 => (possible[0], null),
            > 1 => (null, EnterMessages.TwoDays(text, possible)),
            _ when meant.Exists(d => d > today && within.Any(w => w.Contains(d))) => (null, EnterMessages.NotYet(text, today)),
            _ => (null, EnterMessages.NotThen(text, happening, within, Example(within, today))),
        };
    }

    /// <summary>Whether a word is the name of a month, or the beginning of one.</summary>
    public static bool IsMonth(string word) => Month(word) is not null;

    private static IEnumerable<LocalDate> Candidates(string text, DateInterval window, LocalDate today)
    {
        if (text.Equals("today", StringComparison.OrdinalIgnoreCase))
        {
            return [today];
        }

        if (text.Equals("yesterday", StringComparison.OrdinalIgnoreCase))
        {
            return [today.PlusDays(-1)];
        }

        var (dayFirst, monthFirst) = WrittenDate.Read(text);
        if (dayFirst is not null || monthFirst is not null)
        {
            return new[] { dayFirst, monthFirst }.OfType<LocalDate>();
        }

        var parts = Split(text);
        if (parts.Count == 1 && Number(parts[0]) is { } day)
        {
            // A stretch of days has each day of the month at most a few times.
            return window.Where(d => d.Day == day).DefaultIfEmpty(window.Start).Where(d => d.Day == day);
        }

        if (parts.Count != 2)
        {
            return [];
        }

        var (number, month) = (Number(parts[0]) ?? Number(parts[1]), Month(parts[0]) ?? Month(parts[1]));
        return number is { } n && month is { } m
            ? Enumerable.Range(window.Start.Year, window.End.Year - window.Start.Year + 1)
                .Where(y => n >= 1 && n <= CalendarSystem.Iso.GetDaysInMonth(y, m))
                .Select(y => new LocalDate(y, m, n))
            : [];
    }

    /// <summary>Figures and letters apart: <c>14feb</c> is two.</summary>
    private static List<string> Split(string text)
    {
        var parts = new List<string>();
        foreach (var c in text)
        {
            var begins = parts.Count == 0 || parts[^1].Length == 0 || char.IsAsciiDigit(parts[^1][0]) != char.IsAsciiDigit(c);
            if (c is ' ' or '-' or '.' or ',')
            {
                parts.Add("");
            }
            else if (begins)
            {
                parts.Add(c.ToString());
            }
            else
            {
                parts[^1] += c;
            }
        }

        parts.RemoveAll(p => p.Length == 0 || p is "st" or "nd" or "rd" or "th");
        return parts;
    }

    private static int? Number(string text) =>
        text.Length <= 2 && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static int? Month(string text)
    {
        var at = text.Length < 3 ? -1 : Array.FindIndex(Months, m => text.StartsWith(m, StringComparison.OrdinalIgnoreCase));
        return at >= 0 && CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(at + 1).StartsWith(text, StringComparison.OrdinalIgnoreCase) ? at + 1 : null;
    }

    /// <summary>The latest day that would be taken.</summary>
    private static LocalDate Example(IReadOnlyList<DateInterval> within, LocalDate today)
    {
        var last = within.Where(w => w.Start <= today).Select(w => LocalDate.Min(w.End, today)).LastOrDefault(within[0].Start);
        return last;
    }
}
