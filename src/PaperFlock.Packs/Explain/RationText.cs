using PaperFlock.Sheets.Theme;

namespace PaperFlock.Packs.Explain;

/// <summary>A chart's ration, row by row, with what it is held against.</summary>
internal static class RationText
{
    /// <summary>How the amounts come about.</summary>
    public static string Method(Feeds feeds, Amounts amounts) => feeds switch
    {
        { ForageOnly: true } => "forage alone, no concentrate",
        { Method: FeedMethod.PerLamb } => $"{amounts.Plain((feeds.PerLamb ?? Feeds.UsualPerLamb).Kilograms)} of {feeds.Concentrate.Name} a lamb a day, reached by steps; the energy sum stands beside it",
        { Method: FeedMethod.EnergyBalance } => $"the energy sum: what she needs less what the forage gives her, made up with {feeds.Concentrate.Name}",
        { PerLamb: { } figure } => $"stepped: the energy sum of each week, never less than the week before, up to {amounts.Plain(figure.Kilograms)} of {feeds.Concentrate.Name} a lamb",
        _ => $"stepped: the energy sum of each week, never less than the week before, made up with {feeds.Concentrate.Name}",
    };

    public static string Row(FeedChart chart, FeedRow row, Flock flock)
    {
        var amounts = new Amounts(flock.Print.Units);
        var feeds = row.FedAt.IsEmpty ? "" : $" at {string.Join(" and ", row.FedAt.Select(t => FeedText.Time(t, flock.Holding)))}";
        return $"{ScreenText.Day(row.From)}, {Before(chart, row)}: {amounts.Plain(row.KgPerEwePerDay)} a day{feeds}{(row.IsStep ? ", a step" : "")} (energy sum {amounts.Plain(row.EnergyBalanceKg)}, by the lamb {amounts.Plain(row.PerLambKg)}); "
            + $"needs {Mega(row.Need.Energy)} MJ and {Grams(row.Need.Protein)} g protein, gets up to {Mega(row.Supply.Energy)} MJ and {Grams(row.Supply.Protein)} g; "
            + $"eats {Percent(row.DryMatterShare)} of her weight, {Percent(row.ConcentrateShare)} of it concentrate";
    }

    public static string Before(FeedChart chart, FeedRow row)
    {
        var days = Period.DaysBetween(row.From, chart.CountedFrom);
        return days > 0 ? $"{ScreenText.Count(days, "day")} before the first of them is due" : "once lambs may come";
    }

    private static string Percent(decimal share) => (share * 100).ToString("0.#", CultureInfo.InvariantCulture) + " %";

    private static string Mega(decimal energy) => Rounded(energy, 1).ToString("0.0", CultureInfo.InvariantCulture);

    private static string Grams(decimal protein) => Rounded(protein, 0).ToString("0", CultureInfo.InvariantCulture);

    private static decimal Rounded(decimal value, int decimals) => decimal.Round(value, decimals, MidpointRounding.AwayFromZero);
}
