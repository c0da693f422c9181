namespace PaperFlock.Sheets.EweCards;

/// <summary>Back of a card: her lambing, ticked and ringed rather than written wherever that will do.</summary>
internal static class CardBack
{
    private static readonly int[] AfterRows = [3, 2, 1];
    private static readonly TextStyle HeadStyle = TypeScale.Label with { Size = 9 };
    private static readonly Edges HeadPadding = Edges.Of(1, 2);
    private static readonly TextStyle Caption = TypeScale.Label with { Size = 9.5 };

    public static Element Of(SheetContext context, CardFormat format, EwePlan ewe, string code)
    {
        var row = context.WriteIn.BarnRow;
        var lambs = Math.Max(ewe.Litter, 2);
        var titles = new Element[] { Title(context, ewe, format.Content.Width), TitleInTwo(context, ewe, format.Content.Width) };
        if (ewe.Standing is Standing.Empty or Standing.LeftOut or Standing.LostLambs)
        {
            return new FirstThatFits(titles.Select(title =>
                Framed(new Column([title, Block.Text("Not in lamb. Notes:", TypeScale.Label), new LogLines(row)], 5))));
        }

        // Many lambs or a long name leave no room for all that comes after lambing; a row for a lamb gives way last.
        var shorter = AfterRows.SelectMany(after => titles.Select(title => (title, lambs, after))).Append((titles[^1], Math.Min(lambs, 3), AfterRows[^1]));
        return new FirstThatFits(shorter.Select(s => Lambed(s.Item1, s.Item2, s.Item3)));

        Element Lambed(Element title, int rows, int after) =>
            Framed(new Column([title, Lambing(row), Lambs(context, row, rows), After(context, row, after), new LogLines(row, AtLeast: 0)], 5));

        Element Framed(Column body) => CardFrame.Of(context, format, body, code, "back", $"back of the card of {ewe.Ewe.CallName}");
    }

    /// <summary>A long name has the width to itself.</summary>
    private static Column TitleInTwo(SheetContext context, EwePlan ewe, double width) => Block.Column(
        0,
        Block.Largest(ewe.Ewe.Name ?? "no name", context.Measurer, width, TextAlign.Left, new TextStyle(Face.TextBold, 12), new TextStyle(Face.TextBold, 10)),
        Block.Text(ewe.Ewe.Tag, TypeScale.Tag));

    private static Row Title(SheetContext context, EwePlan ewe, double width)
    {
        var tagWidth = context.Measurer.WidthOf(ewe.Ewe.Tag, TypeScale.Tag) + 2;
        var name = Block.Largest(
            ewe.Ewe.Name ?? "no name", context.Measurer, width - tagWidth - 8, TextAlign.Left,
            new TextStyle(Face.TextBold, 14), new TextStyle(Face.TextBold, 12), new TextStyle(Face.TextBold, 10));
        return Block.Ends(name, Block.Text(ewe.Ewe.Tag, TypeScale.Tag, TextAlign.Right), tagWidth, 8, rightAt: VerticalAlign.Bottom);
    }

    private static Table Lambing(double row) => new(
        [Track.Share(1.1), Track.Share(), Track.Share(1.1)],
        [],
        [
            new TableRow([Captioned("lambed, day"), Captioned("time (24 h)"), Captioned("help: ring one\nnone · hand · vet")], row),
        ]);

    private static Table Lambs(SheetContext context, double row, int lambs) => new(
        [Track.Fixed(18), Track.Share(1.15), Track.Share(1.05), Track.Share(0.9), TickColumn(context, "sucked"), TickColumn(context, "navel")],
        [
            new TableRow([Head(""), Head("ring"), Head("alive?"), Head("kg"), Head("sucked"), Head("navel")]),
        ],
        [
            .. Enumerable.Range(1, lambs).Select(n => new TableRow(
                [
                    Block.Cell(n.ToString(CultureInfo.InvariantCulture), TypeScale.BodyBold, TextAlign.Centre),
                    Ring("ram  ewe"), Ring("yes  no"), Block.Blank(), Block.Cell(Block.Tick(context.WriteIn.BarnTick)), Block.Cell(Block.Tick(context.WriteIn.BarnTick)),
                ],
                row)),
        ])
    { RowHeaders = true };

    private static Track TickColumn(SheetContext context, string head) =>
        context.Columns.Fit(context.WriteIn.BarnTick + 10, HeadStyle, HeadPadding.Horizontal, head);

    /// <param name="rows">How many there is room for; the boxes to tick give way first.</param>
    private static Table After(SheetContext context, double row, int rows) => new(
        [Track.Share(), Track.Share()],
        [],
        [
            new TableRow([Captioned("lambing pen in, day and time"), Captioned("pen out, day and time")], row),
            .. rows < 3 ? [] : ImmutableArray.Create(new TableRow(
                [
                    Block.Cell(Block.TickWith(context.WriteIn.BarnTick, Block.Text("milk from both teats", Caption))),
                    Block.Cell(Block.TickWith(context.WriteIn.BarnTick, Block.Text("cleansed", Caption))),
                ],
                row)),
            .. rows < 2 ? [] : ImmutableArray.Create(new TableRow([Captioned("use her again? ring: yes · no · why", 2)], row)),
        ]);

    /// <summary>Its caption stands at the top left of the box; the rest is to write in.</summary>
    private static TableCell Captioned(string words, int span = 1) =>
        new(Block.Text(words, Caption with { Size = 9 }, leading: 1.1), span, VerticalAlign.Top, Edges.Of(3, 2));

    private static TableCell Head(string words) => new(Block.Text(words, HeadStyle, TextAlign.Centre), Padding: HeadPadding);

    private static TableCell Ring(string words) => new(Block.Text(words, TypeScale.Body, TextAlign.Centre), Padding: Edges.Of(1, 2));
}
