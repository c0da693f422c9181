using System.Collections.Immutable;
using System.Globalization;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;

namespace PaperFlock.Sheets.EweCards;

/// <summary>Back of a card: her lambing, ticked and ringed rather than written wherever that will do.</summary>
internal static class CardBack
{
    private static readonly TextStyle Caption = Fount.Label with { Size = 9.5 };

    public static Element Of(Stationery stationery, CardFormat format, EwePlan ewe, string code) =>

        // A row for each of four or five lambs leaves no room for the two boxes to tick.
        new FirstThatFits([Card(stationery, format, ewe, code, ticks: true), Card(stationery, format, ewe, code, ticks: false)]);

    private static Element Card(Stationery stationery, CardFormat format, EwePlan ewe, string code, bool ticks)
    {
        var row = stationery.BarnRow;
        var lambs = Math.Max(ewe.Litter, 2);
        var title = Title(stationery, ewe, format.Content.Width);
        var body = ewe.Standing is Standing.Empty or Standing.LeftOut
            ? new Column([title, Ink.Text("Not in lamb. Notes:", Fount.Label), new LogLines(row)], 5)
            : new Column(
            [
                title,
                Lambing(row),
                Lambs(stationery, row, lambs),
                After(stationery, row, ticks),
                new LogLines(row, AtLeast: 0),
            ],
            5);
        return CardFrame.Of(stationery, format, body, $"{code} back", $"back of the card of {ewe.Ewe.CallName}");
    }

    private static Row Title(Stationery stationery, EwePlan ewe, double width)
    {
        var tagWidth = stationery.Measurer.WidthOf(ewe.Ewe.Tag, Fount.Tag) + 2;
        return new Row(
            [
                new RowCell(
                    Track.Share(),
                    Ink.Largest(
                        ewe.Ewe.Name ?? "no name", stationery.Measurer, width - tagWidth - 8, TextAlign.Left,
                        new TextStyle(Face.TextBold, 14), new TextStyle(Face.TextBold, 12), new TextStyle(Face.TextBold, 10)),
                    VerticalAlign.Bottom),
                new RowCell(Track.Fixed(tagWidth), Ink.Text(ewe.Ewe.Tag, Fount.Tag, TextAlign.Right), VerticalAlign.Bottom),
            ],
            8);
    }

    private static Table Lambing(double row) => new(
        [Track.Share(1.1), Track.Share(), Track.Share(1.1)],
        [],
        [
            new TableRow([Captioned("lambed, day"), Captioned("time (24 h)"), Captioned("help: ring one\nnone · hand · vet")], row),
        ]);

    private static Table Lambs(Stationery stationery, double row, int lambs) => new(
        [Track.Fixed(18), Track.Share(1.15), Track.Share(1.05), Track.Share(0.9), Track.Fixed(stationery.BarnTick + 10), Track.Fixed(stationery.BarnTick + 10)],
        [
            new TableRow(
            [
                Head(""), Head("ring"), Head("alive?"), Head("kg"), Head("sucked"), Head("navel"),
            ]),
        ],
        [
            .. Enumerable.Range(1, lambs).Select(n => new TableRow(
                [
                    Ink.Cell(n.ToString(CultureInfo.InvariantCulture), Fount.BodyBold, TextAlign.Centre),
                    Ring("ram  ewe"), Ring("yes  no"), Ink.Blank(), Ink.Cell(Ink.Tick(stationery.BarnTick)), Ink.Cell(Ink.Tick(stationery.BarnTick)),
                ],
                row)),
        ]);

    private static Table After(Stationery stationery, double row, bool ticks) => new(
        [Track.Share(), Track.Share()],
        [],
        [
            new TableRow([Captioned("lambing pen in, day and time"), Captioned("pen out, day and time")], row),
            .. !ticks ? [] : ImmutableArray.Create(new TableRow(
                [
                    Ink.Cell(Ink.TickWith(stationery.BarnTick, Ink.Text("milk from both teats", Caption))),
                    Ink.Cell(Ink.TickWith(stationery.BarnTick, Ink.Text("cleansed", Caption))),
                ],
                row)),
            new TableRow([Captioned("use her again? ring: yes · no · why", 2)], row),
        ]);

    /// <summary>Its caption stands at the top left of the box; the rest is to write in.</summary>
    private static TableCell Captioned(string words, int span = 1) =>
        new(Ink.Text(words, Caption with { Size = 9 }, leading: 1.1), span, VerticalAlign.Top, Edges.Of(3, 2));

    private static TableCell Head(string words) => new(Ink.Text(words, Caption with { Size = 9 }, TextAlign.Centre), Padding: Edges.Of(1, 2));

    private static TableCell Ring(string words) => new(Ink.Text(words, Fount.Body, TextAlign.Centre), Padding: Edges.Of(1, 2));
}
