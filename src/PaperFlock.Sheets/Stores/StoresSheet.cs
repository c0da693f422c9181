namespace PaperFlock.Sheets.Stores;

/// <summary>What to have in, how much of it, and by when to order it; and the lambing kit.</summary>
internal static class StoresSheet
{
    public static readonly SheetDefinition Definition = new("stores", "STOR", SheetUse.Binder)
    {
        Lives = "binder",
        Purpose = "what to have in, and by when to order it; the lambing kit",
        Make = Make,
    };

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
        var body = new Column([Items(context), ByWeek(context), KitList(context), More(context)], 12);
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
        [
            new TableRow(
            [
                Block.Cell("what, and how it was reckoned", TypeScale.Label), Block.Cell("in all", TypeScale.Label), Block.Cell("to buy", TypeScale.Label), Block.Cell("order by", TypeScale.Label),
                Block.Cell("ordered", TypeScale.Label, TextAlign.Centre), Block.Cell("in the shed", TypeScale.Label, TextAlign.Centre),
            ]),
        ],
        [.. context.Plan.Stores.Select(s => Row(context, s))])
    { Name = "stores", RowHeaders = true };

    private static TableRow Row(SheetContext context, StoreItem item)
    {
        var ordered = item.OrderBy is not null;
        return new TableRow(
            [
                Block.Cell(Block.Column(1, Block.Text(StoreText.Name(item, context.Flock), TypeScale.BodyBold), Block.Text(StoreText.Basis(item, context.Flock), TypeScale.Body))),
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

    /// <summary>What goes out of the shed each week, to check the stack against.</summary>
    private static Element ByWeek(SheetContext context)
    {
        var items = context.Plan.Stores.Where(s => !s.Weeks.IsEmpty && s.Kg is not null).Take(4).ToArray();
        if (items.Length == 0)
        {
            return Block.Gap(0.1);
        }

        var weeks = items.SelectMany(i => i.Weeks.Select(w => w.WeekBeginning)).Distinct().Order().ToArray();
        return Block.Column(
            4,
            Block.Heading("Week by week"),
            new Table(
                [context.Columns.FitDays(Mm(32), TypeScale.Body), .. Enumerable.Repeat(Track.Share(), items.Length)],
                [new TableRow([Block.Cell("week of", TypeScale.Label), .. items.Select(i => Block.Cell(StoreText.Name(i, context.Flock), TypeScale.Label, TextAlign.Right))])],
                [
                    .. weeks.Select(w => new TableRow(
                    [
                        Block.Cell(DateText.Short(w), TypeScale.Body),
                        .. items.Select(i => Block.Cell(i.Weeks.FirstOrDefault(x => x.WeekBeginning == w) is { } week ? context.Amounts.Weight(week.Amount) : "-", TypeScale.Body, TextAlign.Right)),
                    ],
                    About: RowKey.OfWeek(w))),
                ])
            { Name = "week by week", RowHeaders = true });
    }

    private static Element More(SheetContext context) => Block.Ruled("What else to get", TypeScale.Label, context.WriteIn.TableRow, 2);

    private static NeedSpace KitList(SheetContext context) => new(
        Block.Column(
            5,
            Block.Heading("Lambing kit, in the shed before the first is due"),
            Block.TickList(context.WriteIn.TableTick, Math.Max(context.WriteIn.TableTick + 5, 32), Kit())),
        Mm(90));
}
