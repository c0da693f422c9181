using System.Text.RegularExpressions;

namespace PaperFlock.Flocks.Lists;

/// <summary>A weight as people write it: <c>72</c> under a heading with a unit, <c>72,5 kg</c>, <c>158lbs</c>, <c>11 st 4</c>.</summary>
internal static partial class WeightCell
{
    /// <summary>Weights and Measures Act 1985, Schedule 1, Part V.</summary>
    private const decimal PoundsPerStone = 14;

    public enum Fault
    {
        None,
        NoUnit,
        NotAWeight,
    }

    /// <param name="unit">Of the heading; the cell's own comes first.</param>
    /// <returns>As the flock file writes it.</returns>
    public static (string? Weight, Fault Fault) Read(string text, string? unit)
    {
        var match = Shape().Match(text.Trim());
        if (!match.Success)
        {
            return (null, Fault.NotAWeight);
        }

        var number = Number(match.Groups["number"].Value);
        var own = match.Groups["unit"].Value.ToUpperInvariant();
        var hasPounds = match.Groups["pounds"].Success;
        return (own.Length > 0 ? own : unit?.ToUpperInvariant()) switch
        {
            "ST" or "STONE" => ($"{Text((number * PoundsPerStone) + (hasPounds ? Number(match.Groups["pounds"].Value) : 0))} lb", Fault.None),
            _ when hasPounds => (null, Fault.NotAWeight),
            "KG" or "KGS" => ($"{Text(number)} kg", Fault.None),
            "LB" or "LBS" => ($"{Text(number)} lb", Fault.None),
            _ => (null, Fault.NoUnit),
        };
    }

    private static decimal Number(string text) => decimal.Parse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static string Text(decimal number) => number.ToString("0.###", CultureInfo.InvariantCulture);

    [GeneratedRegex("^(?<number>[0-9]{1,4}([.,][0-9]{1,3})?)\\s*(?<unit>kgs?|lbs?|st|stone)?\\.?(\\s*(?<pounds>[0-9]{1,2}([.,][0-9])?)\\s*(lbs?)?)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Shape();
}
