using System.Text.RegularExpressions;

namespace PaperFlock.Flocks.Lists;

/// <summary>A weight as people write it: <c>72</c> under a heading with a unit, <c>72,5 kg</c>, <c>158lbs</c>, <c>11 st 4</c>.</summary>
internal static partial class WeightCell
{
    /// <summary>Weights and Measures Act 1985, Schedule 1, Part V.</summary>
    private const decimal PoundsPerStone = 14;

    /// <param name="unit">Of the heading; the cell's own comes first.</param>
    /// <returns>As the flock file writes it; null after saying why not.</returns>
    public static string? Read(string text, string? unit, CsvCell cell, DiagnosticBag bag)
    {
        var match = Shape().Match(text);
        if (!match.Success)
        {
            return bag.Refuse<string>(ListMessages.NotAWeight(cell.Span, text));
        }

        var number = Number(match.Groups["number"].Value);
        var own = match.Groups["unit"].Value.ToUpperInvariant();
        var hasPounds = match.Groups["pounds"].Success;
        return (own.Length > 0 ? own : unit?.ToUpperInvariant()) switch
        {
            "ST" or "STONE" => $"{Text((number * PoundsPerStone) + (hasPounds ? Number(match.Groups["pounds"].Value) : 0))} lb",
            _ when hasPounds => bag.Refuse<string>(ListMessages.NotAWeight(cell.Span, text)),
            "KG" or "KGS" => $"{Text(number)} kg",
            "LB" or "LBS" => $"{Text(number)} lb",
            _ => bag.Refuse<string>(ListMessages.NoUnit(cell.Span, text)),
        };
    }

    private static decimal Number(string text) => decimal.Parse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static string Text(decimal number) => number.ToString("0.###", CultureInfo.InvariantCulture);

    [GeneratedRegex("^(?<number>[0-9]{1,4}([.,][0-9]{1,3})?)\\s*(?<unit>kgs?|lbs?|st|stone)?\\.?(\\s*(?<pounds>[0-9]{1,2}([.,][0-9])?)\\s*(lbs?)?)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Shape();
}
