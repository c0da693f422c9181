using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Languages;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;
using PaperFlock.Sheets.Jobs;

namespace PaperFlock.Sheets.Handover;

/// <summary>What the plan knows of the days of an absence, in sentences.</summary>
internal sealed record HandoverFacts(ImmutableArray<string> Different, ImmutableArray<string> Jobs, ImmutableArray<Text> Watch)
{
    private const int MostEwes = 14;

    public static HandoverFacts Of(Stationery stationery, Absence away)
    {
        var plan = stationery.Plan;
        return new HandoverFacts(DifferentNow(stationery, away), JobsThen(plan, away), ToWatch(plan, away));
    }

    private static ImmutableArray<string> DifferentNow(Stationery stationery, Absence away)
    {
        var plan = stationery.Plan;
        var lines = ImmutableArray.CreateBuilder<string>();
        var day = plan.Rounds.FirstOrDefault(r => r.Date == away.From);
        if (day is not null)
        {
            lines.Add(Rounds(day, stationery.Language));
        }

        lines.Add(stationery.Language.Say($"Count {stationery.Language.Count(plan.Ewes.Length, "ewe", "ewes")}, {plan.Ewes.Count(e => e.IsCarrying)} of them still to lamb."));
        foreach (var group in plan.TroughGroups)
        {
            var week = group.Weeks.LastOrDefault(w => w.WeekBeginning <= away.From && away.From < w.WeekBeginning.PlusDays(7));
            if (week is not null)
            {
                lines.Add(Fed(stationery, group, week));
            }
        }

        var expected = plan.Lambing.Days.Where(d => d.Date >= away.From && d.Date <= away.To).Sum(d => d.ExpectedEwes);
        lines.Add(expected < 0.05
            ? stationery.Language.Say("No ewe is expected to lamb in these days.")
            : expected < 0.75
                ? stationery.Language.Say("A ewe may lamb early in these days; more likely none will.")
                : stationery.Language.Say($"About {stationery.Language.Count((int)Math.Round(expected, MidpointRounding.AwayFromZero), "ewe", "ewes")} may lamb in these days."));
        return lines.ToImmutable();
    }

    private static string Rounds(RoundDay day, Language language)
    {
        var rounds = day.Times.Length;
        var times = string.Join(", ", day.Times.Select(t => $"{t.Name} {Days.Clock(t.At)}"));
        return language.Plural(
            rounds,
            $"{rounds}\u00a0round a day: {times}. Times move with the sun: the log has each day's.",
            $"{rounds}\u00a0rounds a day: {times}. Times move with the sun: the log has each day's.");
    }

    private static string Fed(Stationery stationery, TroughGroup group, FeedWeek week)
    {
        var who = group.Pen is { } pen ? $"{group.Name} ({pen})" : group.Name;
        var ewes = stationery.Language.Count(week.Ewes, "ewe", "ewes");
        var feeds = stationery.Language.Count(week.FeedsPerDay, "feed", "feeds");
        return stationery.Language.Say($"{who}: {ewes}, {stationery.Amounts.Feed(week.KgPerFeedForGroup)} at each of {feeds} a day. Chart FEED-{group.Number}.");
    }

    private static ImmutableArray<string> JobsThen(SeasonPlan plan, Absence away)
    {
        ImmutableArray<string> lines =
        [
            .. JobEntries.Of(plan)
                .Where(e => e.Job.Date is { } d && d >= away.From && d <= away.To)
                .Select(e => $"{plan.Language.Days.Short(e.ShownOn)}: {e.Title}{e.GroupWords}."),
        ];
        return lines.IsEmpty ? [plan.Language.Say("None beyond the rounds and the feeding.")] : lines;
    }

    private static ImmutableArray<Text> ToWatch(SeasonPlan plan, Absence away)
    {
        var ewes = plan.Ewes.OrderBy(e => e.Due?.Likely ?? LocalDate.MaxIsoValue).Select(e => (Ewe: e, Why: Why(e, away, plan.Language))).Where(e => e.Why.Length > 0).ToArray();
        if (ewes.Length == 0)
        {
            return [Ink.Text(plan.Language.Say("None named. Watch for any ewe apart from the others."), Fount.Body)];
        }

        var named = ewes.Take(MostEwes).Select(e => new Text(
            [
                new Run(e.Ewe.Ewe.Name is { } name ? $"{name} " : "", Fount.BodyBold),
                new Run(e.Ewe.Ewe.Tag, Who.TagStyle, Whole: true),
                new Run($": {e.Why}.", Fount.Body),
            ]));
        return ewes.Length <= MostEwes
            ? [.. named]
            : [.. named, Ink.Text(plan.Language.Say($"And {plan.Language.Count(ewes.Length - MostEwes, "ewe", "ewes")} more: each day of the log names those due."), Fount.BodyBold)];
    }

    private static string Why(EwePlan ewe, Absence away, Language language)
    {
        var reasons = new List<string>();
        if (ewe.Due is { } due && due.Earliest <= away.To && due.Latest >= away.From)
        {
            reasons.Add(language.Say($"may lamb from {language.Days.Short(due.Earliest)}"));
        }

        if (ewe.IsCarrying && ewe.Litter >= 3)
        {
            reasons.Add(language.Say($"carries {ewe.Litter}"));
        }

        if (ewe.Ewe.Toes == Toes.Lame)
        {
            reasons.Add(language.Say("was lame"));
        }

        if (ewe.IsCarrying && ewe.Ewe.Condition is { } score && score < 2.5m)
        {
            reasons.Add(language.Say($"was thin, score {Amounts.Figure(score, "0.0")}"));
        }

        if (ewe.Ewe.Note is { Length: > 0 } note)
        {
            reasons.Add(note.TrimEnd('.'));
        }

        return string.Join("; ", reasons);
    }
}
