using System.Globalization;
using PaperFlock.Flocks;
using PaperFlock.Planning;
using PaperFlock.Sheets.Theme;

namespace PaperFlock.Cli.Explain;

/// <summary>A trough group's ration, week by week, with what it is held against.</summary>
internal static class RationText
{
    public static string Before(FeedWeek week) => week.WeeksBefore > 0
        ? $"{Messages.Count(week.WeeksBefore, "week")} before the first of them is due"
        : "once lambs may come";

    /// <summary>How the amounts come about.</summary>
    public static string Method(TroughGroup group, Feeds feeds, Amounts amounts) => feeds.Method == FeedMethod.PerLamb
        ? $"{Messages.Count(group.Litter, "lamb")} at {amounts.Ration((feeds.PerLamb ?? Feeds.UsualPerLamb).Kilograms)} of {feeds.Concentrate.Name} a day each; what energy balance would give stands beside it"
        : $"energy balance: what she needs less what the forage gives her, made up with {feeds.Concentrate.Name}; what {amounts.Ration((feeds.PerLamb ?? Feeds.UsualPerLamb).Kilograms)} a lamb would give stands beside it";

    public static string Week(FeedWeek week, Feeds feeds, Amounts amounts)
    {
        var other = feeds.Method == FeedMethod.PerLamb
            ? $"by energy {amounts.Ration(week.EnergyBalanceKg)}"
            : $"by the lamb {amounts.Ration(week.PerLambKg)}";
        return $"{Messages.Day(week.WeekBeginning)}, {Before(week)}, {(week.FromHousing ? "in" : "out")}: {amounts.Ration(week.KgPerEwePerDay)} in {Messages.Count(week.FeedsPerDay, "feed")} ({other}); "
            + $"needs {Mega(week.Need.Energy)} MJ and {Grams(week.Need.Protein)} g protein, gets {Mega(week.Supply.Energy)} MJ and {Grams(week.Supply.Protein)} g";
    }

    private static string Mega(decimal energy) => Rounded(energy, 1).ToString("0.0", CultureInfo.InvariantCulture);

    private static string Grams(decimal protein) => Rounded(protein, 0).ToString("0", CultureInfo.InvariantCulture);

    private static decimal Rounded(decimal value, int decimals) => decimal.Round(value, decimals, MidpointRounding.AwayFromZero);
}
