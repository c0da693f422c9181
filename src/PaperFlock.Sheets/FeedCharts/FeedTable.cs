using System.Collections.Immutable;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.FeedCharts;

/// <summary>Weeks down, feeds across. The kilograms for the group are the largest thing on the page.</summary>
internal static class FeedTable
{
    private const double HeadHeight = 30;
    private const double TallestRow = 66;
    private static readonly string[] OneFeed = ["morning"];
    private static readonly string[] TwoFeeds = ["morning", "evening"];
    private static readonly string[] ThreeFeeds = ["morning", "midday", "evening"];
    private static readonly string[] FourFeeds = ["morning", "midday", "dusk", "late"];

    /// <param name="room">Height in points the table may fill.</param>
    public static Table Of(Stationery stationery, TroughGroup group, double room)
    {
        var feeds = FeedNames(group.Weeks.Max(w => w.FeedsPerDay));
        var rowHeight = Math.Clamp((room - HeadHeight) / group.Weeks.Length, Mm(12.5), TallestRow);
        var capital = Math.Clamp((rowHeight - 17) / PointsPerMillimetre, Fount.CapAtOneMetre * 0.86, 10);
        var rows = group.Weeks.Select((w, i) => Row(stationery, group, i, feeds.Length, rowHeight, Fount.Cap(Face.TextBold, capital)));
        return new Table(Columns(feeds.Length), [Head(feeds)], [.. rows], HeadRule: Lines.Section) { Name = "weeks" };
    }

    private static ImmutableArray<Track> Columns(int feeds) =>
    [
        Track.Fixed(Mm(33)),
        Track.Fixed(Mm(25)),
        .. Enumerable.Repeat(Track.Share(feeds > 2 ? 1 : 1.25), feeds),
        Track.Fixed(Mm(29)),
        Track.Share(1.1),
    ];

    private static TableRow Head(string[] feeds) => new(
        [
            Ink.Cell("week of", Fount.Label),
            Ink.Cell("each ewe\na day", Fount.Label, TextAlign.Centre),
            .. feeds.Select(f => Ink.Cell($"{f}, for all of them", Fount.LabelBold, TextAlign.Centre)),
            Ink.Cell("needs · gets\nMJ a day", Fount.Label, TextAlign.Centre),
            Ink.Cell("what to know", Fount.Label),
        ],
        HeadHeight);

    private static TableRow Row(Stationery stationery, TroughGroup group, int index, int columns, double height, TextStyle large)
    {
        var week = group.Weeks[index];
        return new TableRow(
            [
                Ink.Cell(Days.Short(week.WeekBeginning), new TextStyle(Face.TextBold, 15)),
                Ink.Cell(stationery.Amounts.Ration(week.KgPerEwePerDay), Fount.Lead, TextAlign.Centre),
                .. Enumerable.Range(0, columns).Select(f => FeedCell(stationery, week, f, large)),
                Ink.Cell($"{Amounts.Figure(week.Need.Energy, "0.0")} · {Amounts.Figure(week.Supply.Energy, "0.0")}", Fount.Lead, TextAlign.Centre),
                Ink.Cell(FeedWords.Notes(stationery, group, index)),
            ],
            height,
            Name: $"week of {Days.Short(week.WeekBeginning)}");
    }

    private static TableCell FeedCell(Stationery stationery, FeedWeek week, int feed, TextStyle large)
    {
        if (feed >= week.FeedsPerDay)
        {
            return Ink.Cell("none", Fount.Body, TextAlign.Centre);
        }

        var (first, second) = stationery.Amounts.FeedParts(week.KgPerFeedForGroup);
        var scoops = week.ScoopsPerFeed is { } s ? Amounts.Scoops(s) : stationery.Flock.Feeds.Concentrate.Scoop is null ? null : "weigh it";
        var small = string.Join(" · ", new[] { second, scoops }.OfType<string>());
        return new TableCell(
            new Column(
                [
                    Ink.Text(first, large, TextAlign.Centre, 1.0),
                    .. small.Length > 0 ? [(Element)Ink.Text(small, Fount.Body, TextAlign.Centre, 1.0)] : Array.Empty<Element>(),
                ]),
            Padding: Edges.Of(3, 1));
    }

    private static string[] FeedNames(int feeds) => feeds switch
    {
        1 => OneFeed,
        2 => TwoFeeds,
        3 => ThreeFeeds,
        4 => FourFeeds,
        _ => [.. Enumerable.Range(1, feeds).Select(n => $"feed {n}")],
    };
}
