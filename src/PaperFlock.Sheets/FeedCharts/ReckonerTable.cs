namespace PaperFlock.Sheets.FeedCharts;

/// <summary>Weeks down, heads at one trough across; in each cell what goes in for all of them together at one feed.</summary>
internal static class ReckonerTable
{
    public static readonly double HeadHeight = Mm(11);

    /// <summary>More heads than this do not have a column each: the last column is then for each ewe.</summary>
    private const int MostColumns = 12;

    /// <summary>Columns of a trough with more: their figures are longer.</summary>
    private const int ManyColumns = 9;

    private const int LeastRows = 3;
    private static readonly TextStyle Day = new(Face.TextBold, 14);
    private static readonly TextStyle Heads = TypeScale.Cap(Face.TextBold, 5.6);
    private static readonly TextStyle Fed = new(Face.Text, 12);

    /// <summary>Steps of a chart that is shared with another, so that a row is known by both.</summary>
    public static ImmutableArray<FeedRow> All(FeedChart chart) => [.. chart.Steps.SkipWhile(r => r.FedAt.IsEmpty)];

    /// <summary>Steps still to come, and the last in any case: it is the ration of a ewe that is late. Weeks with the same feed are one row, and weeks
    /// before the first feed none. A season that is over is
    /// shown whole.</summary>
    public static ImmutableArray<FeedRow> Shown(SheetContext context, FeedChart chart)
    {
        var plan = context.Plan;
        var steps = All(chart);
        return [.. steps.Where((r, i) => i + 1 == steps.Length || plan.AsOf > plan.To || r.To >= plan.AsOf)];
    }

    /// <param name="width">Points; less than a page is wide where two share a side, and then the day stands at the left end alone.</param>
    public static Table Of(SheetContext context, FeedChart chart, ImmutableArray<FeedRow> shown, double rowHeight, double width)
    {
        var heads = HeadsAcross(chart.MostHeads);
        var tracks = Columns(context, heads.Length, width < context.Page.SidewaysBody.Width);
        var figure = Figure(context, [.. shown.SelectMany(r => heads.Select(h => Amount(context, r, h)))], rowHeight, (width - tracks.Sum(t => t.Points)) / heads.Length);
        var rows = shown.Select((r, i) => Row(context, chart, r, heads, figure, rowHeight, i > 0 && shown[i - 1].FedAt.Length != r.FedAt.Length));
        return new Table(
            tracks,
            [Cut(Head(chart, heads), tracks)],
            [.. rows.Select(r => Cut(r, tracks))],
            HeadRule: Lines.Section,
            LeastCarried: LeastRows)
        { Name = "rations" };
    }

    private static TableRow Cut(TableRow row, ImmutableArray<Track> tracks) => row with { Cells = row.Cells[..tracks.Length] };

    /// <summary>From all of them down to 1; 0 stands for each ewe.</summary>
    internal static ImmutableArray<int> HeadsAcross(int most) => most <= MostColumns
        ? [.. Enumerable.Range(1, most).Reverse()]
        : [.. Enumerable.Range(most - ManyColumns + 1, ManyColumns).Reverse(), 0];

    private static ImmutableArray<Track> Columns(SheetContext context, int heads, bool narrow) =>
    [
        Track.Fixed(Mm(narrow ? 11 : 13)),
        context.Columns.FitDays(Mm(narrow ? 29 : 32), Day),
        Track.Fixed(Mm(narrow ? 32 : 43)),
        .. Enumerable.Repeat(Track.Share(), heads),
        .. narrow ? ImmutableArray<Track>.Empty : [context.Columns.FitDays(Mm(28), Fed)],
    ];

    private static TableRow Head(FeedChart chart, ImmutableArray<int> heads) => new(
        [
            Block.Blank(),
            Block.Cell("from", TypeScale.Label, TextAlign.Centre),
            Block.Cell("fed at", TypeScale.Label, TextAlign.Centre),
            .. heads.Select(h => (h, chart.Ewes) switch
            {
                (0, _) => Block.Cell("each\newe", TypeScale.LabelBold, TextAlign.Centre),
                (1, [{ Ewe.Name: { } name }]) => Block.Cell(name, TypeScale.BodyBold, TextAlign.Centre),
                (2, [{ Ewe.Name: { } one }, { Ewe.Name: { } other }]) => Block.Cell($"{one} and {other}", TypeScale.BodyBold, TextAlign.Centre),
                (1, [{ Ewe.Name: not null }, { Ewe.Name: not null }]) => Block.Cell("one of them", TypeScale.BodyBold, TextAlign.Centre),
                _ => Block.Cell(Amounts.Figure(h, "0"), Heads, TextAlign.Centre),
            }),
            Block.Cell("from", TypeScale.Label, TextAlign.Centre),
        ],
        HeadHeight);

    private static TableRow Row(SheetContext context, FeedChart chart, FeedRow row, ImmutableArray<int> heads, TextStyle figure, double height, bool moreFeeds) => new(
        [
            new TableCell(Block.Tick(context.WriteIn.TableTick), Padding: Edges.Of(2, 1)),
            Block.Cell(DateText.Short(row.From), Day) with { Scope = HeaderScope.Row },
            Block.Cell(Times(context, row)),
            .. heads.Select(h => new TableCell(Block.Text(Amount(context, row, h), figure, TextAlign.Centre, 1), Padding: Edges.Of(1, 0))),
            Block.Cell(DateText.Short(row.From), Fed),
        ],
        height,
        RuleAbove: moreFeeds ? Lines.Section : null,
        About: RowKey.OfRation(chart.Code, row.From, row.To == chart.Rows[^1].To ? null : row.To));

    /// <summary>One feed to a line would be read as two rations: they stand in one sentence with "and" in bold.</summary>
    private static Text Times(SheetContext context, FeedRow row) => new(
        [
            .. row.FedAt.Select(time => new Run(FeedText.Time(time, context.Flock.Holding).Replace(' ', '\u00a0'), Fed))
                .SelectMany((run, i) => i == 0 ? [run] : new[] { new Run(" and ", Block.Bold(Fed)), run }),
        ],
        TextAlign.Centre,
        1);

    private static string Amount(SheetContext context, FeedRow row, int heads) =>
        context.Amounts.ForHeads(row, Math.Max(1, heads));

    /// <summary>As large as the row and the narrowest column allow.</summary>
    private static TextStyle Figure(SheetContext context, IReadOnlyCollection<string> amounts, double rowHeight, double width)
    {
        var widest = amounts.Max(a => context.Measurer.WidthOf(a, TypeScale.Cap(Face.Text, 1)));
        return TypeScale.Cap(Face.Text, Math.Min(Math.Min(5.6, (rowHeight / PointsPerMillimetre) * 0.62), (width - 9) / widest));
    }
}
