using System.Collections.Immutable;
using PaperFlock.Languages;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;
using PaperFlock.Sheets.Issues;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.RoundLog;

/// <summary>One day a page while they lamb: the rounds, then a row for each lambing, with the likeliest ewes printed in.</summary>
internal static class LambingDayLog
{
    private const int Printed = 5;

    public static Element Of(Stationery stationery, RoundDay day)
    {
        var expected = LogWords.Expected(stationery.Plan, day.Date, Printed);
        ImmutableArray<TableRow> rows = [.. expected.Select(e => Row(stationery, e)), Row(stationery, null)];
        return new Column(
            [
                HeavyDays.Day(stationery, day),
                Ink.Column(
                    4,
                    new Row(
                        [
                            new RowCell(Track.Share(), Ink.Text(stationery.Language.Say("Lambings"), Fount.Heading), VerticalAlign.Bottom),
                            new RowCell(Track.Share(2), Ink.Text(stationery.Language.Say("her card has room for the rest"), Fount.Label, TextAlign.Right), VerticalAlign.Bottom),
                        ]),
                    new Table(Columns(stationery), [Head(stationery.Language)], rows) { Name = "lambings" }),
                new LogLines(stationery.BarnRow, AtLeast: 0),
            ],
            9)
        { Name = Dated.Name(stationery.Language.Days.Short(day.Date), day.Date) };
    }

    private static ImmutableArray<Track> Columns(Stationery stationery)
    {
        var tick = stationery.Column(Math.Max(stationery.BarnTick + 6, Mm(14)), Fount.Label, stationery.Language.Say("all sucked"), stationery.Language.Say("navels"));
        return [Track.Fixed(Mm(58)), stationery.Column(Mm(19), Fount.Label, stationery.Language.Say("lambed at")), stationery.Column(Mm(26), Fount.Label, stationery.Language.Say("ring lambs alive")), tick, tick, Track.Share()];
    }

    private static TableRow Head(Language language) => new(
    [
        Ink.Cell(language.Say("ewe"), Fount.Label), Ink.Cell(language.Say("lambed at"), Fount.Label, TextAlign.Centre), Ink.Cell(language.Say("ring lambs alive"), Fount.Label, TextAlign.Centre),
        Ink.Cell(language.Say("all sucked"), Fount.Label, TextAlign.Centre), Ink.Cell(language.Say("navels"), Fount.Label, TextAlign.Centre), Ink.Cell(language.Say("pen, help given, anything wrong"), Fount.Label),
    ]);

    private static TableRow Row(Stationery stationery, EwePlan? ewe)
    {
        var tick = Ink.Cell(Ink.Tick(stationery.BarnTick));
        Element? who = ewe is null ? null : Ink.Column(
            0,
            new Text([new Run(ewe.Ewe.Name ?? stationery.Language.Say("no name"), Fount.BodyBold), new Run(ewe.IsScanned ? "  " + stationery.Language.Say($"scanned {ewe.Litter}") : "  " + stationery.Language.Say("not scanned"), Fount.Label)]),
            Ink.Text(ewe.Ewe.Tag, new TextStyle(Face.Mono, 10)));
        return new TableRow(
            [Ink.Cell(who), Ink.Blank(), Ink.Cell(Ink.LambsToRing(ewe?.Litter ?? 0), Fount.Body, TextAlign.Centre), tick, tick, Ink.Blank()],
            stationery.BarnRow,
            Name: ewe?.Ewe.CallName);
    }
}
