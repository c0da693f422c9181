using System.Text.RegularExpressions;
using NodaTime.Text;

namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Guesses which day was meant by a date in another form, and says so when it could be two.</summary>
internal static partial class DateSlip
{
    /// <returns>Null when no day can be made out.</returns>
    public static string? Advice(string text)
    {
        var typed = PastedMarks.AsTyped(text);
        var (_, plain) = WrittenDate.SplitWeekday(TimeOfDay().Replace(typed, ""));
        var days = WrittenDate.Days(LettersForFigures().IsMatch(plain) ? InFigures(plain) : plain);
        if (days.IsEmpty)
        {
            return WrittenDate.IsDayNumber(plain)
                ? "this is the number by which a spreadsheet counts days: format the cell as a date, year first, and copy it again"
                : null;
        }

        var write = days is [var only]
            ? $"write `{Iso(only)}`, which is a {only.DayOfWeek}"
            : $"write {string.Join(", or ", days.Select(day => $"`{Iso(day)}` if you mean {InFull(day)}"))}";
        return typed == text
            ? write
            : $"{write}, typed by hand: this one has curly quotes, long dashes or unseen characters, as text pasted from a document does";
    }

    /// <summary>O for 0, and l or I for 1.</summary>
    private static string InFigures(string text) => text.Replace('O', '0').Replace('o', '0').Replace('l', '1').Replace('I', '1');

    [GeneratedRegex("^[0-9OolI]{4}-[0-9OolI]{2}-[0-9OolI]{2}$")]
    private static partial Regex LettersForFigures();

    [GeneratedRegex("(?:T| +)[0-9]{1,2}:[0-9]{2}(?::[0-9]{2}(?:\\.[0-9]+)?)?(?:Z|[+-][0-9]{2}:?[0-9]{2})?$")]
    private static partial Regex TimeOfDay();

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);

    private static string InFull(LocalDate date) => date.ToString("dddd d MMMM uuuu", CultureInfo.InvariantCulture);
}
