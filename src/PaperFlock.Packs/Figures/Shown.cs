using NodaTime.Text;

namespace PaperFlock.Packs.Figures;

/// <summary>Values as the JSON shows them.</summary>
internal static class Shown
{
    public static string Date(LocalDate day) => LocalDatePattern.Iso.Format(day);

    public static string? Date(LocalDate? day) => day is { } given ? Date(given) : null;

    /// <summary>The minute it falls in.</summary>
    public static string? Time(LocalTime? time) => time is { } given ? DateText.Clock(given) : null;

    /// <summary>Halves away from zero, as on paper; always with that many decimals, so that 412 reads 412.0.</summary>
    public static decimal Decimals(decimal value, int decimals) =>
        decimal.Round(value, decimals, MidpointRounding.AwayFromZero) + new decimal(0, 0, 0, false, (byte)decimals);

    public static decimal? Decimals(decimal? value, int decimals) => value is { } given ? Decimals(given, decimals) : null;

    public static double? Chance(double? chance) => chance is { } given ? Math.Round(given, 4) : null;

    public static JsonArray List<T>(IEnumerable<T> things, Func<T, JsonNode?> shown) => new([.. things.Select(shown)]);
}
