using PaperFlock.Flocks;

namespace PaperFlock.Planning.Feeding;

/// <summary>What to say where the two ways of working out a ration disagree.</summary>
internal static class MethodDifference
{
    /// <summary>The two differ by so much of the energy-balance amount, or more.</summary>
    private const decimal Worth = 0.25m;

    /// <returns>Empty when they are never a quarter apart.</returns>
    public static string Words(FeedMethod chosen, IReadOnlyList<FeedWeek> weeks)
    {
        var runs = WeekWords.Runs(weeks, PerLambIsMore);
        return string.Join(' ', runs.Select(run => Sentence(chosen, run)));
    }

    // True: so much a lamb is a quarter or more over. False: under. Null: near enough.
    private static bool? PerLambIsMore(FeedWeek week)
    {
        var apart = week.PerLambKg - week.EnergyBalanceKg;
        return apart == 0 || Math.Abs(apart) < Worth * week.EnergyBalanceKg ? null : apart > 0;
    }

    private static string Sentence(FeedMethod chosen, List<FeedWeek> run)
    {
        var more = run[0].PerLambKg > run[0].EnergyBalanceKg;
        var shares = run.Where(w => w.EnergyBalanceKg > 0)
            .Select(w => Math.Abs(w.PerLambKg - w.EnergyBalanceKg) / w.EnergyBalanceKg)
            .ToList();
        var anyAskedForNone = shares.Count < run.Count;
        var when = WeekWords.Sentence(WeekWords.When(run));
        var feedsLarger = more == (chosen == FeedMethod.PerLamb);
        return $"{HowMuch()} {Risk()}";

        string HowMuch() => shares.Count == 0
            ? $"{when} the ration per lamb asks for some concentrate where energy balance asks for none."
            : anyAskedForNone
                ? $"{when} the ration per lamb is at least {WeekWords.Percent([shares.Min()])} more than energy balance asks."
                : more
                    ? $"{when} the ration per lamb is {WeekWords.Percent(shares)} more than energy balance asks."
                    : $"{when} the ration per lamb is {WeekWords.Percent(shares)} less than energy balance asks.";

        string Risk() => feedsLarger
            ? "This chart feeds the larger amount: too much risks big lambs and hard births."
            : "This chart feeds the smaller amount: too little risks twin lamb disease.";
    }
}
