using System.Collections.Immutable;
using System.Globalization;
using PaperFlock.Languages;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;

namespace PaperFlock.Sheets.EweCards;

/// <summary>Back of a card: her lambing, ticked and ringed rather than written wherever that will do.</summary>
internal static class CardBack
{
    private static readonly int[] AfterRows = [3, 2, 1];
    private static readonly TextStyle HeadStyle = Fount.Label with { Size = 9 };
    private static readonly Edges HeadPadding = Edges.Of(1, 2);
    private static readonly TextStyle Caption = Fount.Label with { Size = 9.5 };

    public static Element Of(Stationery stationery, CardFormat format, EwePlan ewe, string code)
    {
        var row = stationery.BarnRow;
        var lambs = Math.Max(ewe.Litter, 2);
        var titles = new Element[] { Title(stationery, ewe, format.Content.Width), TitleInTwo(stationery, ewe, format.Content.Width) };
        if (ewe.Standing is Standing.Empty or Standing.LeftOut)
        {
            return new FirstThatFits(titles.Select(title =>
                Framed(new Column([title, Ink.Text(stationery.Language.Say("Not in lamb. Notes:"), Fount.Label), new LogLines(row)], 5))));
        }

        // Many lambs or a long name leave no room for all that comes after lambing; a row for a lamb gives way last.
        var shorter = AfterRows.SelectMany(after => titles.Select(title => (title, lambs, after))).Append((titles[^1], Math.Min(lambs, 3), AfterRows[^1]));
        return new FirstThatFits(shorter.Select(s => Lambed(s.Item1, s.Item2, s.Item3)));

        Element Lambed(Element title, int rows, int after) =>
            Framed(new Column([title, Lambing(stationery.Language, row), Lambs(stationery, row, rows), After(stationery, row, after), new LogLines(row, AtLeast: 0)], 5));

        Element Framed(Column body) => CardFrame.Of(stationery, format, body, code, stationery.Language.Say("back"), $"back of the card of {ewe.Ewe.CallName}");
    }

    /// <summary>A long name has the width to itself.</summary>
    private static Column TitleInTwo(Stationery stationery, EwePlan ewe, double width) => Ink.Column(
        0,
        Ink.Largest(ewe.Ewe.Name ?? stationery.Language.Say("no name"), stationery.Measurer, width, TextAlign.Left, new TextStyle(Face.TextBold, 12), new TextStyle(Face.TextBold, 10)),
        Ink.Text(ewe.Ewe.Tag, Fount.Tag));

    private static Row Title(Stationery stationery, EwePlan ewe, double width)
    {
        var tagWidth = stationery.Measurer.WidthOf(ewe.Ewe.Tag, Fount.Tag) + 2;
        return new Row(
            [
                new RowCell(
                    Track.Share(),
                    Ink.Largest(
                        ewe.Ewe.Name ?? stationery.Language.Say("no name"), stationery.Measurer, width - tagWidth - 8, TextAlign.Left,
                        new TextStyle(Face.TextBold, 14), new TextStyle(Face.TextBold, 12), new TextStyle(Face.TextBold, 10)),
                    VerticalAlign.Bottom),
                new RowCell(Track.Fixed(tagWidth), Ink.Text(ewe.Ewe.Tag, Fount.Tag, TextAlign.Right), VerticalAlign.Bottom),
            ],
            8);
    }

    private static Table Lambing(Language language, double row) => new(
        [Track.Share(1.1), Track.Share(), Track.Share(1.1)],
        [],
        [
            new TableRow([Captioned(language.Say("lambed, day")), Captioned(language.Say("time (24 h)")), Captioned(language.Say("help: ring one\nnone · hand · vet"))], row),
        ]);

    private static Table Lambs(Stationery stationery, double row, int lambs) => new(
        [Track.Fixed(18), Track.Share(1.15), Track.Share(1.05), Track.Share(0.9), TickColumn(stationery, stationery.Language.Say("sucked")), TickColumn(stationery, stationery.Language.Say("navel"))],
        [
            new TableRow(
            [
                Head(""), Head(stationery.Language.Say("ring")), Head(stationery.Language.Say("alive?")), Head("kg"), Head(stationery.Language.Say("sucked")), Head(stationery.Language.Say("navel")),
            ]),
        ],
        [
            .. Enumerable.Range(1, lambs).Select(n => new TableRow(
                [
                    Ink.Cell(n.ToString(CultureInfo.InvariantCulture), Fount.BodyBold, TextAlign.Centre),
                    Ring(stationery.Language.Say("ram  ewe")), Ring(stationery.Language.Say("yes  no")), Ink.Blank(), Ink.Cell(Ink.Tick(stationery.BarnTick)), Ink.Cell(Ink.Tick(stationery.BarnTick)),
                ],
                row)),
        ]);

    private static Track TickColumn(Stationery stationery, string head) =>
        stationery.Column(stationery.BarnTick + 10, HeadStyle, HeadPadding.Horizontal, head);

    /// <param name="rows">How many there is room for; the boxes to tick give way first.</param>
    private static Table After(Stationery stationery, double row, int rows) => new(
        [Track.Share(), Track.Share()],
        [],
        [
            new TableRow([Captioned(stationery.Language.Say("lambing pen in, day and time")), Captioned(stationery.Language.Say("pen out, day and time"))], row),
            .. rows < 3 ? [] : ImmutableArray.Create(new TableRow(
                [
                    Ink.Cell(Ink.TickWith(stationery.BarnTick, Ink.Text(stationery.Language.Say("milk from both teats"), Caption))),
                    Ink.Cell(Ink.TickWith(stationery.BarnTick, Ink.Text(stationery.Language.Say("cleansed"), Caption))),
                ],
                row)),
            .. rows < 2 ? [] : ImmutableArray.Create(new TableRow([Captioned(stationery.Language.Say("use her again? ring: yes · no · why"), 2)], row)),
        ]);

    /// <summary>Its caption stands at the top left of the box; the rest is to write in.</summary>
    private static TableCell Captioned(string words, int span = 1) =>
        new(Ink.Text(words, Caption with { Size = 9 }, leading: 1.1), span, VerticalAlign.Top, Edges.Of(3, 2));

    private static TableCell Head(string words) => new(Ink.Text(words, HeadStyle, TextAlign.Centre), Padding: HeadPadding);

    private static TableCell Ring(string words) => new(Ink.Text(words, Fount.Body, TextAlign.Centre), Padding: Edges.Of(1, 2));
}
