namespace PaperFlock.Sheets.FeedCharts;

/// <summary>What a ewe gets once she has lambed, morning by morning, and ewes that are not in lamb.</summary>
internal static class LambedChart
{
    private static readonly double RowHeight = Mm(10);

    public static IEnumerable<Sheet> Make(SheetContext context)
    {
        var plan = context.Plan;
        if (!plan.Feeding.Troughs.Any(t => context.Concerns(t.From, t.To)))
        {
            return [];
        }

        const string title = "Ewes with lambs, and ewes not in lamb";
        var head = PageHead.Of(context, title, FeedCodes.Lambed, sideways: true);
        var body = Block.Column(9, [.. plan.Feeding.Charts.IsEmpty ? [] : WithLambs(context), .. NotInLamb(context)]) with { Name = title };
        return [FeedChartSheet.Pinned(context, FeedCodes.Lambed, title, body, head)];
    }

    private static IEnumerable<Element> WithLambs(SheetContext context) =>
    [
        new Text(
            [
                new Run("Count the mornings since she lambed. ", TypeScale.BodyBold),
                new Run($"{Capital(context.Amounts.FeedUnitInFull)} of {context.Flock.Feeds.Concentrate.Name} for ", TypeScale.Body),
                new Run("one ewe, at each feed.", TypeScale.BodyBold),
            ],
            TextAlign.Left,
            1.2),
        Table(context),
        Block.Text(
            "If she had more before, she comes down to this on the third morning. A lamb dies or is fostered: read off the lambs that are left. Turned out: she gets no more of it.",
            TypeScale.Body),
    ];

    private static Table Table(SheetContext context)
    {
        var rows = context.Plan.Feeding.Lambed;
        var starts = rows.Select(r => r.DayFrom).Distinct().Order().ToList();
        return new Table(
            [Track.Fixed(Mm(44)), .. Enumerable.Repeat(Track.Share(), 3)],
            [
                new TableRow(
                    [
                        Block.Cell("morning since\nshe lambed", TypeScale.Label, TextAlign.Centre),
                        .. Enumerable.Range(1, 3).Select(l => Block.Cell($"{FeedText.AtFoot(l)} {new string('\u2022', l)}", TypeScale.Heading, TextAlign.Centre)),
                    ],
                    RowHeight),
            ],
            [.. starts.Select((from, i) => Row(context, from, i + 1 < starts.Count ? starts[i + 1] - 1 : null))],
            HeadRule: Lines.Section)
        { Name = "with lambs", RowHeaders = true };
    }

    private static TableRow Row(SheetContext context, int from, int? to)
    {
        var cells = Enumerable.Range(1, 3).Select(lambs => context.Plan.Feeding.Lambed.Last(r => r.Lambs == lambs && r.DayFrom <= from)).ToList();
        return new TableRow(
            [
                Block.Cell(Mornings(from, to), TypeScale.Heading, TextAlign.Centre),
                .. cells.All(c => c.KgPerDay is null)
                    ? [Block.Cell("what she had before", TypeScale.Lead, TextAlign.Centre, 3)]
                    : cells.Select(c => Cell(context, c)),
            ],
            RowHeight,
            About: RowKey.Named(RowKind.Ration, Mornings(from, to)));
    }

    private static TableCell Cell(SheetContext context, LambedRow row) => row switch
    {
        { KgPerDay: null } => Block.Cell("what she had before", TypeScale.Lead, TextAlign.Centre),
        { KgPerFeed: { } kilograms } => new TableCell(new Text(
            [
                new Run(context.Amounts.PlainFigure(kilograms), TypeScale.Cap(Layout.Face.TextBold, 4.7)),
                new Run("   " + string.Join(", ", row.FedAt.Select(FeedText.Time)), TypeScale.Label),
            ],
            TextAlign.Centre,
            1)),
        _ => Block.Cell("none", TypeScale.Lead, TextAlign.Centre),
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

        var runs = ImmutableArray.CreateBuilder<Run>();
        runs.Add(new Run($"Not in lamb, {ewes.Length}: {FeedText.Forage(context.Flock.Feeds.Forage.Kind).ToLowerInvariant()} alone. ", TypeScale.BodyBold));
        for (var i = 0; i < ewes.Length; i++)
        {
            runs.Add(Who.Called(ewes[i].Ewe, TypeScale.Body));
            runs.Add(new Run(i + 1 < ewes.Length ? " \u00b7 " : "", TypeScale.Body));
        }

        return [new Text(runs.ToImmutable(), TextAlign.Left, 1.2)];
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
