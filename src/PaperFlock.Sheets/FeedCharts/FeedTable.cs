using System.Collections.Immutable;
using PaperFlock.Flocks;
using PaperFlock.Languages;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;
using PaperFlock.Sheets.Issues;
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
    public static Table Of(Stationery stationery, TroughGroup group, double room)
    {
        // One page with notes in small words is better than a second page that nobody pins up.
        var large = Fitted(stationery, group, room, Fount.Body);
        return Over(stationery, large, room) <= 0 ? large : Fitted(stationery, group, room, Fount.Label);
    }

    /// <summary>Rows with many words grow, so the others give way until all fit or can give no more.</summary>
    private static Table Fitted(Stationery stationery, TroughGroup group, double room, TextStyle notes)
    {
        var feeds = FeedNames(group.Weeks.Max(w => w.FeedsPerDay), stationery.Language);
        var weeks = Shown(stationery, group).Length;
        var rowHeight = Math.Clamp((room - HeadHeight) / weeks, LeastRow, TallestRow);
        var table = Of(stationery, group, feeds, rowHeight, notes);
        for (var over = Over(stationery, table, room); over > 0 && rowHeight > LeastRow; over = Over(stationery, table, room))
        {
            rowHeight = Math.Max(LeastRow, rowHeight - (over / weeks) - 0.5);
            table = Of(stationery, group, feeds, rowHeight, notes);
        }

        return table;
    }

    /// <summary>Points by which it is too high.</summary>
    private static double Over(Stationery stationery, Table table, double room) => Heights.Of(table, stationery.SidewaysBody.Width, stationery) - room;

    private static Table Of(Stationery stationery, TroughGroup group, string[] feeds, double rowHeight, TextStyle notes)
    {
        var columns = Columns(stationery, feeds.Length);
        var width = FeedWidth(stationery, columns);
        var amounts = group.Weeks.Where(w => w.KgPerFeedForGroup > 0).Select(w => FeedAmount.Of(stationery, w, feeds.Length)).ToArray();
        var large = Large(stationery, group, CapitalIn(rowHeight), width);
        var gap = FeedAmount.Gap(amounts, large, stationery);
        if (gap > 0)
        {
            // Smaller amounts have smaller tails, and no fewer words below them.
            large = Large(stationery, group, CapitalIn(rowHeight - gap), width);
            gap = FeedAmount.Gap(amounts, large, stationery);
        }

        var rows = Shown(stationery, group).Select(i => Row(stationery, group, i, feeds.Length, rowHeight, week => FeedCell(stationery, week, feeds.Length, large, gap), notes));
        return new Table(columns, [Head(feeds, stationery.Language)], [.. rows], HeadRule: Lines.Section, LeastCarried: Fount.LeastRows) { Name = "weeks" };
    }

    /// <summary>Indices of the weeks printed: those to come. The last stays, since it is the ration of a ewe that is late; a season that is over is shown whole.</summary>
    private static ImmutableArray<int> Shown(Stationery stationery, TroughGroup group)
    {
        var plan = stationery.Plan;
        return
        [
            .. Enumerable.Range(0, group.Weeks.Length)
                .Where(i => i + 1 == group.Weeks.Length || plan.AsOf > plan.To || group.Weeks[i].WeekBeginning.PlusDays(6) >= plan.AsOf),
        ];
    }

    private static ImmutableArray<Track> Columns(Stationery stationery, int feeds) =>
    [
        stationery.DayColumn(Mm(36), WeekOf),
        Track.Fixed(Mm(30)),
        .. Enumerable.Repeat(Track.Share(FeedShare), feeds),
        Track.Fixed(Mm(29)),
        Track.Share(feeds > 2 ? NotesShare * 0.8 : NotesShare),
    ];

    /// <summary>Width of a feed's column, in points.</summary>
    private static double FeedWidth(Stationery stationery, ImmutableArray<Track> columns) =>
        (stationery.SidewaysBody.Width - columns.Sum(c => c.Points)) * FeedShare / columns.Sum(c => c.Shares);

    /// <summary>Millimetres of capital height that leave a row room for the scoops below the kilograms.</summary>
    private static double CapitalIn(double rowHeight) =>
        (rowHeight - FeedAmount.SmallStyle.Size - RoomForTails - 0.8) / FeedAmount.LargeLeading * Fount.CapOfEm / PointsPerMillimetre;

    /// <summary>As tall as the row and the widest amount of the chart allow.</summary>
    private static TextStyle Large(Stationery stationery, TroughGroup group, double capital, double width)
    {
        var one = Fount.Cap(Face.TextBold, 1);
        var widest = group.Weeks.Max(w => stationery.Measurer.WidthOf(stationery.Amounts.FeedParts(w.KgPerFeedForGroup).First, one));
        return Fount.Cap(Face.TextBold, Math.Min(Math.Clamp(capital, 4.7, 10), (width - 10) / widest));
    }

    private static TableRow Head(string[] feeds, Language language) => new(
        [
            Ink.Cell(language.Say("week of"), Fount.Label),
            Ink.Cell(language.Say("each ewe\na day"), Fount.Label, TextAlign.Centre),
            .. feeds.Select(f => Ink.Cell(language.Say($"{f}, for all of them"), Fount.LabelBold, TextAlign.Centre)),
            Ink.Cell(language.Say("needs · gets\nMJ a day"), Fount.Label, TextAlign.Centre),
            Ink.Cell(language.Say("what to know"), Fount.Label),
        ],
        HeadHeight);

    private static TableRow Row(Stationery stationery, TroughGroup group, int index, int columns, double height, Func<FeedWeek, TableCell> amount, TextStyle notes)
    {
        var week = group.Weeks[index];
        return new TableRow(
            [
                Ink.Cell(stationery.Language.Days.Short(week.WeekBeginning), WeekOf),
                Ink.Cell(EachEwe(stationery, week)),
                .. Enumerable.Range(0, columns).Select(f => f < week.FeedsPerDay && week.KgPerFeedForGroup > 0
                    ? amount(week)
                    : Ink.Cell(stationery.Language.Say("none"), Fount.Body, TextAlign.Centre)),
                Ink.Cell($"{Amounts.Figure(week.Need.Energy, "0.0")} · {Amounts.Figure(week.Supply.Energy, "0.0")}", Fount.Lead, TextAlign.Centre),
                Ink.Cell(FeedWords.Notes(stationery, group, index, notes)),
            ],
            height,
            Name: index + 1 < group.Weeks.Length
                ? Dated.Name(stationery.Language.Say($"week of {stationery.Language.Days.Short(week.WeekBeginning)}"), week.WeekBeginning.PlusDays(6))
                : stationery.Language.Say($"week of {stationery.Language.Days.Short(week.WeekBeginning)}"));
    }

    /// <summary>What she gets, and below it what the other method would give her.</summary>
    private static Column EachEwe(Stationery stationery, FeedWeek week)
    {
        var (other, name) = stationery.Flock.Feeds.Method == FeedMethod.PerLamb
            ? (week.EnergyBalanceKg, stationery.Language.Say("by energy"))
            : (week.PerLambKg, stationery.Language.Say("per lamb"));
        return Ink.Column(
            0,
            Ink.Text(stationery.Amounts.Ration(week.KgPerEwePerDay), Fount.Lead, TextAlign.Centre, 1.1),
            Ink.Text($"{name} {stationery.Amounts.RationFigure(other)}", Fount.Label, TextAlign.Centre, 1.0));
    }

    private static TableCell FeedCell(Stationery stationery, FeedWeek week, int columns, TextStyle large, double gap) =>
        new(FeedAmount.Of(stationery, week, columns).Element(large, gap), Padding: new Edges(3, 0, 3, RoomForTails));

    private static string[] FeedNames(int feeds, Language language) => feeds switch
    {
        1 => [language.Say("morning")],
        2 => [language.Say("morning"), language.Say("evening")],
        3 => [language.Say("morning"), language.Say("midday"), language.Say("evening")],
        4 => [language.Say("morning"), language.Say("midday"), language.Say("dusk"), language.SayAs("round", "late")],
        > MostFeedColumns => [language.Say("each feed")],
        _ => [.. Enumerable.Range(1, feeds).Select(n => language.Say($"feed {n}"))],
    };
}
