using PaperFlock.Sheets.FeedCharts;

namespace PaperFlock.Sheets.Handover;

/// <summary>One trough: how many stand at it, what goes into it for the heads that are counted, and who they are.</summary>
/// <param name="Least">The narrowest it can be, in points.</param>
internal sealed record TroughBlock(double Least, Element Content)
{
    private const double Inside = 3.5;
    private const double Apart = 4;
    private static readonly double RowHeight = Mm(7.2);
    private static readonly TextStyle Heads = new(Face.TextBold, 13);
    private static readonly TextStyle Figure = TypeScale.Cap(Face.Text, 4);
    private static readonly TextStyle Small = TypeScale.Label with { Size = 9.5 };

    /// <param name="width">Points of the page.</param>
    /// <param name="saysTimes">Not all troughs are fed at the same rounds.</param>
    public static IEnumerable<TroughBlock> Of(SheetContext context, StayPart part, Company company, double width, bool saysTimes)
    {
        var names = new EweNames(context);
        var feeds = company.Feeds(part.From, part.To);
        var one = names.WidthFor(company.Ewes);
        var title = Title(context, company);
        if (company.WithLambs)
        {
            return [Boxed(Mm(84), Top(context, title, company.Ewes.Length), LambedBlock.Lines(context, part, company, names))];
        }

        if (feeds.All(f => f.FedAt.IsEmpty))
        {
            return Listed(context, title, company, 0, one, width);
        }

        var table = company.Ewes.Length <= 2 ? ByName(context, part, company, feeds, one, saysTimes) : ByHeads(context, part, company, feeds, saysTimes);
        var tableWidth = table.Columns.Sum(c => c.Points);
        if (company.Ewes.Length <= 2)
        {
            return [Boxed(Math.Max(tableWidth, Mm(70)), Top(context, title, company.Ewes.Length), table)];
        }

        var room = width - tableWidth - (2 * Inside) - Apart - 8;
        var columns = EweNames.Columns(company.Ewes.Length, one, room);
        var here = company.Ewes.Take(EweNames.Most(columns)).ToList();
        var beside = new Row(
            [
                new RowCell(Track.Fixed(tableWidth), table),
                new RowCell(Track.Share(), new Box(names.Of(here, one, columns), new Edges(6, 0, 0, 0), Lines.Section, Sides.Left)),
            ],
            Apart);
        return
        [
            Boxed(tableWidth + Apart + 8 + (columns * one), Top(context, title, company.Ewes.Length), beside),
            .. company.Ewes.Length > here.Count ? Listed(context, title, company, here.Count, one, width) : [],
        ];
    }

    /// <summary>"North bay twins".</summary>
    public static (string Place, string Who) Title(SheetContext context, Company company) => (
        FeedText.Place(company.Place),
        company.WithLambs ? "" : company.Chart is { } chart ? FeedText.Class(chart, context.Plan.Feeding) : $"{FeedText.Forage(context.Flock.Feeds.Forage.Kind).ToLowerInvariant()} only");

    /// <summary>"to Sun 27", "from Mon 28"; the days nobody is fed have no figure.</summary>
    private static TableRow Head(SheetContext context, StayPart part, string first, string? last, ImmutableArray<FeedRow> feeds, bool saysTimes) => new(
        [
            new TableCell(Block.Text(first, Small, TextAlign.Centre), Padding: Edges.Of(1, 1)),
            .. feeds.Select((f, i) => new TableCell(
                Block.Text(
                    string.Join('\n', new[] { feeds.Length == 1 ? context.Amounts.AtFeedUnit : i == 0 ? $"to\n{DateText.WeekdayNumber(f.To)}" : $"from\n{DateText.WeekdayNumber(f.From)}", saysTimes ? Times(context, part, f) : "" }.Where(w => w.Length > 0)),
                    i == Longest(part, feeds) ? Block.Bold(Small) : Small, TextAlign.Centre, 1.05),
                Padding: Edges.Of(1, 1))),
            .. last is null ? Array.Empty<TableCell>() : [new TableCell(Block.Text(last, Small, TextAlign.Centre), Padding: Edges.Of(1, 1))],
        ]);

    private static string Times(SheetContext context, StayPart part, FeedRow feed) => string.Join('\n', RoundsOfDay.FedAt(context.Plan, part.From, feed.FedAt));

    /// <summary>The feed of most days is the bold one.</summary>
    private static int Longest(StayPart part, ImmutableArray<FeedRow> feeds) =>
        Enumerable.Range(0, feeds.Length).MaxBy(i => Period.DaysBetween(LocalDate.Max(feeds[i].From, part.From), LocalDate.Min(feeds[i].To, part.To)));

    private static Table ByHeads(SheetContext context, StayPart part, Company company, ImmutableArray<FeedRow> feeds, bool saysTimes)
    {
        var heads = ReckonerTable.HeadsAcross(company.Ewes.Length);
        var right = context.Columns.Fit(Mm(7), Heads, 4, heads.Select(Word));
        var left = Track.Fixed(Math.Max(right.Points, context.Measurer.WidthOf("heads", Small) + 3));
        return new Table(
            [left, .. Amounts(context, feeds), right],
            [Head(context, part, "heads", "", feeds, saysTimes)],
            [.. heads.Select(h => Row(context, part, company, Block.Text(Word(h), h == 0 ? Block.Bold(Small) : Heads, TextAlign.Centre, 1), Word(h), Math.Max(1, h), feeds, ends: true))])
        { RowHeaders = true };
    }

    /// <summary>One or two: her name and her feed, for a misread row would be a whole ewe's.</summary>
    private static Table ByName(SheetContext context, StayPart part, Company company, ImmutableArray<FeedRow> feeds, double one, bool saysTimes) => new(
        [Track.Fixed(one + 14), .. Amounts(context, feeds)],
        [Head(context, part, "", null, feeds, saysTimes)],
        [
            .. company.Ewes.Length == 2 ? [Row(context, part, company, Block.Text("both", TypeScale.BodyBold), "both", 2, feeds)] : Array.Empty<TableRow>(),
            .. company.Ewes.Select(e => Row(context, part, company, new EweNames(context).Line(EweNames.Said(e)), e.Ewe.CallName, 1, feeds)),
        ])
    { RowHeaders = true };

    private static TableRow Row(SheetContext context, StayPart part, Company company, Element head, string called, int heads, ImmutableArray<FeedRow> feeds, bool ends = false)
    {
        var (place, who) = Title(context, company);
        var bold = Longest(part, feeds);
        return new TableRow(
            [
                new TableCell(head, Padding: Edges.Of(2, 1)),
                .. feeds.Select((f, i) => new TableCell(Block.Text(f.FedAt.IsEmpty ? "\u2013" : context.Amounts.ForHeads(f, heads), i == bold ? Block.Bold(Figure) : Figure, TextAlign.Centre, 1), Padding: Edges.Of(1, 0))),
                .. ends ? [new TableCell(head, Padding: Edges.Of(1, 1))] : Array.Empty<TableCell>(),
            ],
            RowHeight,
            About: RowKey.Named(RowKind.Ration, $"{place} {who}, {called}"));
    }

    private static IEnumerable<Track> Amounts(SheetContext context, ImmutableArray<FeedRow> feeds) => feeds.Select(f => context.Columns.Fit(
        Mm(13), Block.Bold(Figure), 3, f.KgPerFeedByHeads.Select(kg => context.Amounts.AtFeed(kg).Replace('\u00a0', ' '))));

    private static string Word(int heads) => heads == 0 ? "each" : heads.ToString(CultureInfo.InvariantCulture);

    /// <summary>Names alone: of ewes that get no concentrate, or more of a trough whose block holds no more.</summary>
    private static IEnumerable<TroughBlock> Listed(SheetContext context, (string Place, string Who) title, Company company, int from, double one, double width)
    {
        var names = new EweNames(context);
        var most = Math.Max(1, (int)((width - (2 * Inside)) / one));
        foreach (var chunk in company.Ewes.Skip(from).Chunk(EweNames.Most(most)))
        {
            var columns = Math.Min(most, chunk.Length <= 8 ? 2 : Math.Max(3, EweNames.Columns(chunk.Length, one, width)));
            yield return Boxed(
                Math.Max(columns * one, Mm(70)),
                from == 0 && chunk[0] == company.Ewes[0] ? Top(context, title, company.Ewes.Length) : Named(title, ", more of them"),
                names.Of(chunk, one, columns));
        }
    }

    private static TroughBlock Boxed(double inside, params ImmutableArray<Element> parts) =>
        new(inside + (2 * Inside) + (2 * Lines.Box) + 1, new Box(Block.Column(2, parts), Edges.Of(Inside, 3), Lines.Box));

    private static Row Top(SheetContext context, (string Place, string Who) title, int count)
    {
        var figure = count.ToString(CultureInfo.InvariantCulture);
        var style = TypeScale.Cap(Face.TextBold, 6);
        return new Row(
            [
                new RowCell(Track.Share(), Named(title, ""), VerticalAlign.Middle),
                new RowCell(Track.Fixed(context.Measurer.WidthOf(figure, style) + 1), Block.Text(figure, style, leading: 1), VerticalAlign.Middle),
                new RowCell(Track.Fixed(Mm(20)), Block.Text("now\u00a0_____", TypeScale.Body), VerticalAlign.Bottom),
            ],
            6);
    }

    private static Text Named((string Place, string Who) title, string more) =>
        new([new Run(title.Place, TypeScale.Heading), new Run($" {title.Who}{more}", TypeScale.Body)], Leading: 1.05) { Tag = StructureTag.Heading(2) };
}
