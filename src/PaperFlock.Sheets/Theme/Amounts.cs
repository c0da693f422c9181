namespace PaperFlock.Sheets.Theme;

/// <summary>Quantities as they are printed: a figure, a no-break space, a unit; a leading zero, no trailing ones past the precision kept.</summary>
/// <param name="halfScoop">Kilograms; given where there are no scales, and what goes into a trough is told in scoops.</param>
public sealed class Amounts(UnitSystem units, decimal? halfScoop = null)
{
    /// <summary>What so many heads get together at one feed, without its unit: the figure of feed charts, handover and cards.</summary>
    public string ForHeads(FeedRow row, int heads) => AtFeed(row.KgPerFeedByHeads[heads - 1]);

    /// <summary>The same of an amount that is rounded already. Less than half a scoop is weighed, and has its unit.</summary>
    public string AtFeed(decimal kilograms) => halfScoop is not { } half ? PlainFigure(kilograms)
        : kilograms % half != 0 ? Plain(kilograms)
        : ((int)(kilograms / half)) switch
        {
            1 => "½",
            var halves => (halves / 2).ToString(CultureInfo.InvariantCulture) + (halves % 2 == 0 ? "" : "½"),
        };

    /// <summary>What <see cref="AtFeed"/> counts: "kilograms", "pounds" or "scoops".</summary>
    public string AtFeedUnit => halfScoop is null ? IsImperialFirst ? "pounds" : "kilograms" : "scoops";

    /// <summary>The same in a box to write in: "kg", "lb" or "scoops".</summary>
    public string AtFeedMark => halfScoop is null ? FeedUnit : "scoops";

    /// <summary>A weight of feed with its unit, and no trailing zero: "3 kg", "0.65 kg", "1.4 lb". Where both are wanted, both.</summary>
    public string Plain(decimal kilograms) => InUnits($"{Kilograms(kilograms)}\u00a0kg", $"{Pounds(kilograms)}\u00a0lb");

    /// <summary>The figure alone, in <see cref="FeedUnit"/>.</summary>
    public string PlainFigure(decimal kilograms) => IsImperialFirst ? Pounds(kilograms) : Kilograms(kilograms);

    /// <summary>"kg", or "lb" where only pounds are wanted.</summary>
    public string FeedUnit => IsImperialFirst ? "lb" : "kg";

    /// <summary>A ewe's weight to the whole kilogram or pound.</summary>
    public string Weight(decimal kilograms) => InUnits(Join(kilograms, "#,0", "kg"), Join(kilograms / Mass.KilogramsPerPound, "#,0", "lb"));

    public string Metres(decimal metres) => InUnits(Join(metres, "0.0", "m"), Join(metres / Length.MetresPerFoot, "0", "ft"));

    public static string Figure(decimal value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    /// <summary>Never more than is meant; a ten-thousandth short is a whole number of pounds that was once in kilograms.</summary>
    private static decimal Down(decimal amount, int decimals) => decimal.Round(amount + 0.0001m, decimals, MidpointRounding.ToZero);

    private bool IsImperialFirst => units == UnitSystem.Imperial;

    private static string Kilograms(decimal kilograms) => Figure(Down(kilograms, 2), "0.##");

    private static string Pounds(decimal kilograms) => Figure(Down(kilograms / Mass.KilogramsPerPound, 1), "0.#");

    private string InUnits(string metric, string imperial) => units switch { UnitSystem.Metric => metric, UnitSystem.Imperial => imperial, _ => $"{metric} ({imperial})" };

    private static string Join(decimal value, string format, string unit) => $"{Figure(value, format)}\u00a0{unit}";
}
