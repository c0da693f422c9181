namespace PaperFlock.Sheets.FeedCharts;

/// <summary>What a ewe gets once she has lambed, morning by morning, and ewes that are not in lamb.</summary>
internal static class LambedChart
{
    private static readonly string[] Few = ["one", "two", "three"];
    private static readonly double RowHeight = Mm(10);

    /// <summary>None where nobody is fed.</summary>
    public static IEnumerable<SmallChart> Of(SheetContext context)
    {
        var plan = context.Plan;
        if (!plan.Feeding.Troughs.Any(t => context.Concerns(t.From, t.To)))
        {
            return [];
        }

        const string title = "Ewes with lambs, and ewes not in lamb";
        Column Body(bool narrow) => Block.Column(narrow ? 5 : 9, [.. plan.Feeding.Charts.IsEmpty ? [] : WithLambs(context, narrow), .. NotInLamb(context)]) with { Name = title };
        var half = Block.Column(5, FeedChartSheet.SmallHead(context, title, FeedCodes.Lambed), Body(true));
        return
        [
            new SmallChart(
                FeedCodes.Lambed,
                title,
                half,
                Heights.Of(half, FeedChartSheet.HalfWidth(context), context) <= FeedChartSheet.Room(context, context.Page.SidewaysBody.Width, FeedFoot.Of(context)),
                () => FeedChartSheet.Pinned(context, FeedCodes.Lambed, title, Body(false), PageHead.Of(context, title, FeedCodes.Lambed, sideways: true))),
        ];
    }

    private static IEnumerable<Element> WithLambs(SheetContext context, bool narrow) =>
    [
        FeedLead.HowToRead(context, "Count the mornings since she lambed. ", "one ewe, at each feed."),
        Table(context, isSmall: false, narrow),
        .. narrow ? [Block.Text($"\u00d71 is {FeedText.Time(FeedTime.FirstLight, context.Flock.Holding)}; \u00d72 dusk too; \u00d73 midday too; \u00d74 late too.", TypeScale.Body)] : Array.Empty<Element>(),
        Block.Text(
            "If she had more before, she comes down to this on the third morning. A lamb dies or is fostered: read off the lambs that are left. Turned out: she gets no more of it.",
            TypeScale.Body),
    ];

    /// <param name="isSmall">On the back of a leaf: how often a day instead of the rounds.</param>
    /// <param name="narrow">Beside another chart.</param>
    public static Table Table(SheetContext context, bool isSmall, bool narrow = false)
    {
        var starts = context.Plan.Feeding.Lambed.Select(r => r.DayFrom).Distinct().Order().ToList();
        var head = isSmall ? TypeScale.LabelBold : narrow ? TypeScale.BodyBold : TypeScale.Heading;
        return new Table(
            [Track.Fixed(Mm(isSmall ? 18 : narrow ? 24 : 44)), .. Enumerable.Repeat(Track.Share(), 3)],
            [
                new TableRow(
                    [
                        Block.Cell(isSmall || narrow ? "morning" : "morning since\nshe lambed", TypeScale.Label, TextAlign.Centre),
                        .. Enumerable.Range(1, 3).Select(l => Block.Cell($"{(isSmall || narrow ? Few[l - 1] : FeedText.AtFoot(l))} {Dots.Of(l)}", head, TextAlign.Centre)),
                    ]),
            ],
            [.. starts.Select((from, i) => Row(context, from, i + 1 < starts.Count ? starts[i + 1] - 1 : null, isSmall, narrow))],
            HeadRule: Lines.Section)
        { Name = "with lambs", RowHeaders = true };
    }

    private static TableRow Row(SheetContext context, int from, int? to, bool isSmall, bool narrow)
    {
        var cells = Enumerable.Range(1, 3).Select(lambs => context.Plan.Feeding.Lambed.Last(r => r.Lambs == lambs && r.DayFrom <= from)).ToList();
        var (head, plain) = isSmall ? (TypeScale.LabelBold, TypeScale.Label) : (TypeScale.Heading, TypeScale.Lead);
        return new TableRow(
            [
                Block.Cell(Mornings(from, to), head, TextAlign.Centre),
                .. cells.All(c => c.KgPerDay is null)
                    ? [Block.Cell(isSmall ? "as before: 1 head, her block" : "what she had before, as on her own chart", plain, TextAlign.Centre, 3)]
                    : cells.Select(c => Cell(context, c, plain, isSmall, narrow)),
            ],
            isSmall ? Mm(5.4) : narrow ? Mm(8) : RowHeight,
            About: RowKey.Named(RowKind.Ration, Mornings(from, to)));
    }

    private static TableCell Cell(SheetContext context, LambedRow row, TextStyle plain, bool isSmall, bool narrow) => row switch
    {
        { KgPerDay: null } => Block.Cell("as before", plain, TextAlign.Centre),
        { KgPerFeed: { } kilograms } => new TableCell(
            new Text(
                [
                    new Run(context.Amounts.AtFeed(kilograms), isSmall ? new TextStyle(Layout.Face.TextBold, 13) : TypeScale.Cap(Layout.Face.TextBold, 4.7)),
                    new Run(isSmall || narrow ? $"\u00a0\u00d7{row.FedAt.Length}" : "   " + string.Join(", ", row.FedAt.Select(t => FeedText.Time(t, context.Flock.Holding))), TypeScale.Label),
                ],
                TextAlign.Centre,
                1),
            Padding: isSmall || narrow ? Edges.Of(1, 0) : null),
        _ => Block.Cell("none", plain, TextAlign.Centre),
    };

    /// <summary>The morning after she lambed is the first.</summary>
    private static string Mornings(int from, int? to) => to switch
    {
        null => $"{Ordinal(from + 1)} on",
        { } last when last == from => Ordinal(from + 1),
        { } last => $"{Ordinal(from + 1)}, {Ordinal(last + 1)}",
    };

    private static string Ordinal(int number) => number.ToString(CultureInfo.InvariantCulture) + (number switch { 1 => "st", 2 => "nd", 3 => "rd", _ => "th" });

    private static IEnumerable<Element> NotInLamb(SheetContext context)
    {
        var ewes = context.Plan.Feeding.NotInLamb;
        if (ewes.IsEmpty)
        {
            return [];
        }

        var lead = new Run($"Not in lamb, {ewes.Length}: {FeedText.Forage(context.Flock.Feeds.Forage.Kind).ToLowerInvariant()} alone. ", TypeScale.BodyBold);
        return [new Text([lead, .. Who.AllCalled(ewes, _ => "")], TextAlign.Left, 1.2)];
    }
}
