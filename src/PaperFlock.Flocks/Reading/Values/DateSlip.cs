using System.Text;
using System.Text.RegularExpressions;
using NodaTime.Text;

namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Guesses which day was meant by a date in another form, and says so when it could be two.</summary>
internal static partial class DateSlip
{
    /// <returns>Null when no day can be made out.</returns>
    public static string? Advice(string text)
    {
        var typed = AsTyped(text);
        var plain = Weekday().Replace(TimeOfDay().Replace(typed, ""), "");
        var figures = LettersForFigures().IsMatch(plain) ? InFigures(plain) : plain;
        var write = (CutYear(figures), WrittenDate.Read(figures)) switch
        {
            ({ } cut, ({ } day, _)) when day != cut => $"write `{Iso(cut)}` if you mean {InFull(cut)}, or `{Iso(day)}` if you mean {InFull(day)}",
            ({ } cut, _) => $"write `{Iso(cut)}`",
            (_, (null, null)) => null,
            (_, ({ } day, { } other)) when day != other => $"write `{Iso(day)}` if you mean {Words(day)}, or `{Iso(other)}` if you mean {Words(other)}",
            (_, ({ } day, _)) when plain.Length < typed.Length => $"write `{Iso(day)}`, which is a {day.DayOfWeek}",
            (_, var (day, other)) => $"write `{Iso((day ?? other)!.Value)}`",
        };
        if (write is null && WrittenDate.IsDayNumber(plain))
        {
            return "this is the number by which a spreadsheet counts days: format the cell as a date, year first, and copy it again";
        }

        return write is null || typed == text
            ? write
            : $"{write}, typed by hand: this one has curly quotes, long dashes or unseen characters, as text pasted from a document does";
    }

    /// <summary>The usual way with the century left off, <c>26-08-10</c>: likelier than the day first, which people write with strokes.</summary>
    private static LocalDate? CutYear(string text) =>
        YearCut().IsMatch(text) && WrittenDate.Read($"20{text}") is ({ } day, _) ? day : null;

    /// <summary>The text without what word processors and web pages make of quotes, hyphens and spaces.</summary>
    private static string AsTyped(string text)
    {
        var typed = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            _ = c switch
            {
                _ when PastedMarks.IsDash(c) => typed.Append('-'),
                _ when PastedMarks.IsSpace(c) => typed.Append(' '),
                _ when PastedMarks.Quotes.Contains(c) || PastedMarks.IsUnseen(c) => typed,
                _ => typed.Append(c),
            };
        }

        return typed.ToString().Trim(' ');
    }

    /// <summary>O for 0, and l or I for 1.</summary>
    private static string InFigures(string text) => text.Replace('O', '0').Replace('o', '0').Replace('l', '1').Replace('I', '1');

    [GeneratedRegex("^[0-9]{2}-[0-9]{1,2}-[0-9]{1,2}$")]
    private static partial Regex YearCut();

    [GeneratedRegex("^[0-9OolI]{4}-[0-9OolI]{2}-[0-9OolI]{2}$")]
    private static partial Regex LettersForFigures();

    [GeneratedRegex("^(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?[,.]? +", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Weekday();

    [GeneratedRegex("(?:T| +)[0-9]{1,2}:[0-9]{2}(?::[0-9]{2}(?:\\.[0-9]+)?)?(?:Z|[+-][0-9]{2}:?[0-9]{2})?$")]
    private static partial Regex TimeOfDay();

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);

    private static string InFull(LocalDate date) =>
        LocalDatePattern.CreateWithInvariantCulture("d MMMM yyyy").Format(date);

    private static string Words(LocalDate date) =>
        LocalDatePattern.CreateWithInvariantCulture("d MMMM").Format(date);
}
