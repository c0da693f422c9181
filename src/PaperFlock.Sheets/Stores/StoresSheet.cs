using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;
using PaperFlock.Sheets.Issues;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Stores;

/// <summary>What to have in, how much of it, and by when to order it; and the lambing kit.</summary>
internal sealed class StoresSheet : ISheetMaker
{
    public const string KindWord = "stores";
    private const string Code = "STOR";

    /// <summary>Common practice, no source. What is medicine is the vet's to choose.</summary>
    private static readonly string[] Kit =
    [
        "torch and spare batteries", "lambing gloves, many", "lubricant", "clean towels and a bucket", "lambing ropes, boiled", "marker spray, numbers for ewe and lambs",
        "navel dip the vet advises", "colostrum the vet advises, in date", "stomach tube, if someone is trained to use it", "thermometer", "feeding bottle and teats",
        "heat lamp or warm box, checked", "head halter and hurdles", "pencil and the ewe cards", "the vet\u2019s number, on the call sheet", "soap, hot water, somewhere to wash",
    ];

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(Stationery stationery)
    {
        var stores = stationery.Plan.Stores;
        if (stores.IsEmpty)
        {
            return [];
        }

        var margin = stationery.Flock.Feeds.Margin;
        var spare = margin > 0 ? $"The bags and bales hold {Amounts.Figure(margin * 100, "0.#")}\u00a0% to spare." : "Nothing to spare is reckoned in.";
        var head = stationery.Head("Stores", Code, $"Order by the day named: deliveries take {Amounts.Count(stationery.Flock.Feeds.OrderLeadDays, "day", "days")} and days marked closed are passed over. {spare}");
        var body = new Column([Items(stationery), ByWeek(stationery), KitList(stationery), More(stationery)], 12);
        return [new Sheet(Kind, Code, "Stores", SheetUse.Binder, Binder.BothSides(stationery, Code, body, stationery.UprightDesign(Code, head)))];
    }

    private static Table Items(Stationery stationery) => new(
        [Track.Share(), Track.Fixed(Mm(27)), Track.Fixed(Mm(27)), Track.Fixed(Mm(31)), Track.Fixed(Mm(18)), Track.Fixed(Mm(18))],
        [
            new TableRow(
            [
                Ink.Cell("what, and how it was reckoned", Fount.Label), Ink.Cell("in all", Fount.Label), Ink.Cell("to buy", Fount.Label), Ink.Cell("order by", Fount.Label),
                Ink.Cell("ordered", Fount.Label, TextAlign.Centre), Ink.Cell("in the shed", Fount.Label, TextAlign.Centre),
            ]),
        ],
        [.. stationery.Plan.Stores.Select(s => Row(stationery, s))])
    { Name = "stores" };

    private static TableRow Row(Stationery stationery, StoreItem item)
    {
        var ordered = item.OrderBy is not null;
        return new TableRow(
            [
                Ink.Cell(Ink.Column(1, Ink.Text(item.Item, Fount.BodyBold), Ink.Text(item.Basis, Fount.Body))),
                Ink.Cell(item.Kg is { } kg ? stationery.Amounts.Weight(kg) : Total(item), Fount.Body),
                Ink.Cell(item.Packs is { } packs ? Amounts.Count(packs, item.PackName, item.PackName + "s") : "", Fount.BodyBold),
                Ink.Cell(OrderBy(item, stationery.Plan.AsOf)),
                ordered ? Ink.Cell(Ink.Tick(stationery.TableTick)) : Ink.Blank(),
                ordered ? Ink.Cell(Ink.Tick(stationery.TableTick)) : Ink.Blank(),
            ],
            stationery.TableRow,
            Name: item.Item);
    }

    /// <summary>A day that is past when the pack is printed does not help anyone: it says so.</summary>
    private static Element OrderBy(StoreItem item, LocalDate asOf) => item.OrderBy switch
    {
        null => Ink.Text("not ordered", Fount.Label),
        { } by when by < asOf => Ink.Column(0, Ink.Text("at once", Fount.BodyBold), Ink.Text($"was {Days.Short(by)}", Fount.Label)) with { Name = Dated.Name("order by", by) },
        { } by => Ink.Text(Days.Short(by), Fount.BodyBold) with { Name = Dated.Name("order by", by) },
    };

    /// <summary>What has no weight is counted in its packs, or, like water, poured.</summary>
    private static string Total(StoreItem item)
    {
        var sum = item.Weeks.Sum(w => w.Amount);
        return item.PackName.Length > 0
            ? Amounts.Count((int)Math.Ceiling(sum), item.PackName, item.PackName + "s")
            : $"{Amounts.Figure(sum, "#,0")}\u00a0litres";
    }

    /// <summary>What goes out of the shed each week, to check the stack against.</summary>
    private static Element ByWeek(Stationery stationery)
    {
        var items = stationery.Plan.Stores.Where(s => !s.Weeks.IsEmpty && s.Kg is not null).Take(4).ToArray();
        if (items.Length == 0)
        {
            return Ink.Gap(0.1);
        }

        var weeks = items.SelectMany(i => i.Weeks.Select(w => w.WeekBeginning)).Distinct().Order().ToArray();
        return Ink.Column(
            4,
            Ink.Text("Week by week", Fount.Heading),
            new Table(
                [Track.Fixed(Mm(32)), .. Enumerable.Repeat(Track.Share(), items.Length)],
                [new TableRow([Ink.Cell("week of", Fount.Label), .. items.Select(i => Ink.Cell(i.Item, Fount.Label, TextAlign.Right))])],
                [
                    .. weeks.Select(w => new TableRow(
                    [
                        Ink.Cell(Days.Short(w), Fount.Body),
                        .. items.Select(i => Ink.Cell(i.Weeks.FirstOrDefault(x => x.WeekBeginning == w) is { } week ? stationery.Amounts.Weight(week.Amount) : "-", Fount.Body, TextAlign.Right)),
                    ],
                    Name: Dated.Name($"week of {Days.Short(w)}", w.PlusDays(6)))),
                ])
            { Name = "week by week" });
    }

    private static Element More(Stationery stationery) => Ink.Ruled("What else to get", Fount.Label, stationery.TableRow, 2);

    private static NeedSpace KitList(Stationery stationery) => new(
        Ink.Column(
            5,
            Ink.Text("Lambing kit, in the shed before the first is due", Fount.Heading),
            new Grid(2, [.. Kit.Select(k => (Element?)Ink.TickWith(stationery.TableTick, Ink.Text(k, Fount.Body)))], Math.Max(stationery.TableTick + 5, 32), 0)),
        Mm(90));
}
