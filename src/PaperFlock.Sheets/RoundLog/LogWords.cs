using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Languages;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
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
    public static string Sun(RoundDay day, Language language) => day is { Sunrise: { } rise, Sunset: { } set }
        ? language.Say($"sun {Days.Clock(rise)} to {Days.Clock(set)}")
        : language.Say("no sunrise or sunset today");

    /// <summary>Ewes due that day, then those to keep an eye on.</summary>
    public static ImmutableArray<Run> Watch(SeasonPlan plan, LocalDate day, TextStyle style)
    {
        var due = plan.Ewes.Where(e => e.Due?.Likely == day).ToArray();
        var near = plan.Ewes.Where(e => e.Due is { } d && d.Likely != day && d.Earliest <= day && day <= d.Latest)
            .OrderByDescending(e => e.Due!.Chances.On(day)).ToArray();
        var today = (due.Length, near.Length) switch { (0, 0) => plan.Language.Say("nobody due"), (0, _) => plan.Language.Say("nobody due today"), _ => plan.Language.Say("due:") + " " };
        return
        [
            new Run(today, style),
            .. Names(due, style, plan.Language),
            .. near.Length == 0 ? [] : new[] { new Run("; " + plan.Language.Say("watch") + " ", style) },
            .. Names(near, style, plan.Language),
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

    private static IEnumerable<Run> Names(EwePlan[] ewes, TextStyle style, Language language)
    {
        for (var i = 0; i < Math.Min(ewes.Length, MostNames); i++)
        {
            if (i > 0)
            {
                yield return new Run(", ", style);
            }

            yield return Who.Called(ewes[i], style);
            if (ewes[i].Litter >= 3)
            {
                yield return new Run($"\u00a0({(ewes[i].Litter == 3 ? language.Say("three") : language.Say("many"))})", style);
            }
        }

        if (ewes.Length > MostNames)
        {
            yield return new Run(" " + language.Say($"and {ewes.Length - MostNames} more"), style);
        }
    }
}
