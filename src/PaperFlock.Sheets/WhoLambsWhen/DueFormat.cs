namespace PaperFlock.Sheets.WhoLambsWhen;

/// <summary>Sizes of the chart on one way of holding the paper, and its pages.</summary>
internal sealed class DueFormat
{
    private const string Lead = "Diamond: her likeliest day. 9 in 10 lamb inside the box, 1 in 10 outside. When she has lambed, strike her through.";
    private const double Gap = 4;
    private const int StandingDays = 5 * 7;

    private static readonly double LeastRow = Mm(7);
    private static readonly double StripHeight = Mm(14);
    // A back may go through the printer with any of its edges last.
    private static readonly Edges Margins = Edges.Of(PageSetup.UnprintableFoot, PageSetup.UnprintableFoot);
    private static readonly Edges Padding = Edges.Of(3, 0);

    private readonly SheetContext _context;
    private readonly int _rows;
    private readonly Size _paper;
    private readonly double _width;
    private readonly double _room;
    private readonly TextStyle _tag;
    private readonly ImmutableArray<Track> _columns;

    /// <param name="rows">All of the sheet's: columns are as wide on every page.</param>
    public DueFormat(SheetContext context, ImmutableArray<DueRow> rows, Size paper)
    {
        (_context, _rows, _paper, _width) = (context, rows.Length, paper, paper.Width - Margins.Horizontal);
        _tag = new TextStyle(Face.Mono, IsStanding ? 9 : 10);
        var measurer = context.Measurer;
        var figures = Mm(IsStanding ? 11 : 14);
        _columns =
        [
            Track.Fixed(Math.Min(Mm(IsStanding ? 26 : 40), rows.Max(r => measurer.WidthOf(Name(r), TypeScale.BodyBold)) + 8) + Who.NumberWidth),
            Track.Fixed(rows.Max(r => measurer.WidthOf(r.Ewe.Ewe.Tag, _tag)) + 7),
            Track.Fixed(Math.Max(measurer.WidthOf("lambs", TypeScale.Label), rows.Max(r => measurer.WidthOf(Dots.Of(r.Ewe), Dots.Beside(TypeScale.Body)))) + 7),
            Track.Share(),
            context.Columns.FitDays(Mm(22), TypeScale.BodyBold),
            Track.Fixed(figures),
            Track.Fixed(figures),
        ];
        var head = Heights.Of(Head("DUE", "Who lambs when"), _width, context) + Heights.Of(PageDesigns.ControlLine(context, "DUE", _width), _width, context) + (2 * Gap);
        _room = paper.Height - Margins.Vertical - head - DueAxis.Height - StripHeight - 2;
    }

    private bool IsStanding => _paper.Width < _paper.Height;

    /// <summary>Whether the days of a page can be told from each other.</summary>
    public bool Holds(ImmutableArray<DueRow> page) => DueDays.Of(page, _context.Print.WeekStarts).Count <= StandingDays;

    /// <summary>Ewes page by page, about as many on each.</summary>
    public ImmutableArray<ImmutableArray<DueRow>> Split(ImmutableArray<DueRow> rows)
    {
        var pages = 1 + (int)(rows.Sum(Least) / _room);
        while (true)
        {
            ImmutableArray<ImmutableArray<DueRow>> split = [.. rows.Chunk((rows.Length + pages - 1) / pages).Select(page => page.ToImmutableArray())];
            if (split.All(page => page.Sum(Least) <= _room) || pages >= rows.Length)
            {
                return split;
            }

            pages++;
        }
    }

    public PageDesign Design(string code, string title) =>
        new(_paper, Margins, Margins, Head(code, title), null, PageDesigns.ControlLine(_context, code, _width), Gap);

    public Element Page(ImmutableArray<DueRow> page)
    {
        var days = DueDays.Of(page, _context.Print.WeekStarts);
        var least = page.Select(Least).ToArray();
        var more = Math.Max(0, _room - least.Sum()) / page.Length;
        var table = new Table(
            _columns,
            [
                new TableRow(
                [
                    Label("ewe"), Label("tag"), Label("lambs", TextAlign.Centre),
                    new TableCell(DueAxis.Of(days), Padding: Edges.None),
                    Label("lambed", TextAlign.Centre), Label("alive", TextAlign.Centre), Label("dead", TextAlign.Centre),
                ]),
            ],
            [.. page.Select((row, i) => Row(row, days, Math.Max(least[i], Math.Min(_context.WriteIn.BarnRow, least[i] + more))))])
        { Name = "ewes", RowHeaders = true };
        return Block.Column(0, table, Strip(days), Block.Notes(_context.WriteIn.BarnRow));
    }

    private static Column Head(string code, string title) => Block.Column(
        2,
        new Row(
            [
                new RowCell(Track.Share(), Block.Text(title, TypeScale.SmallerTitle, leading: 1.1) with { Tag = StructureTag.Heading(1) }),
                new RowCell(Track.Share(0.3), Block.Text(code, TypeScale.Code, TextAlign.Right)),
            ]),
        Block.Text(Lead, TypeScale.Body));

    private static TableCell Label(string words, TextAlign align = TextAlign.Left) => new(Block.Text(words, TypeScale.Label, align), Padding: Padding);

    private static string Name(DueRow row) => row.Ewe.Ewe.Name ?? "no name";

    private double Least(DueRow row) => Math.Max(LeastRow, Heights.Of(NameOf(row), _columns[0].Points - Padding.Horizontal - Who.NumberWidth, _context) + 2);

    private static Text NameOf(DueRow row) => Block.Text(Name(row), TypeScale.BodyBold, leading: 1.15);

    private TableRow Row(DueRow row, DueDays days, double height)
    {
        var result = row.Ewe.Ewe.Lambing;
        return new TableRow(
            [
                new TableCell(new Row([new RowCell(Track.Fixed(Who.NumberWidth), Who.RowNumber(row.Number), VerticalAlign.Middle), new RowCell(Track.Share(), Struck(row, NameOf(row)))]), Padding: Padding),
                new TableCell(Struck(row, new Text([new Run(row.Ewe.Ewe.Tag, _tag, Whole: true)])), Padding: Padding),
                new TableCell(new Text([new Run(row.Ewe.IsScanned ? Dots.Of(row.Ewe) : "?", row.Ewe.IsScanned ? Dots.Beside(TypeScale.Body) : TypeScale.Body)], TextAlign.Centre, 1), Padding: Padding),
                new TableCell(DueBar.Of(row, days, height - 1), Padding: Edges.None, Align: VerticalAlign.Top),
                Written(Ended(row.Ewe)),
                Written(result.Alive?.ToString(CultureInfo.InvariantCulture)),
                Written(result.Dead?.ToString(CultureInfo.InvariantCulture)),
            ],
            height,
            // She keeps her row, so that lines on older paper stay where they were; for the record she is struck from it.
            About: row.Ewe.IsLost ? NotContent.Instance : RowKey.Of(row.Ewe.Ewe));
    }

    private static string? Ended(EwePlan ewe) => ewe.Standing switch
    {
        Standing.Gone => "gone",
        Standing.LostLambs => "lost them",
        _ => ewe.Ewe.Lambed is { } day ? DateText.Short(day) : null,
    };

    private static Element Struck(DueRow row, Text words) => row.Ewe.Standing != Standing.ToLamb ? new Layers(words, Over: DueBar.Strike()) : words;

    /// <summary>On the paper in the shed it is written in by hand.</summary>
    private static TableCell Written(string? words) =>
        words is null ? Block.Blank() : new TableCell(Block.Text(words, TypeScale.BodyBold, TextAlign.Centre) with { About = NotContent.Instance }, Padding: Padding);

    /// <summary>A ewe more or less changes it everywhere a little: no reason to print the leaf again.</summary>
    private Row Strip(DueDays days)
    {
        var all = PencilLists.WhoLambsWhen(_context.Plan).Length;
        return new Row(
            [
                new RowCell(Track.Fixed(_columns[..3].Sum(c => c.Points)), Block.Text("Number: the most ewes to expect, 9 nights in 10, in the night after that evening; no number, none. Black: the higher, the more.", TypeScale.Label, leading: 1.15), VerticalAlign.Middle),
                new RowCell(Track.Share(), NightStrip.Of(days, _context.Plan.Lambing, StripHeight)),
                new RowCell(Track.Fixed(_columns[4..].Sum(c => c.Points)), Block.Text(Others(all - _rows, _context.Plan.Ewes.Length - all), TypeScale.Label, TextAlign.Centre, 1.15), VerticalAlign.Middle),
            ])
        { About = NotContent.Instance };
    }

    /// <summary>Whoever sees a few must not take them for all.</summary>
    private static string Others(int later, int empty) => (later, empty) switch
    {
        (0, 0) => "",
        (0, _) => English.Plural(empty, "1 ewe is not in lamb and not listed.", $"{empty} ewes are not in lamb and not listed."),
        (_, 0) => English.Plural(later, "1 more is in lamb, due on other days.", $"{later} more are in lamb, due on other days."),
        _ => $"Not listed: {later} due on other days, {empty} not in lamb.",
    };
}
