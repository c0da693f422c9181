namespace PaperFlock.Flocks.Reading;

/// <summary>
/// Every word the reader says, so that it speaks with one voice; parted into files by what is read. A message is one sentence in lower case
/// without a full stop: what is wrong. Advice says what to type. A code has one meaning for good: a new meaning gets a new code. 001 to
/// 019 are about the file and its YAML, 020 to 029 about keys and shapes, 030 to 049 about single values, 050 to 089
/// about values that do not agree, and from 090 on are warnings: 101 to 119, 121 to 149 and 189 are those of the plan, the others the reader's.
/// </summary>
internal static partial class FlockMessages
{
    /// <summary>What was typed, short enough for a sentence; the line below shows the whole.</summary>
    private static string Shown(string text)
    {
        var line = new string([.. text.Take(41).Select(c => DisplayWidth.IsUnprintable(c) ? ' ' : c)]);
        return line.Length <= 40 ? line : string.Concat(line.AsSpan(0, char.IsHighSurrogate(line[38]) ? 38 : 39), "…");
    }

    private static string Location(decimal latitude, decimal longitude) => $"`{{latitude: {Number(latitude)}, longitude: {Number(longitude)}}}`";

    private static string Kilometres(double kilometres) => $"{Number((decimal)Math.Round(kilometres))} km";

    private static string Code(int value) => $"U+{value.ToString("X4", CultureInfo.InvariantCulture)}";

    private static string Lambs(int number) => number == 1 ? "1 lamb" : $"{Number(number)} lambs";

    public static string Day(LocalDate date) => date.ToString("ddd d MMM uuuu", CultureInfo.InvariantCulture);

    private static string Number(decimal value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    public static string List(IEnumerable<string> words, string and = "and", bool quote = true)
    {
        var all = words.Select(w => quote ? $"`{w}`" : w).ToArray();
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} {and} {all[^1]}";
    }
}
