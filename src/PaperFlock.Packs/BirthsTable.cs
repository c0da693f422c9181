using NodaTime.Text;

namespace PaperFlock.Packs;

/// <summary>Every lamb born, a row each, for the flock book.</summary>
internal static class BirthsTable
{
    private static readonly string[] Headings =
        ["dam tag", "dam name", "sire", "sire is", "born on", "time", "born as", "born", "reared by her", "sex", "lamb tag", "birth weight kg", "help", "holding"];

    /// <summary>In the order they were born; of a lambing nobody counted there is one row, with the lambs left blank.</summary>
    public static string Of(SeasonPlan plan) =>
        string.Concat(new[] { Headings }.Concat(plan.Outcome.Lambings.Select(l => l.Ewe).OrderBy(e => e.Ewe.Lambed).ThenBy(e => e.Ewe.Lambing.Time).SelectMany(dam => Rows(dam, plan.Flock.Holding))).Select(Line));

    /// <inheritdoc cref="PackMaker.WhyNotReplaceBirths"/>
    public static string? WhyNotReplace(string there, Holding holding)
    {
        var lines = there.TrimStart('\uFEFF').Split('\n', 3);
        return lines[0] + '\n' != Line(Headings) ? "is no list of births that this program has made"
            : lines.Length < 2 || lines[1].Length == 0 || lines[1].TrimEnd('\r').EndsWith($",{Cell(holding.Name)}", StringComparison.Ordinal) ? null
            : "is of another holding";
    }

    private static string Line(IEnumerable<string> row) => string.Join(',', row.Select(Cell)) + "\r\n";

    private static IEnumerable<string[]> Rows(EwePlan dam, Holding holding)
    {
        var (ewe, result) = (dam.Ewe, dam.Ewe.Lambing);
        var alive = ewe.BornAlive;
        string[] Row(string born, Lamb? lamb) =>
        [
            ewe.Tag,
            ewe.Name ?? "",
            SireText.Of(dam),
            dam.Sires.IsEmpty ? "" : dam.CertainSire is null ? "either" : "certain",
            LocalDatePattern.Iso.Format(ewe.Lambed!.Value),
            result.Time is { } time ? DateText.Clock(time) : "",
            alive is { } here ? (here + (result.Dead ?? 0)).ToString(CultureInfo.InvariantCulture) : "",
            born,
            alive?.ToString(CultureInfo.InvariantCulture) ?? "",
            lamb?.Sex.ToString().ToLowerInvariant() ?? "",
            lamb?.Tag ?? "",
            lamb?.Weight is { } weight ? weight.Kilograms.ToString("0.###", CultureInfo.InvariantCulture) : "",
            result.Help?.ToString().ToLowerInvariant() ?? "",
            holding.Name,
        ];
        var living = alive is { } number ? Enumerable.Range(0, number).Select(i => Row("alive", i < ewe.Lambs.Length ? ewe.Lambs[i] : null)) : [Row("", null)];
        return living.Concat(Enumerable.Repeat(Row("dead", null), result.Dead ?? 0));
    }

    /// <summary>RFC 4180. A sign at the head of a name would be taken for a formula: an apostrophe before it says that it is text.</summary>
    private static string Cell(string text)
    {
        var told = text is ['=' or '+' or '-' or '@', ..] ? "'" + text : text;
        return told.AsSpan().ContainsAny(",\"\r\n") ? $"\"{told.Replace("\"", "\"\"")}\"" : told;
    }
}
