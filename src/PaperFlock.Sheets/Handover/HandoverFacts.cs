using PaperFlock.Sheets.Jobs;

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
        lines.AddRange(plan.Feeding.On(away.From).Where(t => t.Kind is not null).Select(t => Fed(context, t, away)));

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

    private static string Fed(SheetContext context, Trough trough, Absence away)
    {
        var chart = context.Plan.Feeding.Charts.First(c => c.Code == trough.Chart);
        var ewes = English.Count(trough.Ewes.Length, "ewe", "ewes");
        var rows = chart.Rows.Where(r => r.From <= away.To && r.To >= away.From && !r.FedAt.IsEmpty)
            .Select((r, i) => (i == 0 ? "" : $"from {DateText.Short(r.From)} ") + $"{context.Amounts.Plain(r.KgPerFeedByHeads[trough.Ewes.Length - 1])} at {string.Join(" and ", r.FedAt.Select(FeedText.Time))}").ToList();
        return $"{FeedText.Trough(trough, context.Plan.Feeding)}: {ewes}, {(rows.Count == 0 ? "forage alone" : $"all of them together {string.Join(", ", rows)}")}. Chart {chart.Code}.";
    }

    private static ImmutableArray<string> JobsThen(SeasonPlan plan, Absence away)
    {
        ImmutableArray<string> lines =
        [
            .. JobLine.Of(plan, plan.Jobs)
                .Where(e => e.Job.Date is { } d && d >= away.From && d <= away.To)
                .Select(e => $"{DateText.Short(e.Job.ShownOn)}: {e.Title}."),
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
