using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Feeding;

/// <summary>The weekly amounts of one trough group, by both methods.</summary>
internal static class FeedWeeks
{
    /// <summary>Energy-balance amounts are rounded to this, kg: finer than a hand with a scoop can be.</summary>
    public const decimal Step = 0.05m;

    /// <param name="firstDue">Weeks count back from it.</param>
    /// <param name="lastDue">The last week is the one that holds it.</param>
    public static ImmutableArray<FeedWeek> Of(Flock flock, Mob mob, int ewes, int litter, LocalDate firstDue, LocalDate lastDue)
    {
        var feeds = flock.Feeds;
        var perLamb = (feeds.PerLamb ?? Feeds.UsualPerLamb).Kilograms * litter;
        var balance = 0m;
        var weeks = ImmutableArray.CreateBuilder<FeedWeek>();
        for (var begin = firstDue.PlusWeeks(-flock.Practice.FeedWeeksBeforeLambing.Twin); begin <= lastDue; begin = begin.PlusWeeks(1))
        {
            var before = Period.DaysBetween(begin, firstDue) / NodaConstants.DaysPerWeek;
            var middle = begin.PlusDays(NodaConstants.DaysPerWeek / 2);
            var day = DayOfPregnancy(before);
            var (need, diet) = mob.Balance(day, middle);

            // Never down before lambing, though coming indoors saves her some walking.
            balance = Math.Max(balance, RoundToStep(diet.FreshConcentrate(feeds.Concentrate)));

            var chosen = feeds.Method == FeedMethod.PerLamb ? perLamb : balance;
            var perDay = FeedsADay.For(chosen, feeds.LargestFeed.Kilograms, before, flock.Practice.TwoFeedsWeeksBeforeLambing);
            var supply = mob.Supply((double)chosen, middle);
            weeks.Add(new FeedWeek(
                begin,
                before,
                ewes,
                chosen,
                perLamb,
                balance,
                perDay,
                Scoops.PerFeed(chosen * ewes / perDay, feeds.Concentrate.Scoop?.Kilograms),
                Printed(need, mob.Protein(day)),
                Printed(supply.Energy, supply.Protein),
                mob.IsHousedOn(middle)));
        }

        return weeks.ToImmutable();
    }

    /// <summary>The day of pregnancy a week is reckoned at: its middle, counted back from birth on day 147.</summary>
    /// <remarks>One amount stands for seven days. Reckoned at the end of the week it would be over what she needs on six
    /// of them, on top of counting every ewe from the earliest day any of them can lamb; reckoned at the middle, the week's total
    /// is right and no day is more than about 4 % out. From the first due date on it stays at her need on the day of birth.</remarks>
    public static double DayOfPregnancy(int weeksBefore) =>
        weeksBefore <= 0 ? ConceptusGrowth.TermDay : ConceptusGrowth.TermDay - (NodaConstants.DaysPerWeek * weeksBefore) + (NodaConstants.DaysPerWeek / 2);

    private static decimal RoundToStep(double kilograms) =>
        Math.Round((decimal)kilograms / Step, MidpointRounding.AwayFromZero) * Step;

    // Rounded well below what anyone prints: the last digits of a power may differ between computers, and must not show.
    private static Nutrients Printed(double energy, double protein) =>
        new(Math.Round((decimal)energy, 2), Math.Round((decimal)protein, 1));
}
