using System.Collections.Immutable;
using System.Globalization;
using PaperFlock.Flocks;
using PaperFlock.Languages;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Sheets.House;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.CallSheet;

/// <summary>By the telephone: where this is, whom to ring, what to say, and what will not wait.</summary>
internal sealed class CallSheetMaker : ISheetMaker
{
    public const string KindWord = "calls";
    private const string Code = "CALL";

    /// <summary>Limits that are the vet's to give, for these ewes and this place.</summary>
    // For the translator: A speaker who knows the work must check this before it is used: people and animals are hurt if it is wrong.
    private static string[] ForTheVet(Language language) =>
    [
        language.Say("Too long straining with nothing to show is"), language.Say("Too long since the waters broke is"), language.Say("Too thin is a condition score of"), language.Say("A lamb is too cold at"), language.Say("Signed, day"),
    ];

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(Stationery stationery)
    {
        var head = stationery.Head(stationery.Language.Say("Call sheet"), Code, stationery.Language.Say("Ring early. Nobody minds being woken; everybody minds a dead ewe."));
        var body = new Column(
            [
                Place(stationery.Flock.Holding, stationery.Language),
                Contacts(stationery),
                WhatToSay(stationery.Language),
                Ink.Ruled(stationery.Language.Say("Rung: whom, when, what was said"), Fount.Heading, stationery.TableRow, 2),
                new PageBreak(),
                SignTable.Of(stationery.Language),
                Vet(stationery),
                new LogLines(stationery.TableRow, AtLeast: 0),
            ],
            12);

        // Both pages are fronts, to pin side by side: nobody turns a pinned sheet over.
        var sides = Binder.FrontsOnly(stationery, Code, body, stationery.UprightDesign(Code, head));
        return [new Sheet(Kind, Code, stationery.Language.Say("Call sheet"), SheetUse.Pinned, sides)];
    }

    private static Box Place(Holding holding, Language language)
    {
        var lines = new List<Element> { Ink.Text(language.Say($"This place is {holding.Name}"), Fount.Heading) };
        if (holding.Postcode is { } postcode)
        {
            lines.Add(Ink.BoldThen(language.Say("Postcode"), postcode, Fount.Body));
        }

        if (holding.GridReference is { } grid)
        {
            lines.Add(Ink.BoldThen(language.Say("Grid reference"), language.Say($"{grid}: say \u201c{Spoken.Of(grid, language)}\u201d"), Fount.Body));
        }

        lines.Add(Ink.BoldThen(language.Say("Latitude, longitude"), Coordinates(holding, language), Fount.Body));
        lines.Add(Ink.BoldThen(language.Say("To find it"), "__________________________________________________________", Fount.Body) with { Leading = 1.6 });
        return new Box(new Column([.. lines], 3), Edges.Of(9, 7), Lines.Section);
    }

    private static string Coordinates(Holding holding, Language language)
    {
        var latitude = Math.Abs(holding.Latitude).ToString("0.0####", CultureInfo.InvariantCulture) + "\u00a0" + (holding.Latitude < 0 ? language.SayAs("compass", "S") : language.SayAs("compass", "N"));
        var longitude = Math.Abs(holding.Longitude).ToString("0.0####", CultureInfo.InvariantCulture) + "\u00a0" + (holding.Longitude < 0 ? language.SayAs("compass", "W") : language.SayAs("compass", "E"));
        return $"{latitude}, {longitude}";
    }

    private static Element Contacts(Stationery stationery)
    {
        var phone = Fount.Cap(Face.TextBold, 7);
        var contacts = stationery.Flock.Holding.Contacts;
        ImmutableArray<TableRow> rows = contacts.IsEmpty
            ? [.. Enumerable.Range(1, 4).Select(n => new TableRow([Ink.Cell(n.ToString(CultureInfo.InvariantCulture), Fount.Heading, TextAlign.Centre), Ink.Cell(stationery.Language.Say("who"), Fount.Label), Ink.Cell(stationery.Language.Say("number"), Fount.Label)], Mm(15)))]
            :
            [
                .. contacts.Select((c, i) => new TableRow(
                    [
                        Ink.Cell((i + 1).ToString(CultureInfo.InvariantCulture), Fount.Heading, TextAlign.Centre),
                        Ink.Cell(Ink.Column(0, Ink.Text(c.Role, Fount.BodyBold), Ink.Text(string.Join(", ", new[] { c.Name, c.Note }.OfType<string>()), Fount.Body))),
                        Ink.Cell(c.Phone?.Replace(' ', '\u00a0') ?? "", phone, TextAlign.Right),
                    ],
                    Mm(15))),
            ];
        return Ink.Column(
            4,
            Ink.Text(stationery.Language.Say("Ring in this order; no answer in five rings, ring the next"), Fount.Heading),
            new Table([Track.Fixed(Mm(10)), Track.Share(), Track.Share(1.15)], [], rows));
    }

    // For the translator: A speaker who knows the work must check this before it is used: people and animals are hurt if it is wrong.
    private static Column WhatToSay(Language language) => Ink.Column(
        3,
        Ink.Text(language.Say("What to say"), Fount.Heading),
        Ink.BoldThen("1", language.Say("I am ____, at the place above, minding the sheep. This is urgent, or this can wait till morning."), Fount.Body),
        Ink.BoldThen("2", language.Say("The ewe is ____ (name and tag from her card), carrying ____, due ____."), Fount.Body),
        Ink.BoldThen("3", language.Say("I see ____, since ____ o\u2019clock. I have done ____."), Fount.Body),
        Ink.BoldThen("4", language.Say("I want you to come / to tell me what to do. Please say it back to me, and I will say it back to you."), Fount.Body));

    private static NeedSpace Vet(Stationery stationery) => new(
        Ink.Column(
            3,
            Ink.Text(stationery.Language.Say("For the vet to fill in, with the keeper, before anybody needs it"), Fount.Heading),
            new Table(
                [Track.Share(1.3), Track.Share()],
                [],
                [
                    .. ForTheVet(stationery.Language).Select(q => new TableRow([Ink.Cell(q, Fount.Body), Ink.Blank()], stationery.TableRow)),
                ])),
        Mm(60));
}
