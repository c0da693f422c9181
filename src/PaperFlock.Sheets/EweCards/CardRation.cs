using System.Collections.Immutable;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.Theme;

namespace PaperFlock.Sheets.EweCards;

/// <summary>Her concentrate week by week; weeks with the same amount are said once.</summary>
internal static class CardRation
{
    private const int Columns = 4;

    public static Element? Of(SheetContext context, EwePlan ewe, double width)
    {
        var group = context.Plan.TroughGroups.FirstOrDefault(g => g.Name == ewe.TroughGroup);
        if (group is null)
        {
            return null;
        }

        var steps = Steps(group);
        if (steps.Length <= 2)
        {
            return Block.Text(Sentence(context, group, steps), TypeScale.Label, leading: 1.25);
        }

        var rows = ImmutableArray.CreateBuilder<TableRow>();

        // Her weeks all begin on the same weekday, so it stands once.
        foreach (var chunk in steps.Take(Columns * 2).Chunk(Columns))
        {
            rows.Add(Row($"from {DateText.Weekday(group.FirstDue.DayOfWeek)}", chunk.Select(s => DateText.DayMonth(s.WeekBeginning)), TypeScale.Label));
            rows.Add(Row($"{context.Amounts.RationUnit} a day", chunk.Select(s => context.Amounts.RationFigure(s.KgPerEwePerDay)), TypeScale.LabelBold));
        }

        return new Table([Track.Fixed(width * 0.22), .. Enumerable.Repeat(Track.Share(), Columns)], [], rows.ToImmutable()) { RowHeaders = true };
    }

    /// <summary>The weeks in which her amount or the number of feeds changes.</summary>
    private static ImmutableArray<FeedWeek> Steps(TroughGroup group)
    {
        var steps = ImmutableArray.CreateBuilder<FeedWeek>();
        foreach (var week in group.Weeks)
        {
            if (steps.Count == 0 || steps[^1].KgPerEwePerDay != week.KgPerEwePerDay)
            {
                steps.Add(week);
            }
        }

        return steps.ToImmutable();
    }

    private static string Sentence(SheetContext context, TroughGroup group, ImmutableArray<FeedWeek> steps)
    {
        var amounts = steps.Select((s, i) => i == 0
            ? $"{context.Amounts.Ration(s.KgPerEwePerDay)} a day from {DateText.Short(s.WeekBeginning)}"
            : $"{context.Amounts.Ration(s.KgPerEwePerDay)} from {DateText.Short(s.WeekBeginning)}");
        var feeds = group.Weeks
            .Where((w, i) => i == 0 || w.FeedsPerDay != group.Weeks[i - 1].FeedsPerDay)
            .Select((w, i) => i == 0
                ? English.Count(w.FeedsPerDay, "feed", "feeds")
                : $"{Amounts.Figure(w.FeedsPerDay, "0")} from {DateText.Short(w.WeekBeginning)}");
        return $"Fed with {group.Name}: {string.Join(", ", amounts)}, in {string.Join(", ", feeds)}.";
    }

    private static TableRow Row(string caption, IEnumerable<string> values, TextStyle style)
    {
        var cells = values.Select(v => Block.Cell(v, style, TextAlign.Centre)).ToList();
        while (cells.Count < Columns)
        {
            cells.Add(Block.Blank());
        }

        return new TableRow([Block.Cell(caption, TypeScale.Label), .. cells]);
    }
}
