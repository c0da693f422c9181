using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;

namespace PaperFlock.Sheets.RoundLog;

/// <summary>What the log says about a day.</summary>
internal static class LogWords
{
    private const int MostNames = 8;

    /// <summary>Every ewe the file keeps is counted, in lamb or not.</summary>
    public static int EwesToCount(SeasonPlan plan) => plan.Ewes.Length;

    /// <summary>"sun 08:31 to 15:52".</summary>
    public static string Sun(RoundDay day) => day is { Sunrise: { } rise, Sunset: { } set }
        ? $"sun {Days.Clock(rise)} to {Days.Clock(set)}"
        : "no sunrise or sunset today";

    /// <summary>Ewes due that day, then those to keep an eye on.</summary>
    public static string Watch(SeasonPlan plan, LocalDate day)
    {
        var due = Names(plan.Ewes.Where(e => e.Due?.Likely == day));
        var near = plan.Ewes.Where(e => e.Due is { } d && d.Likely != day && d.Earliest <= day && day <= d.Latest).ToArray();
        var watch = Names(near.OrderByDescending(e => e.Due!.Chances.On(day)));
        return (due, watch) switch
        {
            ("", "") => "nobody due",
            ("", _) => $"nobody due today; watch {watch}",
            (_, "") => $"due: {due}",
            _ => $"due: {due}; watch {watch}",
        };
    }

    /// <summary>Whose window holds the day, surest first, at most <paramref name="most"/>.</summary>
    public static ImmutableArray<EwePlan> Expected(SeasonPlan plan, LocalDate day, int most) =>
    [
        .. plan.Ewes
            .Where(e => e.Due is { } d && d.Earliest <= day && day <= d.Latest)
            .OrderByDescending(e => e.Due!.Chances.On(day))
            .ThenBy(e => e.Ewe.Tag, StringComparer.Ordinal)
            .Take(most),
    ];

    private static string Names(IEnumerable<EwePlan> ewes)
    {
        var all = ewes.ToArray();
        var names = all.Take(MostNames).Select(Name);
        return string.Join(", ", names) + (all.Length > MostNames ? $" and {all.Length - MostNames} more" : "");
    }

    private static string Name(EwePlan ewe)
    {
        var name = ewe.Ewe.CallName.Replace(' ', '\u00a0');
        return ewe.Litter switch { >= 3 => $"{name}\u00a0({(ewe.Litter == 3 ? "three" : "many")})", _ => name };
    }
}
