using System.Text.RegularExpressions;

namespace PaperFlock.Sheets;

/// <summary>Dates as they are printed: weekday, day, month in letters. Never digits for a month.</summary>
/// <remarks>Two letters are never used for a weekday: Tu and Th are too alike in the cold.</remarks>
public static partial class DateText
{
    private static readonly string[] Weekdays = ["", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

    private static readonly string[] Months = ["", "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

    /// <summary>"Mon".</summary>
    public static string Weekday(IsoDayOfWeek day) => Weekdays[(int)day];

    /// <summary>"4 Jan", with a no-break space.</summary>
    public static string DayMonth(LocalDate date) => $"{date.Day}\u00a0{Months[date.Month]}";

    /// <summary>"Mon 4 Jan", with no-break spaces.</summary>
    public static string Short(LocalDate date) => $"{Weekday(date.DayOfWeek)}\u00a0{DayMonth(date)}";

    /// <summary>"Mon 4 Jan" with plain spaces, for sentences that may break there.</summary>
    public static string Loose(LocalDate date) => Short(date).Replace('\u00a0', ' ');

    /// <summary>The same words, in which no line ends within a date such as "Mon 4 Jan".</summary>
    internal static string Whole(string words) => DateInWords().Replace(words, match => match.Value.Replace(' ', '\u00a0'));

    /// <summary>"Mon 4", with a no-break space.</summary>
    public static string WeekdayNumber(LocalDate date) => $"{Weekday(date.DayOfWeek)}\u00a0{date.Day}";

    /// <summary>"Mon 4 Jan 2027", with no-break spaces.</summary>
    public static string Long(LocalDate date) => $"{Short(date)}\u00a0{date.Year}";

    /// <summary>"Sun 27 Dec to Sat 2 Jan"; one day alone where both are the same.</summary>
    public static string Span(DateInterval days) => days.Start == days.End ? Short(days.Start) : $"{Short(days.Start)} to {Short(days.End)}";

    /// <summary>The same, with the year where it is not this season's.</summary>
    internal static string SpanOf(Flock flock, DateInterval days) =>
        flock.SeasonDays.Contains(days.Start) && flock.SeasonDays.Contains(days.End) ? Span(days)
        : days.Start == days.End ? $"{Short(days.Start)} {days.Start.Year}" : $"{Long(days.Start)} to {Long(days.End)}";

    /// <summary>Days that follow on, as spans.</summary>
    /// <param name="days">In order.</param>
    internal static IEnumerable<DateInterval> Runs(IEnumerable<LocalDate> days) => days
        .Select((day, i) => (Day: day, Run: day.PlusDays(-i)))
        .GroupBy(d => d.Run, d => d.Day)
        .Select(run => new DateInterval(run.First(), run.Last()));

    /// <summary>"27DEC": the part of a page code that says which day.</summary>
    public static string Code(LocalDate date) => date.Day.ToString("00", CultureInfo.InvariantCulture) + Months[date.Month].ToUpperInvariant();

    /// <summary>"07:50".</summary>
    public static string Clock(LocalTime time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Whole weeks as "3 weeks", anything else as "10 days"; plain spaces.</summary>
    /// <param name="days">Not negative.</param>
    public static string Length(int days) =>
        days > 0 && days % 7 == 0 ? English.CountLoose(days / 7, "week", "weeks") : English.CountLoose(days, "day", "days");

    [GeneratedRegex("(Mon|Tue|Wed|Thu|Fri|Sat|Sun) [0-9]{1,2} [A-Z][a-z]{2}")]
    private static partial Regex DateInWords();
}
