namespace PaperFlock.Sheets.CallSheet;

/// <summary>By the telephone: where this is, whom to ring, what to say, and what will not wait; behind it the cautions.</summary>
internal static class CallSheetMaker
{
    public static readonly SheetDefinition Definition = new("calls", "CALL", SheetUse.Pinned)
    {
        Lives = "by the telephone",
        Purpose = "where this is, whom to ring, what to say, how soon; overleaf the cautions",
        IsForSitter = true,
        Make = Make,
    };

    private const string Blank = "____________________";

    /// <summary>Lines so far apart that a hand can write on them.</summary>
    private const double ToWriteOn = 1.8;

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var body = new Column(
            [
                Place(context.Flock.Holding),
                Contacts(context),
                WhatToSay(),
                SignTable.Of(context),
                new KeepTogether(SafeText.Of()),
                Block.Ruled("Rung: whom, when, what was said", TypeScale.Heading, context.WriteIn.TableRow, 2),
            ],
            6);

        return [Binder.Upright(context, Definition, "Call sheet", "If in doubt, ring. Nobody minds being woken.", body)];
    }

    private static Box Place(Holding holding) => new(
        Block.Column(
            2,
            Block.Heading($"This place is {holding.Name}"),
            Line(("Postcode", holding.Postcode), ("Grid reference", holding.GridReference), ("Latitude, longitude", Coordinates(holding))),
            Line(("Signal", holding.Signal), ("Nearest landline", null)),
            Line(("How to find it", null))),
        Edges.Of(7, 4),
        Lines.Section);

    private static Text Line(params (string What, string? Where)[] parts) => new(
        [.. parts.SelectMany(p => new[] { new Run($"{p.What} ", TypeScale.BodyBold), new Run($"{p.Where ?? (parts.Length == 1 ? Blank + Blank : Blank)}     ", TypeScale.Body) })], Leading: parts.Any(p => p.Where is null) ? ToWriteOn : 1.35);

    private static string? Coordinates(Holding holding) =>
        holding.Location is { } place ? $"{Degrees(place.Latitude)}\u00a0{(place.Latitude < 0 ? "S" : "N")}, {Degrees(place.Longitude)}\u00a0{(place.Longitude < 0 ? "W" : "E")}" : null;

    private static string Degrees(decimal degrees) => Amounts.Figure(Math.Abs(degrees), "0.0####");

    private static Column Contacts(SheetContext context)
    {
        var phone = TypeScale.Cap(Face.TextBold, 6.4);
        var contacts = ToRing(context);
        return Block.Column(
            3,
            Block.Heading("Ring the one named below; no answer in five rings, ring the next"),
            new Table(
                [Track.Fixed(Mm(10)), Track.Share(), Track.Share(1.15)],
                [],
                [
                    .. contacts.Select((c, i) => new TableRow(
                        [
                            Block.Cell((i + 1).ToString(CultureInfo.InvariantCulture), TypeScale.Heading, TextAlign.Centre),
                            Block.Cell(Block.Column(0, Block.Text(c.Role, TypeScale.BodyBold, leading: 1.1), Block.Text(string.Join(", ", new[] { c.Name, c.Note }.OfType<string>()), TypeScale.Body, leading: 1.1))),
                            new TableCell(Block.Text(c.Phone?.Replace(' ', '\u00a0') ?? "", phone, TextAlign.Right, 1), Padding: Edges.Of(4, 0)),
                        ],
                        Mm(11),
                        About: RowKey.Named(RowKind.Contact, c.Role))),
                ]));
    }

    /// <summary>Whoever is in charge is not rung: a sitter in a sitter's pack, else the keeper. A vet has a row, given or not.</summary>
    internal static ImmutableArray<Contact> ToRing(SheetContext context)
    {
        var flock = context.Flock;
        var sitters = flock.KeeperDays.Away.Where(a => context.OnlyDays is not null && context.Concerns(a.From, a.To)).ToList();
        bool IsInCharge(Contact c) => context.OnlyDays is null
            ? People.IsKeeper(c, flock)
            : sitters.Any(s => (s.Sitter is { } name && People.Same(c.Name, name)) || (s.Phone is { } phone && People.Same(c.Phone, phone)));
        var others = flock.Holding.Contacts.Where(c => !IsInCharge(c)).ToImmutableArray();
        Contact[] wanted = [.. others.Any(c => c.IsVet) ? [] : new[] { new Contact("Vet", null, null, null) }, .. others.IsEmpty ? [new Contact("Neighbour", null, null, null)] : Array.Empty<Contact>()];
        return [.. others, .. wanted];
    }

    private static Column WhatToSay() => Block.Column(
        3,
        Block.Heading("What to say"),
        Block.Text(
            "I am ____, minding the sheep at the place above. It is urgent / it can wait till morning. The ewe is ____, carrying ____, due ____. I see ____, since ____ o\u2019clock. "
                + "I have done ____. Please come / tell me what to do. I will say it back to you.",
            TypeScale.Body,
            leading: 1.25));
}
