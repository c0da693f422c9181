using System.Globalization;
using NodaTime;

namespace PaperFlock.Languages;

/// <summary>Dates as they are printed: weekday, day, month in letters. Never digits for a month.</summary>
public sealed class Days
{
    private static readonly string[] CodeMonths = ["", "JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"];

    private readonly Language _language;
    private readonly string[] _weekdays;
    private readonly string[] _months;
    private readonly string[] _longMonths;

    internal Days(Language language)
    {
        _language = language;

        // Two letters are never used: Tu and Th are too alike in the cold.
        // For the translator: as short as can be, each unlike the others; they stand over narrow columns.
        _weekdays = ["", language.Say("Mon"), language.Say("Tue"), language.Say("Wed"), language.Say("Thu"), language.Say("Fri"), language.Say("Sat"), language.Say("Sun")];

        // For the translator: short names of months, in letters, each unlike the others.
        _months =
        [
            "", language.SayAs("short", "Jan"), language.SayAs("short", "Feb"), language.SayAs("short", "Mar"), language.SayAs("short", "Apr"),
            language.SayAs("short", "May"), language.SayAs("short", "Jun"), language.SayAs("short", "Jul"), language.SayAs("short", "Aug"),
            language.SayAs("short", "Sep"), language.SayAs("short", "Oct"), language.SayAs("short", "Nov"), language.SayAs("short", "Dec"),
        ];
        _longMonths =
        [
            "", language.Say("January"), language.Say("February"), language.Say("March"), language.Say("April"), language.Say("May"), language.Say("June"),
            language.Say("July"), language.Say("August"), language.Say("September"), language.Say("October"), language.Say("November"), language.Say("December"),
        ];
    }

    /// <summary>"Mon".</summary>
    public string Weekday(IsoDayOfWeek day) => _weekdays[(int)day];

    /// <summary>"4 Jan".</summary>
    public string DayMonth(LocalDate date)
    {
        // For the translator: a day and the short name of its month, with a no-break space between.
        return _language.SayAs("day month", $"{date.Day}\u00a0{_months[date.Month]}");
    }

    /// <summary>"Mon 4 Jan".</summary>
    public string Short(LocalDate date)
    {
        // For the translator: weekday, day and short name of the month, with no-break spaces between.
        return _language.SayAs("weekday day month", $"{Weekday(date.DayOfWeek)}\u00a0{date.Day}\u00a0{_months[date.Month]}");
    }

    /// <summary>"Mon 4 Jan" with plain spaces, for sentences that may break there.</summary>
    public string Loose(LocalDate date) => Short(date).Replace('\u00a0', ' ');

    /// <summary>"Mon 4".</summary>
    public string WeekdayNumber(LocalDate date)
    {
        // For the translator: weekday and day of the month, with a no-break space between.
        return _language.SayAs("weekday day", $"{Weekday(date.DayOfWeek)}\u00a0{date.Day}");
    }

    /// <summary>"Mon 4 Jan 2027".</summary>
    public string Long(LocalDate date)
    {
        // For the translator: weekday, day, short name of the month and year, with no-break spaces between.
        return _language.SayAs("weekday day month year", $"{Weekday(date.DayOfWeek)}\u00a0{date.Day}\u00a0{_months[date.Month]}\u00a0{date.Year}");
    }

    /// <summary>"Sun 27 Dec to Sat 2 Jan"; one day alone where both are the same.</summary>
    public string Span(DateInterval days)
    {
        // For the translator: two days.
        return days.Start == days.End ? Short(days.Start) : _language.Say($"{Short(days.Start)} to {Short(days.End)}");
    }

    /// <summary>"January 2027".</summary>
    public string Month(LocalDate date)
    {
        // For the translator: the long name of a month, and a year.
        return _language.SayAs("month year", $"{_longMonths[date.Month]} {date.Year}");
    }

    /// <summary>"27DEC": the part of a page code that says which day. A code, the same in every language.</summary>
    public static string Code(LocalDate date) => date.Day.ToString("00", CultureInfo.InvariantCulture) + CodeMonths[date.Month];

    /// <summary>"07:50".</summary>
    public static string Clock(LocalTime time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);
}
