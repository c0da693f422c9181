using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using PaperFlock.Flocks;
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
            lines.Add($"{Amounts.Count(day.Times.Length, "round", "rounds")} a day: {string.Join(", ", day.Times.Select(t => $"{t.Name} {Days.Clock(t.At)}"))}. Times move with the sun: the log has each day's.");
        }

        lines.Add($"Count {Amounts.Count(plan.Ewes.Length, "ewe", "ewes")}, {plan.Ewes.Count(e => e.IsCarrying).ToString(CultureInfo.InvariantCulture)} of them still to lamb.");
        foreach (var group in plan.TroughGroups)
        {
            var week = group.Weeks.LastOrDefault(w => w.WeekBeginning <= away.From && away.From < w.WeekBeginning.PlusDays(7));
            if (week is not null)
            {
                lines.Add($"{group.Name}{(group.Pen is null ? "" : $" ({group.Pen})")}: {Amounts.Count(week.Ewes, "ewe", "ewes")}, {stationery.Amounts.Feed(week.KgPerFeedForGroup)} at each of {Amounts.Count(week.FeedsPerDay, "feed", "feeds")} a day. Chart FEED-{group.Number.ToString(CultureInfo.InvariantCulture)}.");
            }
        }

        var expected = plan.Lambing.Days.Where(d => d.Date >= away.From && d.Date <= away.To).Sum(d => d.ExpectedEwes);
        lines.Add(expected < 0.05
            ? "No ewe is expected to lamb in these days."
            : expected < 0.75
                ? "A ewe may lamb early in these days; more likely none will."
                : $"About {Amounts.Count((int)Math.Round(expected, MidpointRounding.AwayFromZero), "ewe", "ewes")} may lamb in these days.");
        return lines.ToImmutable();
    }

    private static ImmutableArray<string> JobsThen(SeasonPlan plan, Absence away)
    {
        ImmutableArray<string> lines =
        [
            .. JobEntries.Of(plan)
                .Where(e => e.Job.Date is { } d && d >= away.From && d <= away.To)
                .Select(e => $"{Days.Short(e.ShownOn)}: {e.Title}{e.GroupWords}."),
        ];
        return lines.IsEmpty ? ["None beyond the rounds and the feeding."] : lines;
    }

    private static ImmutableArray<Text> ToWatch(SeasonPlan plan, Absence away)
    {
        var ewes = plan.Ewes.OrderBy(e => e.Due?.Likely ?? LocalDate.MaxIsoValue).Select(e => (Ewe: e, Why: Why(e, away))).Where(e => e.Why.Length > 0).ToArray();
        if (ewes.Length == 0)
        {
            return [Ink.Text("None named. Watch for any ewe apart from the others.", Fount.Body)];
        }

        var named = ewes.Take(MostEwes).Select(e => new Text(
            [
                new Run(e.Ewe.Ewe.Name is { } name ? $"{name} " : "", Fount.BodyBold),
                new Run(e.Ewe.Ewe.Tag, Who.TagStyle, Whole: true),
                new Run($": {e.Why}.", Fount.Body),
            ]));
        return ewes.Length <= MostEwes
            ? [.. named]
            : [.. named, Ink.Text($"And {Amounts.Count(ewes.Length - MostEwes, "ewe", "ewes")} more: each day of the log names those due.", Fount.BodyBold)];
    }

    private static string Why(EwePlan ewe, Absence away)
    {
        var reasons = new List<string>();
        if (ewe.Due is { } due && due.Earliest <= away.To && due.Latest >= away.From)
        {
            reasons.Add($"may lamb from {Days.Short(due.Earliest)}");
        }

        if (ewe.IsCarrying && ewe.Litter >= 3)
        {
            reasons.Add($"carries {ewe.Litter.ToString(CultureInfo.InvariantCulture)}");
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
