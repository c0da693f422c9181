using System.Collections.Immutable;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;

namespace PaperFlock.Sheets.EweCards;

/// <summary>Her concentrate week by week; weeks with the same amount are said once.</summary>
internal static class CardRation
{
    private const int Columns = 4;

    public static Element? Of(Stationery stationery, EwePlan ewe, double width)
    {
        var group = stationery.Plan.TroughGroups.FirstOrDefault(g => g.Name == ewe.TroughGroup);
        if (group is null)
        {
            return null;
        }

        var steps = Steps(group);
        if (steps.Length <= 2)
        {
            return Ink.Text(Sentence(stationery, group, steps), Fount.Label, leading: 1.25);
        }

        var rows = ImmutableArray.CreateBuilder<TableRow>();

        // Her weeks all begin on the same weekday, so it stands once.
        foreach (var chunk in steps.Take(Columns * 2).Chunk(Columns))
        {
            rows.Add(Row(stationery.Language.Say($"from {stationery.Language.Days.Weekday(group.FirstDue.DayOfWeek)}"), chunk.Select(s => stationery.Language.Days.DayMonth(s.WeekBeginning)), Fount.Label));
            rows.Add(Row(stationery.Language.Say($"{stationery.Amounts.RationUnit} a day"), chunk.Select(s => stationery.Amounts.RationFigure(s.KgPerEwePerDay)), Fount.LabelBold));
        }

        return new Table([Track.Fixed(width * 0.22), .. Enumerable.Repeat(Track.Share(), Columns)], [], rows.ToImmutable());
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

    private static string Sentence(Stationery stationery, TroughGroup group, ImmutableArray<FeedWeek> steps)
    {
        var amounts = steps.Select((s, i) => i == 0
            ? stationery.Language.Say($"{stationery.Amounts.Ration(s.KgPerEwePerDay)} a day from {stationery.Language.Days.Short(s.WeekBeginning)}")
            : stationery.Language.Say($"{stationery.Amounts.Ration(s.KgPerEwePerDay)} from {stationery.Language.Days.Short(s.WeekBeginning)}"));
        var feeds = group.Weeks
            .Where((w, i) => i == 0 || w.FeedsPerDay != group.Weeks[i - 1].FeedsPerDay)
            .Select((w, i) => i == 0
                ? stationery.Language.Count(w.FeedsPerDay, "feed", "feeds")
                : stationery.Language.Say($"{Amounts.Figure(w.FeedsPerDay, "0")} from {stationery.Language.Days.Short(w.WeekBeginning)}"));
        return stationery.Language.Say($"Fed with {group.Name}: {string.Join(", ", amounts)}, in {string.Join(", ", feeds)}.");
    }

    private static TableRow Row(string caption, IEnumerable<string> values, TextStyle style)
    {
        var cells = values.Select(v => Ink.Cell(v, style, TextAlign.Centre)).ToList();
        while (cells.Count < Columns)
        {
            cells.Add(Ink.Blank());
        }

        return new TableRow([Ink.Cell(caption, Fount.Label), .. cells]);
    }
}
