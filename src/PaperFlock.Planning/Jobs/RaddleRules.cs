using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Dates;

namespace PaperFlock.Planning.Jobs;

/// <summary>
/// A new crayon colour each cycle, so that a ewe that did not hold shows it. Advice on the interval runs from 14 days (Sheep
/// Canada, spring 2011: day 14 or 15) to the 17 of a whole cycle (Raising Sheep: 17 days, range 14 to 19).
/// </summary>
internal static class RaddleRules
{
    /// <summary>Changes while the tup is in, none on the day it leaves; colours start again when they run out.</summary>
    public static IEnumerable<JobRule> For(TuppingGroup group, int changeoverDays)
    {
        if (group.Raddle.IsEmpty)
        {
            yield break;
        }

        var stay = Period.DaysBetween(group.TupIn, group.TupOut);
        for (var change = 1; change * changeoverDays < stay; change++)
        {
            var colour = group.Raddle[change % group.Raddle.Length];
            yield return JobRule.Fixed(
                JobIds.RaddleChange, group.Raddle.Length == 1 ? $"Fresh {colour} raddle" : $"Raddle to {colour}",
                JobAnchor.TupIn, change * changeoverDays, handled: false,
                $"{DateWords.Span(changeoverDays)} after the last colour: a ewe marked in both did not hold to the first",
                "common practice; published advice runs from 14 to 17 days");
        }
    }
}
