using System.Text;
using NodaTime;
using NodaTime.Text;

namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Guesses which day was meant by a date in another form, and says so when it could be two.</summary>
internal static class DateSlip
{
    /// <returns>Null when no day can be made out.</returns>
    public static string? Advice(string text)
    {
        var typed = AsTyped(text);
        var write = WrittenDate.Read(typed) switch
        {
            (null, null) => null,
            ({ } day, { } other) when day != other => $"write `{Iso(day)}` if you mean {Words(day)}, or `{Iso(other)}` if you mean {Words(other)}",
            var (day, other) => $"write `{Iso((day ?? other)!.Value)}`",
        };
        return write is null || typed == text
            ? write
            : $"{write}, typed by hand: this one has curly quotes, long dashes or unseen characters, as text pasted from a document does";
    }

    /// <summary>The text without what word processors and web pages make of quotes, hyphens and spaces.</summary>
    private static string AsTyped(string text)
    {
        var typed = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            // Hyphens and dashes of every width, and the minus sign; curly and angled quotes; spaces that do not break or are not to be seen.
            _ = c switch
            {
                (>= '\u2010' and <= '\u2015') or '\u2212' => typed.Append('-'),
                '\u00A0' or '\u202F' or (>= '\u2000' and <= '\u200A') => typed.Append(' '),
                (>= '\u2018' and <= '\u201F') or '\u00AB' or '\u00BB' or '\u00AD' or (>= '\u200B' and <= '\u200F') or '\u2060' => typed,
                _ => typed.Append(c),
            };
        }

        return typed.ToString().Trim(' ');
    }

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);

    private static string Words(LocalDate date) =>
        LocalDatePattern.CreateWithInvariantCulture("d MMMM").Format(date);
}
