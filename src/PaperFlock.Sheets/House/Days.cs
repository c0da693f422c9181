using System.Globalization;
using NodaTime;

namespace PaperFlock.Sheets.House;

/// <summary>Dates as they are printed: weekday, day, month in letters. Never digits for a month.</summary>
internal static class Days
{
    private static readonly string[] Months = ["", "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
    private static readonly string[] LongMonths =
        ["", "January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

    /// <summary>"Mon". Two letters are never used: Tu and Th are too alike in the cold.</summary>
    public static string Weekday(IsoDayOfWeek day) => day.ToString()[..3];

    /// <summary>"4 Jan".</summary>
    public static string DayMonth(LocalDate date) => $"{Number(date.Day)}\u00a0{Months[date.Month]}";

    /// <summary>"Mon 4 Jan".</summary>
    public static string Short(LocalDate date) => $"{Weekday(date.DayOfWeek)}\u00a0{DayMonth(date)}";

    /// <summary>"Mon 4".</summary>
    public static string WeekdayNumber(LocalDate date) => $"{Weekday(date.DayOfWeek)}\u00a0{Number(date.Day)}";

    /// <summary>"Mon 4 Jan 2027".</summary>
    public static string Long(LocalDate date) => $"{Short(date)}\u00a0{Number(date.Year)}";

    /// <summary>"Sun 27 Dec to Sat 2 Jan"; one day alone where both are the same.</summary>
    public static string Span(DateInterval days) =>
        days.Start == days.End ? Short(days.Start) : $"{Short(days.Start)} to {Short(days.End)}";

    /// <summary>"January 2027".</summary>
    public static string Month(LocalDate date) => $"{LongMonths[date.Month]} {Number(date.Year)}";

    /// <summary>"27DEC": the part of a page code that says which day.</summary>
    public static string Code(LocalDate date) =>
        date.Day.ToString("00", CultureInfo.InvariantCulture) + Months[date.Month].ToUpperInvariant();

    /// <summary>"07:50".</summary>
    public static string Clock(LocalTime time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}
