namespace PaperFlock.Sheets.CallSheet;

/// <summary>By the telephone: where this is, whom to ring, what to say, and what will not wait.</summary>
internal static class CallSheetMaker
{
    public static readonly SheetDefinition Definition = new("calls", "CALL", SheetUse.Pinned)
    {
        Lives = "by the telephone",
        Purpose = "where this is, whom to ring, what to say; what is urgent and what is not",
        IsForSitter = true,
        IsFrontsOnly = true,
        Make = Make,
    };

    /// <summary>Limits that are the vet's to give, for these ewes and this place.</summary>
    private static string[] ForTheVet() =>
    [
        "Too long straining with nothing to show is", "Too long since the waters broke is", "Too thin is a condition score of", "A lamb is too cold at", "Signed, day",
    ];

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var body = new Column(
            [
                Place(context.Flock.Holding),
                Contacts(context),
                WhatToSay(),
                Block.Ruled("Rung: whom, when, what was said", TypeScale.Heading, context.WriteIn.TableRow, 2),
                new PageBreak(),
                SignTable.Of(),
                Vet(context),
                new LogLines(context.WriteIn.TableRow, AtLeast: 0),
            ],
            12);

        return [Binder.Upright(context, Definition, "Call sheet", "Ring early. Nobody minds being woken; everybody minds a dead ewe.", body)];
    }

    private static Box Place(Holding holding)
    {
        var lines = new List<Element> { Block.Heading($"This place is {holding.Name}") };
        if (holding.Postcode is { } postcode)
        {
            lines.Add(Block.BoldThen("Postcode", postcode, TypeScale.Body));
        }

        if (holding.GridReference is { } grid)
        {
            lines.Add(Block.BoldThen("Grid reference", $"{grid}: say \u201c{Spoken.Of(grid)}\u201d", TypeScale.Body));
        }

        lines.Add(Block.BoldThen("Latitude, longitude", Coordinates(holding), TypeScale.Body));
        lines.Add(Block.BoldThen("To find it", "__________________________________________________________", TypeScale.Body) with { Leading = 1.6 });
        return new Box(new Column([.. lines], 3), Edges.Of(9, 7), Lines.Section);
    }

    private static string Coordinates(Holding holding)
    {
        var latitude = Math.Abs(holding.Latitude).ToString("0.0####", CultureInfo.InvariantCulture) + "\u00a0" + (holding.Latitude < 0 ? "S" : "N");
        var longitude = Math.Abs(holding.Longitude).ToString("0.0####", CultureInfo.InvariantCulture) + "\u00a0" + (holding.Longitude < 0 ? "W" : "E");
        return $"{latitude}, {longitude}";
    }

    private static Element Contacts(SheetContext context)
    {
        var phone = TypeScale.Cap(Face.TextBold, 7);
        var contacts = context.Flock.Holding.Contacts;
        ImmutableArray<TableRow> rows = contacts.IsEmpty
            ? [.. Enumerable.Range(1, 4).Select(n => new TableRow([Block.Cell(n.ToString(CultureInfo.InvariantCulture), TypeScale.Heading, TextAlign.Centre), Block.Cell("who", TypeScale.Label), Block.Cell("number", TypeScale.Label)], Mm(15)))]
            :
            [
                .. contacts.Select((c, i) => new TableRow(
                    [
                        Block.Cell((i + 1).ToString(CultureInfo.InvariantCulture), TypeScale.Heading, TextAlign.Centre),
                        Block.Cell(Block.Column(0, Block.Text(c.Role, TypeScale.BodyBold), Block.Text(string.Join(", ", new[] { c.Name, c.Note }.OfType<string>()), TypeScale.Body))),
                        Block.Cell(c.Phone?.Replace(' ', '\u00a0') ?? "", phone, TextAlign.Right),
                    ],
                    Mm(15),
                    About: RowKey.Named(RowKind.Contact, c.Role))),
            ];
        return Block.Column(
            4,
            Block.Heading("Ring in this order; no answer in five rings, ring the next"),
            new Table([Track.Fixed(Mm(10)), Track.Share(), Track.Share(1.15)], [], rows));
    }

    private static Column WhatToSay() => Block.Column(
        3,
        Block.Heading("What to say"),
        Block.List(
            3,
            [
                Say("1", "I am ____, at the place above, minding the sheep. This is urgent, or this can wait till morning."),
                Say("2", "The ewe is ____ (name and tag from her card), carrying ____, due ____."),
                Say("3", "I see ____, since ____ o\u2019clock. I have done ____."),
                Say("4", "I want you to come / to tell me what to do. Please say it back to me, and I will say it back to you."),
            ]));

    private static Text Say(string number, string words) => Block.BoldThen(number, words, TypeScale.Body) with { Tag = StructureTag.ListItem };

    private static NeedSpace Vet(SheetContext context) => new(
        Block.Column(
            3,
            Block.Heading("For the vet to fill in, with the keeper, before anybody needs it"),
            new Table(
                [Track.Share(1.3), Track.Share()],
                [],
                [
                    .. ForTheVet().Select(q => new TableRow([Block.Cell(q, TypeScale.Body), Block.Blank()], context.WriteIn.TableRow)),
                ])
            { RowHeaders = true }),
        Mm(60));
}
