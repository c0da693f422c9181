using System.Text.RegularExpressions;
using NodaTime.Text;

namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Days of the calendar and times of the day, each in one form only.</summary>
internal static partial class DateValues
{
    /// <summary>Outside these years a date is a slip, and the sums that follow could leave the calendar.</summary>
    public const int FirstYear = 1949;

    /// <summary>The ewes of a tup of 2100 lamb the year after.</summary>
    public const int LastYear = 2101;

    /// <summary><c>06:00</c>, on the 24-hour clock.</summary>
    public static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    /// <summary><c>2026-08-10</c> and nothing else: figures the other way round mean two days on two sides of an ocean.</summary>
    public static LocalDate? AsDate(this Field field)
    {
        if (field.AsWord() is not { } text)
        {
            return null;
        }

        if (!Iso().IsMatch(text))
        {
            return field.Refuse<LocalDate?>(FlockMessages.NotADate(field.Span, field.Name, text, DateSlip.Advice(text)));
        }

        int[] figures = [.. text.Split('-').Select(part => int.Parse(part, NumberStyles.None, CultureInfo.InvariantCulture))];
        var (year, month, day) = (figures[0], figures[1], figures[2]);
        return WhyNot(year, month, day) is { } why ? field.Refuse<LocalDate?>(FlockMessages.NoSuchDate(field.Span, text, why))
            : year < 100 ? field.Refuse<LocalDate?>(FlockMessages.NotADate(field.Span, field.Name, text, $"write the year in four figures, such as `20{text[2..]}`"))
            : year is < FirstYear or > LastYear ? field.Refuse<LocalDate?>(FlockMessages.OutOfRange(field.Span, field.Name, text, $"the year {FirstYear}", $"the year {LastYear}", "year"))
            : new LocalDate(year, month, day);
    }

    /// <summary>The days of a list, in the order written, each with its place; those that are no dates are reported and left out.</summary>
    public static IReadOnlyList<(LocalDate Date, Field Item)> AsDates(this Field field) =>
        [.. (field.AsItems() ?? []).Select(item => (Date: item.AsDate(), Item: item)).Where(d => d.Date is not null).Select(d => (d.Date!.Value, d.Item))];

    public static LocalTime? AsTime(this Field field)
    {
        var (least, most) = field.As<TimeForm>();
        if (field.AsWord() is not { } text)
        {
            return null;
        }

        if (!Clock.Parse(text).TryGetValue(default, out var time))
        {
            var padded = text is [_, ':' or '.', _, _] ? $"0{text[0]}:{text[2..]}" : null;
            return field.Refuse<LocalTime?>(FlockMessages.NotATime(field.Span, field.Name, text, padded?.Skip(3).All(char.IsAsciiDigit) is true ? padded : null));
        }

        return time >= least && time <= most
            ? time
            : field.Refuse<LocalTime?>(FlockMessages.OutOfRange(field.Span, field.Name, text, Clock.Format(least), Clock.Format(most), "time"));
    }

    /// <summary>Why no calendar has the day; null when it has.</summary>
    private static string? WhyNot(int year, int month, int day) =>
        year == 0 ? "years begin at 1"
        : month is < 1 or > 12 ? "a year has months 01 to 12, and the month stands in the middle"
        : day == 0 ? "days begin at 01"
        : CalendarSystem.Iso.GetDaysInMonth(year, month) is var last && day <= last ? null
        : day == 29 && month == 2 ? string.Create(CultureInfo.InvariantCulture, $"{year} is not a leap year, so February has 28 days")
        : string.Create(CultureInfo.InvariantCulture, $"{CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month)} has {last} days");

    [GeneratedRegex(@"^[0-9]{4}-[0-9]{2}-[0-9]{2}\z")]
    private static partial Regex Iso();
}
