using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.Jobs;
using PaperFlock.Sheets.Theme;

namespace PaperFlock.Sheets.Handover;

/// <summary>What the plan knows of the days of an absence, in sentences.</summary>
internal sealed record HandoverFacts(ImmutableArray<string> Different, ImmutableArray<string> Jobs, ImmutableArray<Text> Watch)
{
    private const int MostEwes = 14;

    public static HandoverFacts Of(SheetContext context, Absence away)
    {
        var plan = context.Plan;
        return new HandoverFacts(DifferentNow(context, away), JobsThen(plan, away), ToWatch(plan, away));
    }

    private static ImmutableArray<string> DifferentNow(SheetContext context, Absence away)
    {
        var plan = context.Plan;
        var lines = ImmutableArray.CreateBuilder<string>();
        var day = plan.Rounds.FirstOrDefault(r => r.Date == away.From);
        if (day is not null)
        {
            lines.Add(Rounds(day));
        }

        lines.Add($"Count {English.Count(plan.Ewes.Length, "ewe", "ewes")}, {plan.Ewes.Count(e => e.IsCarrying)} of them still to lamb.");
        foreach (var group in plan.TroughGroups)
        {
            var week = group.Weeks.LastOrDefault(w => w.WeekBeginning <= away.From && away.From < w.WeekBeginning.PlusDays(7));
            if (week is not null)
            {
                lines.Add(Fed(context, group, week));
            }
        }

        var expected = plan.Lambing.Days.Where(d => d.Date >= away.From && d.Date <= away.To).Sum(d => d.ExpectedEwes);
        lines.Add(expected < 0.05
            ? "No ewe is expected to lamb in these days."
            : expected < 0.75
                ? "A ewe may lamb early in these days; more likely none will."
                : $"About {English.Count((int)Math.Round(expected, MidpointRounding.AwayFromZero), "ewe", "ewes")} may lamb in these days.");
        return lines.ToImmutable();
    }

    private static string Rounds(RoundDay day)
    {
        var rounds = day.Times.Length;
        var times = string.Join(", ", day.Times.Select(t => $"{RoundText.Name(t)} {DateText.Clock(t.At)}"));
        return English.Plural(
            rounds,
            $"{rounds}\u00a0round a day: {times}. Times move with the sun: the log has each day's.",
            $"{rounds}\u00a0rounds a day: {times}. Times move with the sun: the log has each day's.");
    }

    private static string Fed(SheetContext context, TroughGroup group, FeedWeek week)
    {
        var who = group.Pen is { } pen ? $"{group.Name} ({pen})" : group.Name;
        var ewes = English.Count(week.Ewes, "ewe", "ewes");
        var feeds = English.Count(week.FeedsPerDay, "feed", "feeds");
        return $"{who}: {ewes}, {context.Amounts.Feed(week.KgPerFeedForGroup)} at each of {feeds} a day. Chart FEED-{group.Number}.";
    }

    private static ImmutableArray<string> JobsThen(SeasonPlan plan, Absence away)
    {
        ImmutableArray<string> lines =
        [
            .. JobLine.Of(plan)
                .Where(e => e.Job.Date is { } d && d >= away.From && d <= away.To)
                .Select(e => $"{DateText.Short(e.Job.ShownOn)}: {e.Title}{(e.Groups.Length > 0 ? $" · {e.Groups}" : "")}."),
        ];
        return lines.IsEmpty ? ["None beyond the rounds and the feeding."] : lines;
    }

    private static ImmutableArray<Text> ToWatch(SeasonPlan plan, Absence away)
    {
        var ewes = plan.Ewes.OrderBy(e => e.Due?.Likely ?? LocalDate.MaxIsoValue).Select(e => (Ewe: e, Why: Why(e, away))).Where(e => e.Why.Length > 0).ToArray();
        if (ewes.Length == 0)
        {
            return [Block.Text("None named. Watch for any ewe apart from the others.", TypeScale.Body)];
        }

        var named = ewes.Take(MostEwes).Select(e => new Text(
            [
                new Run(e.Ewe.Ewe.Name is { } name ? $"{name} " : "", TypeScale.BodyBold),
                new Run(e.Ewe.Ewe.Tag, Who.TagStyle, Whole: true),
                new Run($": {e.Why}.", TypeScale.Body),
            ]));
        return ewes.Length <= MostEwes
            ? [.. named]
            : [.. named, Block.Text($"And {English.Count(ewes.Length - MostEwes, "ewe", "ewes")} more: each day of the log names those due.", TypeScale.BodyBold)];
    }

    private static string Why(EwePlan ewe, Absence away)
    {
        var reasons = new List<string>();
        if (ewe.Due is { } due && due.Earliest <= away.To && due.Latest >= away.From)
        {
            reasons.Add($"may lamb from {DateText.Short(due.Earliest)}");
        }

        if (ewe.IsCarrying && ewe.Litter >= 3)
        {
            reasons.Add($"carries {ewe.Litter}");
        }

        if (ewe.Ewe.Toes == Toes.Lame)
        {
            reasons.Add("was lame");
        }

        if (ewe.IsCarrying && ewe.Ewe.Condition is { } score && score < 2.5m)
        {
            reasons.Add($"was thin, score {Amounts.Figure(score, "0.0")}");
        }

        if (ewe.Ewe.Note is { Length: > 0 } note)
        {
            reasons.Add(note.TrimEnd('.'));
        }

        return string.Join("; ", reasons);
    }
}
