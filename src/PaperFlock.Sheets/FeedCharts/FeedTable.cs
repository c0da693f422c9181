using System.Collections.Immutable;
using PaperFlock.Flocks;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.Issues;
using PaperFlock.Sheets.Theme;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.FeedCharts;

/// <summary>Weeks down, feeds across. The kilograms for the group are the largest thing on the page.</summary>
internal static class FeedTable
{
    private const double HeadHeight = 28;
    private const double TallestRow = 66;
    private static readonly double LeastRow = Mm(11);

    /// <summary>Points that keep the tails of the words below the kilograms off the line of the next row.</summary>
    private const double RoomForTails = 2.4;
    private static readonly TextStyle WeekOf = new(Face.TextBold, 15);
    private const double FeedShare = 1;
    private const double NotesShare = 1.5;

    /// <summary>With more of them the amounts would be too small to read from where the bins are; all feeds of a day are alike.</summary>
    private const int MostFeedColumns = 6;

    /// <param name="room">Height in points the table may fill.</param>
    public static Table Of(SheetContext context, TroughGroup group, double room)
    {
        // One page with notes in small words is better than a second page that nobody pins up.
        var large = Fitted(context, group, room, TypeScale.Body);
        return Over(context, large, room) <= 0 ? large : Fitted(context, group, room, TypeScale.Label);
    }

    /// <summary>Rows with many words grow, so the others give way until all fit or can give no more.</summary>
    private static Table Fitted(SheetContext context, TroughGroup group, double room, TextStyle notes)
    {
        var feeds = FeedNames(group.Weeks.Max(w => w.FeedsPerDay));
        var weeks = Shown(context, group).Length;
        var rowHeight = Math.Clamp((room - HeadHeight) / weeks, LeastRow, TallestRow);
        var table = Of(context, group, feeds, rowHeight, notes);
        for (var over = Over(context, table, room); over > 0 && rowHeight > LeastRow; over = Over(context, table, room))
        {
            rowHeight = Math.Max(LeastRow, rowHeight - (over / weeks) - 0.5);
            table = Of(context, group, feeds, rowHeight, notes);
        }

        return table;
    }

    /// <summary>Points by which it is too high.</summary>
    private static double Over(SheetContext context, Table table, double room) => Heights.Of(table, context.SidewaysBody.Width, context) - room;

    private static Table Of(SheetContext context, TroughGroup group, string[] feeds, double rowHeight, TextStyle notes)
    {
        var columns = Columns(context, feeds.Length);
        var width = FeedWidth(context, columns);
        var amounts = group.Weeks.Where(w => w.KgPerFeedForGroup > 0).Select(w => FeedAmount.Of(context, w, feeds.Length)).ToArray();
        var large = Large(context, group, CapitalIn(rowHeight), width);
        var gap = FeedAmount.Gap(amounts, large, context);
        if (gap > 0)
        {
            // Smaller amounts have smaller tails, and no fewer words below them.
            large = Large(context, group, CapitalIn(rowHeight - gap), width);
            gap = FeedAmount.Gap(amounts, large, context);
        }

        var rows = Shown(context, group).Select(i => Row(context, group, i, feeds.Length, rowHeight, week => FeedCell(context, week, feeds.Length, large, gap), notes));
        return new Table(columns, [Head(feeds)], [.. rows], HeadRule: Lines.Section, LeastCarried: TypeScale.LeastRows) { Name = "weeks", RowHeaders = true };
    }

    /// <summary>Indices of the weeks printed: those to come. The last stays, since it is the ration of a ewe that is late; a season that is over is shown whole.</summary>
    private static ImmutableArray<int> Shown(SheetContext context, TroughGroup group)
    {
        var plan = context.Plan;
        return
        [
            .. Enumerable.Range(0, group.Weeks.Length)
                .Where(i => i + 1 == group.Weeks.Length || plan.AsOf > plan.To || group.Weeks[i].WeekBeginning.PlusDays(6) >= plan.AsOf),
        ];
    }

    private static ImmutableArray<Track> Columns(SheetContext context, int feeds) =>
    [
        context.DayColumn(Mm(36), WeekOf),
        Track.Fixed(Mm(30)),
        .. Enumerable.Repeat(Track.Share(FeedShare), feeds),
        Track.Fixed(Mm(29)),
        Track.Share(feeds > 2 ? NotesShare * 0.8 : NotesShare),
    ];

    /// <summary>Width of a feed's column, in points.</summary>
    private static double FeedWidth(SheetContext context, ImmutableArray<Track> columns) =>
        (context.SidewaysBody.Width - columns.Sum(c => c.Points)) * FeedShare / columns.Sum(c => c.Shares);

    /// <summary>Millimetres of capital height that leave a row room for the scoops below the kilograms.</summary>
    private static double CapitalIn(double rowHeight) =>
        (rowHeight - FeedAmount.SmallStyle.Size - RoomForTails - 0.8) / FeedAmount.LargeLeading * TypeScale.CapOfEm / PointsPerMillimetre;

    /// <summary>As tall as the row and the widest amount of the chart allow.</summary>
    private static TextStyle Large(SheetContext context, TroughGroup group, double capital, double width)
    {
        var one = TypeScale.Cap(Face.TextBold, 1);
        var widest = group.Weeks.Max(w => context.Measurer.WidthOf(context.Amounts.FeedParts(w.KgPerFeedForGroup).First, one));
        return TypeScale.Cap(Face.TextBold, Math.Min(Math.Clamp(capital, 4.7, 10), (width - 10) / widest));
    }

    private static TableRow Head(string[] feeds) => new(
        [
            Block.Cell("week of", TypeScale.Label),
            Block.Cell("each ewe\na day", TypeScale.Label, TextAlign.Centre),
            .. feeds.Select(f => Block.Cell($"{f}, for all of them", TypeScale.LabelBold, TextAlign.Centre)),
            Block.Cell("needs · gets\nMJ a day", TypeScale.Label, TextAlign.Centre),
            Block.Cell("what to know", TypeScale.Label),
        ],
        HeadHeight);

    private static TableRow Row(SheetContext context, TroughGroup group, int index, int columns, double height, Func<FeedWeek, TableCell> amount, TextStyle notes)
    {
        var week = group.Weeks[index];
        return new TableRow(
            [
                Block.Cell(DateText.Short(week.WeekBeginning), WeekOf),
                Block.Cell(EachEwe(context, week)),
                .. Enumerable.Range(0, columns).Select(f => f < week.FeedsPerDay && week.KgPerFeedForGroup > 0
                    ? amount(week)
                    : Block.Cell("none", TypeScale.Body, TextAlign.Centre)),
                Block.Cell($"{Amounts.Figure(week.Need.Energy, "0.0")} · {Amounts.Figure(week.Supply.Energy, "0.0")}", TypeScale.Lead, TextAlign.Centre),
                Block.Cell(FeedText.Notes(context, group, index, notes)),
            ],
            height,
            Name: index + 1 < group.Weeks.Length
                ? Dated.Name($"week of {DateText.Short(week.WeekBeginning)}", week.WeekBeginning.PlusDays(6))
                : $"week of {DateText.Short(week.WeekBeginning)}");
    }

    /// <summary>What she gets, and below it what the other method would give her.</summary>
    private static Column EachEwe(SheetContext context, FeedWeek week)
    {
        var (other, name) = context.Flock.Feeds.Method == FeedMethod.PerLamb
            ? (week.EnergyBalanceKg, "by energy")
            : (week.PerLambKg, "per lamb");
        return Block.Column(
            0,
            Block.Text(context.Amounts.Ration(week.KgPerEwePerDay), TypeScale.Lead, TextAlign.Centre, 1.1),
            Block.Text($"{name} {context.Amounts.RationFigure(other)}", TypeScale.Label, TextAlign.Centre, 1.0));
    }

    private static TableCell FeedCell(SheetContext context, FeedWeek week, int columns, TextStyle large, double gap) =>
        new(FeedAmount.Of(context, week, columns).Element(large, gap), Padding: new Edges(3, 0, 3, RoomForTails));

    private static string[] FeedNames(int feeds) => feeds switch
    {
        1 => ["morning"],
        2 => ["morning", "evening"],
        3 => ["morning", "midday", "evening"],
        4 => ["morning", "midday", "dusk", "late"],
        > MostFeedColumns => ["each feed"],
        _ => [.. Enumerable.Range(1, feeds).Select(n => $"feed {n}")],
    };
}
