using System.Collections.Immutable;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Sheets.RoundLog;

/// <summary>Two or three days a page, each with its rounds, its ewes to watch and its line for tomorrow.</summary>
internal static class HeavyDays
{
    public const double Spacing = 9;

    private static readonly TextStyle Large = new(Face.TextBold, 17);

    /// <param name="room">Height of the page's body in points: what the days leave is ruled for notes.</param>
    public static Element Of(Stationery stationery, LogPage page, double room)
    {
        var days = page.Days.Select(d => Day(stationery, d)).ToArray();
        var left = room - days.Sum(d => Heights.Of(d, stationery.UprightWidth, stationery) + Spacing);
        var notes = left > (2 * stationery.BarnRow) + 20
            ? [Ink.Notes(stationery.BarnRow, stationery.Language)]
            : ImmutableArray<Element>.Empty;
        return new Column([.. days.Select(d => (Element)new KeepTogether(d)), .. notes], Spacing);
    }

    public static Column Day(Stationery stationery, RoundDay day) => new(
        [
            DayHead(stationery, day),
            new Table(
                RoundTable.Columns(stationery),
                [RoundTable.Head(stationery)],
                [.. day.Times.Select(t => RoundTable.Row(stationery, t)), RoundTable.LeftForTomorrow(stationery)]),
        ],
        3)
    { Name = Dated.Name(stationery.Language.Days.Short(day.Date), day.Date) };

    private static Row DayHead(Stationery stationery, RoundDay day) => new(
        [
            new RowCell(stationery.DayColumn(Layout.Units.Mm(42), Large), Ink.Text(stationery.Language.Days.Short(day.Date), Large), VerticalAlign.Bottom),
            new RowCell(Track.Fixed(Layout.Units.Mm(38)), Ink.Text(LogWords.Sun(day, stationery.Language), Fount.Label), VerticalAlign.Bottom),
            new RowCell(Track.Share(), new Text(LogWords.Watch(stationery.Plan, day.Date, Fount.Label), TextAlign.Right, 1.2), VerticalAlign.Bottom),
        ],
        6);
}
