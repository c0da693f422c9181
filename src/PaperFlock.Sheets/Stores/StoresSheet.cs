using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.Issues;
using PaperFlock.Sheets.Theme;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Stores;

/// <summary>What to have in, how much of it, and by when to order it; and the lambing kit.</summary>
internal sealed class StoresSheet : ISheetMaker
{
    public const string KindWord = "stores";
    private const string Code = "STOR";

    /// <summary>Common practice, no source. What is medicine is the vet's to choose.</summary>
    private static string[] Kit() =>
    [
        "torch and spare batteries", "lambing gloves, many", "lubricant", "clean towels and a bucket", "lambing ropes, boiled", "marker spray, numbers for ewe and lambs",
        "navel dip the vet advises", "colostrum the vet advises, in date", "stomach tube, if someone is trained to use it", "thermometer", "feeding bottle and teats",
        "heat lamp or warm box, checked", "head halter and hurdles", "pencil and the ewe cards", "the vet\u2019s number, on the call sheet", "soap, hot water, somewhere to wash",
    ];

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(SheetContext context)
    {
        var stores = context.Plan.Stores;
        if (stores.IsEmpty)
        {
            return [];
        }

        var margin = context.Flock.Feeds.Margin;
        var spare = margin > 0 ? $"The bags and bales hold {Amounts.Figure(margin * 100, "0.#")}\u00a0% to spare." : "Nothing to spare is reckoned in.";
        var head = context.Head("Stores", Code, Block.Sentences(
                $"Order by the day named: deliveries take {English.Count(context.Flock.Feeds.OrderLeadDays, "day", "days")} and days marked closed are passed over.",
                spare));
        var body = new Column([Items(context), ByWeek(context), KitList(context), More(context)], 12);
        return [new Sheet(Kind, Code, "Stores", SheetUse.Binder, Binder.BothSides(context, Code, body, context.UprightDesign(Code, head)))];
    }

    private static Table Items(SheetContext context) => new(
        [
            Track.Share(),
            context.Column(Mm(27), TypeScale.Body, ["in all", .. context.Plan.Stores.Select(s => Total(s))]),
            context.Column(Mm(27), TypeScale.BodyBold, context.Plan.Stores.Select(s => Packs(s.Packs ?? 0, s.PackName))),
            context.DayColumn(Mm(31), TypeScale.BodyBold, "not ordered", "at once"),
            context.Column(Mm(18), TypeScale.Label, "ordered"),
            context.Column(Mm(18), TypeScale.Label, "in the shed"),
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
                Block.Cell(Block.Column(1, Block.Text(item.Item, TypeScale.BodyBold), Block.Text(item.Basis, TypeScale.Body))),
                Block.Cell(item.Kg is { } kg ? context.Amounts.Weight(kg) : Total(item), TypeScale.Body),
                Block.Cell(item.Packs is { } packs ? Packs(packs, item.PackName) : "", TypeScale.BodyBold),
                Block.Cell(OrderBy(item, context.Plan.AsOf)),
                ordered ? Block.Cell(Block.Tick(context.TableTick)) : Block.Blank(),
                ordered ? Block.Cell(Block.Tick(context.TableTick)) : Block.Blank(),
            ],
            context.TableRow,
            Name: item.Item);
    }

    /// <summary>A day that is past when the pack is printed does not help anyone: it says so.</summary>
    private static Element OrderBy(StoreItem item, LocalDate asOf) => item.OrderBy switch
    {
        null => Block.Text("not ordered", TypeScale.Label),
        { } by when by < asOf => Block.Column(0, Block.Text("at once", TypeScale.BodyBold), Block.Text($"was {DateText.Short(by)}", TypeScale.Label)) with { Name = Dated.Name("order by", by) },
        { } by => Block.Text(DateText.Short(by), TypeScale.BodyBold) with { Name = Dated.Name("order by", by) },
    };

    /// <summary>What has no weight is counted in its packs, or, like water, poured.</summary>
    private static string Total(StoreItem item)
    {
        var sum = item.Weeks.Sum(w => w.Amount);
        return item.PackName.Length > 0
            ? Packs((int)Math.Ceiling(sum), item.PackName)
            : $"{Amounts.Figure(sum, "#,0")}\u00a0litres";
    }

    /// <param name="name">As the plan knows it; empty for what comes loose.</param>
    private static string Packs(int packs, string name) => name switch
    {
        StoreItem.Bag => English.Count(packs, "bag", "bags"),
        StoreItem.Bale => English.Count(packs, "bale", "bales"),
        _ => English.Count(packs, "bucket", "buckets"),
    };

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
                [context.DayColumn(Mm(32), TypeScale.Body), .. Enumerable.Repeat(Track.Share(), items.Length)],
                [new TableRow([Block.Cell("week of", TypeScale.Label), .. items.Select(i => Block.Cell(i.Item, TypeScale.Label, TextAlign.Right))])],
                [
                    .. weeks.Select(w => new TableRow(
                    [
                        Block.Cell(DateText.Short(w), TypeScale.Body),
                        .. items.Select(i => Block.Cell(i.Weeks.FirstOrDefault(x => x.WeekBeginning == w) is { } week ? context.Amounts.Weight(week.Amount) : "-", TypeScale.Body, TextAlign.Right)),
                    ],
                    Name: Dated.Name($"week of {DateText.Short(w)}", w.PlusDays(6)))),
                ])
            { Name = "week by week", RowHeaders = true });
    }

    private static Element More(SheetContext context) => Block.Ruled("What else to get", TypeScale.Label, context.TableRow, 2);

    private static NeedSpace KitList(SheetContext context) => new(
        Block.Column(
            5,
            Block.Heading("Lambing kit, in the shed before the first is due"),
            Block.TickList(context.TableTick, Math.Max(context.TableTick + 5, 32), Kit())),
        Mm(90));
}
