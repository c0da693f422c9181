namespace PaperFlock.Sheets.RoundLog;

/// <summary>Days that have the same places: rounds go down and places across, where there is room for them; else each day has places down and rounds across.</summary>
/// <param name="columns">What is counted on these days; those of a place stand together.</param>
/// <param name="width">Points across a side.</param>
internal sealed class LogTable(SheetContext context, ImmutableArray<LogColumn> columns, double width)
{
    private static readonly TextStyle Small = TypeScale.Label with { Size = 9.5 };
    private static readonly TextStyle Unit = TypeScale.Label with { Size = 9 };
    private static readonly TextStyle Time = new(Face.TextBold, 14);
    private static readonly double TimeWidth = Mm(17);
    private static readonly double WalkedWidth = Mm(18);
    private static readonly double Count = Mm(10);
    private static readonly double Heads = Mm(9);
    private static readonly double NameWidth = Mm(36);

    private readonly string _forage = FeedText.Forage(context.Flock.Feeds.Forage.Kind).ToLowerInvariant();

    private readonly Dictionary<(string Chart, LocalDate Day), ImmutableArray<Round>> _fed = [];

    /// <summary>The rows of each day, as low as what is in them: they are tried on more than one side.</summary>
    private readonly Dictionary<LocalDate, ImmutableArray<TableRow>> _rows = [];

    /// <summary>The columns of each place.</summary>
    private readonly ImmutableArray<ImmutableArray<LogColumn>> _places = [.. columns.GroupBy(c => c.Place).Select(g => g.ToImmutableArray())];

    private readonly ImmutableArray<double> _widths = Widths(context, columns);

    private readonly TableCell _amountCell = new(Block.Text(context.Amounts.AtFeedMark, Unit, TextAlign.Right, 1.1), Align: VerticalAlign.Bottom, Padding: Edges.Of(2, 1));

    private double Tick => context.WriteIn.BarnTick + Mm(2);

    public bool LiesAcross => Spare >= 0;

    /// <summary>Rows to write in that a day takes.</summary>
    public int RowsOf(RoundDay day) => LiesAcross ? day.Times.Length + 1 : (columns.Length + 6) * day.Times.Chunk(RoundsAcross).Count();

    /// <param name="days">One alone where places go down.</param>
    public Element Of(IEnumerable<RoundDay> days, double row) => LiesAcross ? Across([.. days], row) : new Column([.. days.SelectMany(d => Down(d, row))], 5);

    private int RoundsAcross => (int)((width - NameWidth) / (Heads + Amount));

    private double Spare => width - TimeWidth - WalkedWidth - (3 * Tick) - _widths.Sum();

    private double Amount { get; } = AmountWidth(context);

    private static double AmountWidth(SheetContext context) => Math.Max(Mm(11), context.Measurer.WidthOf(context.Amounts.AtFeedMark, Unit) + 5);

    /// <summary>The least that each column takes, all its boxes together.</summary>
    private static ImmutableArray<double> Widths(SheetContext context, ImmutableArray<LogColumn> columns)
    {
        var amount = AmountWidth(context);
        double Boxes(LogColumn c) => c.Chart is null ? Count : Heads + amount;
        double Word(string? words) => words is null ? 0 : context.Columns.Widest(Small, [words]) + 3;
        return
        [
            .. columns.Select((c, i) => new[]
            {
                Boxes(c),
                Word(c.Kind),
                i > 0 && columns[i - 1].Place == c.Place ? 0 : Word(c.Place) - columns.Skip(i + 1).TakeWhile(o => o.Place == c.Place).Sum(Boxes),
            }.Max()),
        ];
    }

    private Table Across(ImmutableArray<RoundDay> days, double row)
    {
        var more = Spare / columns.Length;
        var tracks = columns.Zip(_widths).SelectMany(c => c.First.Chart is null
            ? [Track.Fixed(c.Second + more)]
            : new[] { Track.Fixed((c.Second + more) * Heads / (Heads + Amount)), Track.Fixed((c.Second + more) * Amount / (Heads + Amount)) });
        return new Table(
            [Track.Fixed(TimeWidth), Track.Fixed(WalkedWidth), .. tracks, Track.Fixed(Tick), Track.Fixed(Tick), Track.Share()],
            [],
            [.. HeadRows(days[^1].Date), .. days.SelectMany(d => RowsOnce(d)).Select(r => r with { MinHeight = row })])
        { RowHeaders = true, Name = DateText.Short(days[0].Date) };
    }

    /// <summary>Names of the columns are part of what a leaf says, and are over with the last of its days.</summary>
    private IEnumerable<TableRow> HeadRows(LocalDate last)
    {
        var about = RowKey.Paragraph with { Last = last };
        var hasKinds = columns.Any(c => c.Kind is not null);
        if (hasKinds)
        {
            yield return new TableRow([Head(null, 2), .. _places.Select(g => Head(g[0].Place, g.Sum(Tracks))), Head(null, 3)], About: about);
        }

        yield return new TableRow(
            [
                Head("round"), Head("walked at"),
                .. columns.Select(c => Head(hasKinds ? c.Kind : c.Place, Tracks(c))),
                Head("all well"), Head("water"), Head(_forage),
            ],
            RuleAbove: hasKinds ? 0 : null,
            About: about);
    }

    private ImmutableArray<TableRow> RowsOnce(RoundDay day) => _rows.TryGetValue(day.Date, out var rows) ? rows : _rows[day.Date] = [.. DayRows(day)];

    private IEnumerable<TableRow> DayRows(RoundDay day)
    {
        var tick = new TableCell(Block.Tick(context.WriteIn.BarnTick), Padding: Edges.Of(1, 1));
        yield return new TableRow([Date(day) with { Span = 2 }, .. Written(day, columns.Sum(Tracks) + 3)], RuleAbove: Lines.Section, KeepWithNext: true, About: RowKey.Of(day.Date));
        foreach (var round in day.Times)
        {
            yield return new TableRow(
                [TimeCell(day, round), Block.Blank(), .. _places.SelectMany(g => Cells(g, day, round)), tick, tick, tick],
                KeepWithNext: round != day.Times[^1],
                About: Key(day, RoundText.Name(round)));
        }
    }

    /// <summary>A line to write on beside the day, or below its rounds.</summary>
    private static ImmutableArray<TableCell> Written(RoundDay day, int tracks) => day.Why == RoundReason.Lambing
        ? [Caption(LogText.Lambed, tracks / 2), Caption(LogText.Saw, tracks - (tracks / 2))]
        : [Caption(LogText.Saw, tracks)];

    /// <summary>Without a feed the ewes of a place are counted together.</summary>
    private IEnumerable<TableCell> Cells(ImmutableArray<LogColumn> place, RoundDay day, Round round)
    {
        if (!place.Any(c => IsFedAt(c, day.Date, round)))
        {
            return [Block.Blank(place.Sum(Tracks))];
        }

        return place.SelectMany(c => IsFedAt(c, day.Date, round) ? [Block.Blank(), _amountCell] : new[] { Block.Blank(Tracks(c)) });
    }

    /// <summary>A row for each place, for days that have more of them than a page is wide. More rounds than it is wide have a table of their own below.</summary>
    private IEnumerable<Element> Down(RoundDay day, double row) => day.Times.Chunk(RoundsAcross).Select((rounds, i) =>
    {
        var share = (width - NameWidth) / rounds.Length;
        var tracks = rounds.SelectMany(_ => new[] { Track.Fixed(share * Heads / (Heads + Amount)), Track.Fixed(share * Amount / (Heads + Amount)) });
        var tick = new TableCell(Block.Tick(context.WriteIn.BarnTick), 2, Padding: Edges.Of(1, 1));
        TableRow Row(string name, Func<Round, ImmutableArray<TableCell>> cells) => new([Name(name), .. rounds.SelectMany(r => cells(r))], row, About: Key(day, $"{name} {i}"));
        return new KeepTogether(new Table(
            [Track.Share(), .. tracks],
            [new TableRow([Date(day), .. rounds.Select(r => TimeCell(day, r) with { Span = 2 })], row)],
            [
                Row("walked at", _ => [Block.Blank(2)]),
                .. columns.Select(c => Row(
                    c.Kind is null ? c.Place : $"{c.Place}, {c.Kind}",
                    r => IsFedAt(c, day.Date, r) ? [Block.Blank(), _amountCell] : [Block.Blank(2)])),
                .. new[] { "all well", "water", _forage }.Select(what => Row(what, _ => [tick])),
                new TableRow(Written(day, (2 * rounds.Length) + 1), row, About: RowKey.Of(day.Date)),
            ])
        { RowHeaders = true, Name = DateText.Short(day.Date) });
    });

    private static TableCell Date(RoundDay day) => new(
        Block.Column(0, Block.Text(DateText.Short(day.Date), Time, leading: 1.05), Block.Text(LogText.Sun(day), Unit, leading: 1.05)), Padding: Edges.Of(4, 1));

    private TableCell TimeCell(RoundDay day, Round round)
    {
        ImmutableArray<LogColumn> fed = [.. columns.Where(c => IsFedAt(c, day.Date, round))];
        return new TableCell(
            Block.Column(0, Block.Text(DateText.Clock(round.At), Time, TextAlign.Centre, 1.0), Block.Text(LogText.Round(round, !fed.IsEmpty, fed.All(c => c.Chart == FeedCodes.Lambed)), Unit, TextAlign.Centre, 1.0)),
            Padding: Edges.Of(1, 0.5));
    }

    private static TableCell Name(string words) => new(Block.Text(words, TypeScale.BodyBold, leading: 1.05), Padding: Edges.Of(4, 1));

    private static TableCell Caption(string words, int span) => new(Block.Text(words, Unit, leading: 1.05), span, VerticalAlign.Top, Edges.Of(3, 1.5));

    private static TableCell Head(string? words, int span = 1) =>
        new(words is null ? null : Block.Text(words, Small, TextAlign.Centre, 1.05), span, VerticalAlign.Bottom, new Edges(1, 1, 1, 2.5)) { Scope = HeaderScope.Column };

    private bool IsFedAt(LogColumn column, LocalDate day, Round round)
    {
        if (column.Chart is not { } chart)
        {
            return false;
        }

        if (!_fed.TryGetValue((chart, day), out var rounds))
        {
            _fed[(chart, day)] = rounds = [.. context.Plan.Rounds[Period.DaysBetween(context.Plan.From, day)].Times.Where(r => column.IsFedAt(context.Plan, day, r))];
        }

        return rounds.Contains(round);
    }

    private static int Tracks(LogColumn column) => column.Chart is null ? 1 : 2;

    private static RowKey Key(RoundDay day, string row) => RowKey.OfRound(day.Date, row, $"{DateText.WeekdayNumber(day.Date)} {row}");
}
