using PaperFlock.Sheets.FeedCharts;

namespace PaperFlock.Sheets.Handover;

/// <summary>One trough: how many stand at it, what goes into it for the heads that are counted, and who they are.</summary>
/// <param name="Least">The narrowest it can be, in points.</param>
/// <param name="Height">Points; at that width.</param>
internal sealed record TroughBlock(double Least, double Height, Element Content)
{
    private const double Inside = 3.5;
    private const double Frame = (2 * Inside) + (2 * Lines.Box) + 1;
    private const double Apart = 4;
    private static readonly double RowHeight = Mm(7.2);
    private static readonly TextStyle Heads = new(Face.TextBold, 13);
    private static readonly TextStyle Figure = TypeScale.Cap(Face.Text, 4);
    private static readonly TextStyle Small = TypeScale.Label with { Size = 9.5 };

    /// <param name="width">Points of the page.</param>
    /// <param name="rounds">At which something is fed, as the head of the page has it: who is fed at fewer has hers in the block.</param>
    public static IEnumerable<TroughBlock> Of(SheetContext context, StayPart part, Company company, double width, ImmutableArray<FeedTime> rounds)
    {
        var names = new EweNames(context, company.Ewes);
        var feeds = company.Feeds(part.From, part.To);
        if (company.WithLambs)
        {
            return company.Ewes.Chunk(LambedBlock.Most).Select((ewes, i) => Boxed(context, Mm(84), Top(context, company, i == 0), LambedBlock.Lines(context, part, ewes, names)));
        }

        if (feeds.All(f => f.FedAt.IsEmpty))
        {
            return Listed(context, company, 0, names, width);
        }

        if (company.Ewes.Length <= 2)
        {
            var byName = ByName(context, part, company, feeds, names, rounds);
            return [Boxed(context, Math.Max(byName.Columns.Sum(c => c.Points), Mm(70)), Top(context, company), byName)];
        }

        const double rule = 8;
        var table = ByHeads(context, part, company, feeds, rounds);
        var tableWidth = table.Columns.Sum(c => c.Points);
        var columns = names.Columns(company.Ewes.Length, width - tableWidth - Frame - Apart - rule);
        var here = company.Ewes.Take(columns * names.Rows).ToList();
        var beside = new Row(
            [
                new RowCell(Track.Fixed(tableWidth), table),
                new RowCell(Track.Share(), new Box(names.Of(here, columns), new Edges(rule - Lines.Section, 0, 0, 0), Lines.Section, Sides.Left)),
            ],
            Apart);
        return
        [
            Boxed(context, tableWidth + Apart + rule + names.WidthOf(columns), Top(context, company), beside),
            .. Listed(context, company, here.Count, names, width),
        ];
    }

    /// <summary>"North bay twins".</summary>
    public static (string Place, string Who) Title(SheetContext context, Company company) => (
        FeedText.Place(company.Place),
        company.WithLambs ? "" : company.Chart is { } chart ? FeedText.Class(chart, context.Plan.Feeding) : $"{FeedText.Forage(context.Flock.Feeds.Forage.Kind).ToLowerInvariant()} only");

    /// <summary>"Sun 27 only" or "to Mon 28", "from Tue 29"; the days nobody is fed have no figure.</summary>
    /// <param name="ends">The heads stand at the right again, under the last of the days.</param>
    private static TableRow Head(SheetContext context, StayPart part, string first, bool ends, ImmutableArray<FeedRow> feeds, ImmutableArray<FeedTime> rounds) => new(
        [
            new TableCell(Block.Text(first, Small, TextAlign.Centre), Padding: Edges.Of(1, 1)),
            .. feeds.Select((f, i) => new TableCell(
                Block.Text(
                    string.Join('\n', new[] { feeds.Length == 1 ? context.Flock.Feeds.Scales ? context.Amounts.FeedUnit : context.Amounts.AtFeedUnit : i == 0 ? f.To <= part.From ? $"{DateText.WeekdayNumber(f.To)}\nonly" : $"to\n{DateText.WeekdayNumber(f.To)}" : $"from\n{DateText.WeekdayNumber(f.From)}", f.FedAt.Length < rounds.Length ? Times(context, part, f) : "" }.Where(w => w.Length > 0)),
                    i == Longest(part, feeds) ? Block.Bold(Small) : Small, TextAlign.Centre, 1.05),
                Padding: Edges.Of(1, 1)) { Span = ends && i == feeds.Length - 1 ? 2 : 1 }),
        ]);

    private static string Times(SheetContext context, StayPart part, FeedRow feed) => string.Join('\n', RoundsOfDay.FedAt(context.Plan, part.From, feed.FedAt));

    /// <summary>The feed of most days is the bold one.</summary>
    private static int Longest(StayPart part, ImmutableArray<FeedRow> feeds) =>
        Enumerable.Range(0, feeds.Length).MaxBy(i => Period.DaysBetween(LocalDate.Max(feeds[i].From, part.From), LocalDate.Min(feeds[i].To, part.To)));

    private static Table ByHeads(SheetContext context, StayPart part, Company company, ImmutableArray<FeedRow> feeds, ImmutableArray<FeedTime> rounds)
    {
        var heads = ReckonerTable.HeadsAcross(company.Ewes.Length);
        var right = context.Columns.Fit(Mm(7), Heads, 4, heads.Select(Word));
        var left = Track.Fixed(Math.Max(right.Points, context.Measurer.WidthOf("heads", Small) + 3));
        return new Table(
            [left, .. Amounts(context, feeds), right],
            [Head(context, part, "heads", true, feeds, rounds)],
            [.. heads.Select(h => Row(context, part, company, Block.Text(Word(h), h == 0 ? Block.Bold(Small) : Heads, TextAlign.Centre, 1), Word(h), Math.Max(1, h), feeds, ends: true))])
        { RowHeaders = true };
    }

    /// <summary>One or two: her name and her feed, for a misread row would be a whole ewe's.</summary>
    private static Table ByName(SheetContext context, StayPart part, Company company, ImmutableArray<FeedRow> feeds, EweNames names, ImmutableArray<FeedTime> rounds) => new(
        [Track.Fixed(names.Width + 14), .. Amounts(context, feeds)],
        [Head(context, part, "ewe", false, feeds, rounds)],
        [
            .. company.Ewes.Length == 2 ? [Row(context, part, company, Block.Text("both", TypeScale.BodyBold), "both", 2, feeds)] : Array.Empty<TableRow>(),
            .. company.Ewes.Select(e => Row(context, part, company, names.Line(EweNames.Said(e)), e.Ewe.CallName, 1, feeds)),
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
                .. ends ? [new TableCell(Block.Text(called, Small, TextAlign.Centre, 1), Align: VerticalAlign.Middle, Padding: Edges.Of(1, 1))] : Array.Empty<TableCell>(),
            ],
            RowHeight,
            About: RowKey.Named(RowKind.Ration, $"{place} {who}, {called}"));
    }

    private static IEnumerable<Track> Amounts(SheetContext context, ImmutableArray<FeedRow> feeds) => feeds.Select(f => context.Columns.Fit(
        Mm(13), Block.Bold(Figure), 3, f.KgPerFeedByHeads.Select(context.Amounts.AtFeed)));

    private static string Word(int heads) => heads == 0 ? "each" : heads.ToString(CultureInfo.InvariantCulture);

    /// <summary>Names alone: of ewes that get no concentrate, or more of a trough whose block holds no more.</summary>
    private static IEnumerable<TroughBlock> Listed(SheetContext context, Company company, int from, EweNames names, double width)
    {
        var most = Math.Max(1, names.Abreast(width - Frame));
        return company.Ewes.Skip(from).Chunk(most * names.Rows).Select((ewes, i) =>
        {
            var columns = Math.Min(most, ewes.Length <= 8 ? 2 : Math.Max(3, names.Columns(ewes.Length, width)));
            return Boxed(context, Math.Max(names.WidthOf(columns), Mm(70)), Top(context, company, from + i == 0), names.Of(ewes, columns));
        });
    }

    private static TroughBlock Boxed(SheetContext context, double inside, params ImmutableArray<Element> parts)
    {
        var (least, box) = (inside + Frame, new Box(Block.Column(2, parts), Edges.Of(Inside, 3), Lines.Box));
        return new TroughBlock(least, Heights.Of(box, least, context), box);
    }

    /// <summary>What the block is called, how many there are, and room for how many there are now.</summary>
    /// <param name="isFirst">Not one that goes on with the names of the block before.</param>
    private static Element Top(SheetContext context, Company company, bool isFirst = true)
    {
        var (place, who) = Title(context, company);
        var named = new Text([new Run(place, TypeScale.Heading), new Run($" {who}{(isFirst ? "" : ", more of them")}", TypeScale.Body)], Leading: 1.05) { Tag = StructureTag.Heading(2) };
        if (!isFirst)
        {
            return named;
        }

        var figure = company.Ewes.Length.ToString(CultureInfo.InvariantCulture);
        var style = TypeScale.Cap(Face.TextBold, 6);
        return new Row(
            [
                new RowCell(Track.Share(), named, VerticalAlign.Middle),
                new RowCell(Track.Fixed(context.Measurer.WidthOf(figure, style) + 1), Block.Text(figure, style, leading: 1), VerticalAlign.Middle),
                new RowCell(Track.Fixed(Mm(20)), Block.Text("now\u00a0_____", TypeScale.Body), VerticalAlign.Bottom),
            ],
            6);
    }
}
