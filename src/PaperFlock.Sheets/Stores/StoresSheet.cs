namespace PaperFlock.Sheets.Stores;

/// <summary>What to have in, by when to order it, and how much should be left; overleaf the keeper's figures and the lambing kit.</summary>
internal static class StoresSheet
{
    public static readonly SheetDefinition Definition = new("stores", "STOR", SheetUse.Binder)
    {
        Lives = "binder",
        Purpose = "what to have in, by when to order it, and how much should be left; overleaf how it was reckoned, and the lambing kit",
        Make = Make,
    };

    private const int MostByWeek = 3;

    /// <summary>Common practice, no source. What is medicine is the vet's to choose.</summary>
    private static string[] Kit() =>
    [
        "torch and spare batteries", "lambing gloves, many", "lubricant", "clean towels and a bucket", "lambing ropes, boiled", "marker spray, numbers for ewe and lambs",
        "navel dip the vet advises", "colostrum the vet advises, in date", "stomach tube, if someone is trained to use it", "thermometer", "feeding bottle and teats",
        "heat lamp or warm box, checked", "head halter and hurdles", "pencil and the ewe cards", "the vet\u2019s number, on the call sheet", "soap, hot water, somewhere to wash",
    ];

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var stores = context.Plan.Stores;
        if (stores.IsEmpty)
        {
            return [];
        }

        var margin = context.Flock.Feeds.Margin;
        var spare = margin > 0 ? $"The bags and bales hold {Amounts.Figure(margin * 100, "0.#")}\u00a0% to spare." : "Nothing to spare is reckoned in.";
        var lead = Block.Sentences(
                $"Order by the day named: deliveries take {English.Count(context.Flock.Feeds.OrderLeadDays, "day", "days")} and days marked closed are passed over.",
                spare);
        var body = new Column([Items(context), ByWeek(context), Block.Notes(context.WriteIn.TableRow), new PageBreak(), KeepersFigures.Of(context), KitList(context), More(context)], 10);
        return [Binder.Upright(context, Definition, "Stores", lead, body)];
    }

    private static Table Items(SheetContext context) => new(
        [
            Track.Share(),
            context.Columns.Fit(Mm(27), TypeScale.Body, ["in all", .. context.Plan.Stores.Select(s => Total(s))]),
            context.Columns.Fit(Mm(27), TypeScale.BodyBold, context.Plan.Stores.Where(s => s.Pack is not null).Select(s => StoreText.Packs(s.Packs ?? 0, s.Pack!.Value))),
            context.Columns.FitDays(Mm(31), TypeScale.BodyBold, "not ordered", "at once"),
            context.Columns.Fit(Mm(18), TypeScale.Label, "ordered"),
            context.Columns.Fit(Mm(18), TypeScale.Label, "in the shed"),
        ],
        [Block.Heads(4.., "what", "in all", "to buy", "order by", "ordered", "in the shed")],
        [.. context.Plan.Stores.Select(s => Row(context, s))])
    { Name = "stores", RowHeaders = true };

    private static TableRow Row(SheetContext context, StoreItem item)
    {
        var ordered = item.OrderBy is not null;
        return new TableRow(
            [
                Block.Cell(StoreText.Name(item, context.Flock), TypeScale.BodyBold),
                Block.Cell(item.Kg is { } kg ? context.Amounts.Weight(kg) : Total(item), TypeScale.Body),
                Block.Cell(item is { Packs: { } packs, Pack: { } pack } ? StoreText.Packs(packs, pack) : "", TypeScale.BodyBold),
                Block.Cell(OrderBy(item, context.Plan.AsOf)),
                ordered ? Block.Cell(Block.Tick(context.WriteIn.TableTick)) : Block.Blank(),
                ordered ? Block.Cell(Block.Tick(context.WriteIn.TableTick)) : Block.Blank(),
            ],
            context.WriteIn.TableRow,
            About: RowKey.Named(RowKind.Store, StoreText.Name(item, context.Flock)));
    }

    /// <summary>A day that is past when the pack is printed does not help anyone: it says so.</summary>
    private static Element OrderBy(StoreItem item, LocalDate asOf) => item.OrderBy switch
    {
        null => Block.Text("not ordered", TypeScale.Label),
        { } by when by < asOf => Block.Column(0, Block.Text("at once", TypeScale.BodyBold), Block.Text($"was {DateText.Short(by)}", TypeScale.Label)) with { About = RowKey.Of(by) },
        { } by => Block.Text(DateText.Short(by), TypeScale.BodyBold) with { About = RowKey.Of(by) },
    };

    /// <summary>What has no weight is counted in its packs, or, like water, poured.</summary>
    private static string Total(StoreItem item)
    {
        var sum = item.Weeks.Sum(w => w.Amount);
        return item.Pack is { } pack
            ? StoreText.Packs((int)Math.Ceiling(sum), pack)
            : $"{Amounts.Figure(sum, "#,0")}\u00a0litres";
    }

    /// <summary>What goes out of the shed each week, and what should be left of what was bought when it begins.</summary>
    private static Element ByWeek(SheetContext context)
    {
        var items = context.Plan.Stores.Where(s => !s.Weeks.IsEmpty && s.Kg is not null).Take(MostByWeek).ToArray();
        if (items.Length == 0)
        {
            return Block.Gap(0.1);
        }

        var weeks = items.SelectMany(i => i.Weeks.Select(w => w.WeekBeginning)).Distinct().Order().ToArray();
        return Block.Column(
            4,
            Block.Heading("Week by week: what it takes, and what should be left as it begins"),
            new Table(
                [context.Columns.FitDays(Mm(30), TypeScale.Body), .. Enumerable.Repeat(Track.Share(), items.Length)],
                [new TableRow([Block.Cell("week of", TypeScale.Label), .. items.Select(i => Block.Cell(StoreText.Name(i, context.Flock), TypeScale.Label, TextAlign.Right))])],
                [
                    .. weeks.Select(w => new TableRow(
                    [
                        Tight(DateText.Short(w), TextAlign.Left),
                        .. items.Select(i => Tight(Week(context, i, w), TextAlign.Right)),
                    ],
                    About: RowKey.OfWeek(w))),
                ])
            { Name = "week by week", RowHeaders = true });
    }

    private static TableCell Tight(string words, TextAlign align) => new(Block.Text(words, TypeScale.Body, align, 1.1), Padding: Edges.Of(4, 1));

    /// <summary>"70 kg, 41 bags left".</summary>
    private static string Week(SheetContext context, StoreItem item, LocalDate week)
    {
        if (item.Weeks.FirstOrDefault(w => w.WeekBeginning == week) is not { } now)
        {
            return "\u2013";
        }

        var used = item.Weeks.Where(w => w.WeekBeginning < week).Sum(w => w.Amount);
        var takes = context.Amounts.Weight(now.Amount);
        return item is { Packs: { } packs, Pack: { } pack, PackKg: { } each } ? $"{takes}, {StoreText.Packs((int)Math.Floor(packs - (used / each)), pack)} left" : takes;
    }

    private static Element More(SheetContext context) => Block.Ruled("What else to get", TypeScale.Label, context.WriteIn.TableRow, 1);

    private static Column KitList(SheetContext context) => Block.Column(
        5,
        Block.Heading("Lambing kit, in the shed before the first is due"),
        Block.TickList(context.WriteIn.TableTick, Math.Max(context.WriteIn.TableTick + 5, 30), Kit()));
}
