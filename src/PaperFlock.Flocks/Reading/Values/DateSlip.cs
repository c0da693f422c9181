using NodaTime;
using NodaTime.Text;

namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Guesses which day was meant by a date in another form, and says so when it could be two.</summary>
internal static class DateSlip
{
    /// <returns>Null when no day can be made out.</returns>
    public static string? Advice(string text) => WrittenDate.Read(text) switch
    {
        (null, null) => null,
        ({ } day, { } other) when day != other => $"write `{Iso(day)}` if you mean {Words(day)}, or `{Iso(other)}` if you mean {Words(other)}",
        var (day, other) => $"write `{Iso((day ?? other)!.Value)}`",
    };

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);

    private static string Words(LocalDate date) =>
        LocalDatePattern.CreateWithInvariantCulture("d MMMM").Format(date);
}
