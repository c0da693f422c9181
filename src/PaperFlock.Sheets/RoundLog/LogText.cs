namespace PaperFlock.Sheets.RoundLog;

/// <summary>What the log says about a day.</summary>
internal static class LogText
{
    private const int MostNames = 8;

    /// <summary>Every ewe the file keeps is counted, in lamb or not.</summary>
    public static int EwesToCount(SeasonPlan plan) => plan.Ewes.Length;

    /// <summary>"sun 08:31 to 15:52".</summary>
    public static string Sun(RoundDay day) => day is { Sunrise: { } rise, Sunset: { } set }
        ? $"sun {DateText.Clock(rise)} to {DateText.Clock(set)}"
        : "no sunrise or sunset today";

    /// <summary>Ewes due that day, then those to keep an eye on.</summary>
    public static ImmutableArray<Run> Watch(SeasonPlan plan, LocalDate day, TextStyle style)
    {
        var due = plan.Ewes.Where(e => e.Due?.Likely == day).ToArray();
        var near = plan.Ewes.Where(e => e.Due is { } d && d.Likely != day && d.Earliest <= day && day <= d.Latest)
            .OrderByDescending(e => e.Due!.Chances.On(day)).ToArray();
        var today = (due.Length, near.Length) switch { (0, 0) => "nobody due", (0, _) => "nobody due today", _ => "due:" + " " };
        return
        [
            new Run(today, style),
            .. Names(due, style),
            .. near.Length == 0 ? [] : new[] { new Run("; " + "watch" + " ", style) },
            .. Names(near, style),
        ];
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

    private static IEnumerable<Run> Names(EwePlan[] ewes, TextStyle style)
    {
        for (var i = 0; i < Math.Min(ewes.Length, MostNames); i++)
        {
            if (i > 0)
            {
                yield return new Run(", ", style);
            }

            yield return Who.Called(ewes[i].Ewe, style);
            if (ewes[i].Litter >= 3)
            {
                yield return new Run($"\u00a0({(ewes[i].Litter == 3 ? "three" : "many")})", style);
            }
        }

        if (ewes.Length > MostNames)
        {
            yield return new Run(" " + $"and {ewes.Length - MostNames} more", style);
        }
    }
}
