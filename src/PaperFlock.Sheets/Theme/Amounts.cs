using System.Globalization;
using PaperFlock.Flocks;

namespace PaperFlock.Sheets.Theme;

/// <summary>Quantities as they are printed: a figure, a no-break space, a unit; a leading zero, no trailing ones past the precision kept.</summary>
public sealed class Amounts(Flocks.Units units)
{
    /// <summary>A weight of feed: to 0.1 kg or lb, and to 0.01 under 2, where a tenth would be a tenth of it.</summary>
    public string Feed(decimal kilograms) => Say(kilograms, FeedFormat(kilograms), FeedFormat(kilograms / Mass.KilogramsPerPound));

    /// <summary>What one ewe gets, to 0.01 kg or 0.01 lb.</summary>
    public string Ration(decimal kilograms) => Say(kilograms, "0.00", "0.00");

    /// <summary>A ewe's weight to the whole kilogram or pound.</summary>
    public string Weight(decimal kilograms) => Say(kilograms, "#,0", "#,0");

    /// <summary>The figure of a ration alone, in the first unit, for a column whose head names the unit.</summary>
    public string RationFigure(decimal kilograms) => IsImperialFirst
        ? Figure(kilograms / Mass.KilogramsPerPound, "0.00")
        : Figure(kilograms, "0.00");

    /// <summary>"kg", or "lb" where only pounds are wanted.</summary>
    public string RationUnit => IsImperialFirst ? "lb" : "kg";

    public string Metres(decimal metres) => units switch
    {
        Flocks.Units.Metric => Join(metres, "0.0", "m"),
        Flocks.Units.Imperial => Join(metres / Length.MetresPerFoot, "0", "ft"),
        _ => $"{Join(metres, "0.0", "m")} ({Join(metres / Length.MetresPerFoot, "0", "ft")})",
    };

    /// <summary>The largest type goes to one unit; the other follows smaller, where both are wanted.</summary>
    public (string First, string? Second) FeedParts(decimal kilograms) => units switch
    {
        Flocks.Units.Metric => (FeedKg(kilograms), null),
        Flocks.Units.Imperial => (FeedLb(kilograms), null),
        _ => (FeedKg(kilograms), FeedLb(kilograms)),
    };

    /// <summary>Floor, in square metres or square feet.</summary>
    public string Floor(decimal needed, decimal there)
    {
        const decimal squareFoot = Length.MetresPerFoot * Length.MetresPerFoot;
        var metric = $"{Figure(needed, "0.0")} of {Figure(there, "0.0")}\u00a0m²";
        var imperial = $"{Figure(needed / squareFoot, "0")} of {Figure(there / squareFoot, "0")}\u00a0sq\u00a0ft";
        return units switch { Flocks.Units.Metric => metric, Flocks.Units.Imperial => imperial, _ => $"{metric} ({imperial})" };
    }

    /// <summary>"1½ scoops", "¾ scoop".</summary>
    public static string Scoops(decimal scoops)
    {
        var whole = decimal.Truncate(scoops);
        var part = (scoops - whole) switch { 0.25m => "¼", 0.5m => "½", 0.75m => "¾", _ => "" };
        var figure = whole == 0 && part.Length > 0 ? part : Figure(whole, "0") + part;
        return English.Count(scoops > 1 ? 2 : 1, figure, "scoop", "scoops");
    }

    public static string Figure(decimal value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private bool IsImperialFirst => units == Flocks.Units.Imperial;

    private static string FeedKg(decimal kilograms) => Join(kilograms, FeedFormat(kilograms), "kg");

    private static string FeedLb(decimal kilograms)
    {
        var pounds = kilograms / Mass.KilogramsPerPound;
        return Join(pounds, FeedFormat(pounds), "lb");
    }

    private static string FeedFormat(decimal amount) => amount < 2 ? "0.00" : "0.0";

    private string Say(decimal kilograms, string metric, string imperial)
    {
        var kg = Join(kilograms, metric, "kg");
        var lb = Join(kilograms / Mass.KilogramsPerPound, imperial, "lb");
        return units switch { Flocks.Units.Metric => kg, Flocks.Units.Imperial => lb, _ => $"{kg} ({lb})" };
    }

    private static string Join(decimal value, string format, string unit) => $"{Figure(value, format)}\u00a0{unit}";
}
