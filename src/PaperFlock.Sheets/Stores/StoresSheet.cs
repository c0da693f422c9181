using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Languages;
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
    private static string[] Kit(Language language) =>
    [
        language.Say("torch and spare batteries"), language.Say("lambing gloves, many"), language.Say("lubricant"), language.Say("clean towels and a bucket"), language.Say("lambing ropes, boiled"), language.Say("marker spray, numbers for ewe and lambs"),
        language.Say("navel dip the vet advises"), language.Say("colostrum the vet advises, in date"), language.Say("stomach tube, if someone is trained to use it"), language.Say("thermometer"), language.Say("feeding bottle and teats"),
        language.Say("heat lamp or warm box, checked"), language.Say("head halter and hurdles"), language.Say("pencil and the ewe cards"), language.Say("the vet\u2019s number, on the call sheet"), language.Say("soap, hot water, somewhere to wash"),
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
        var spare = margin > 0 ? stationery.Language.Say($"The bags and bales hold {Amounts.Figure(margin * 100, "0.#")}\u00a0% to spare.") : stationery.Language.Say("Nothing to spare is reckoned in.");
        var head = stationery.Head(stationery.Language.Say("Stores"), Code, Ink.Sentences(
                stationery.Language.Say($"Order by the day named: deliveries take {stationery.Language.Count(stationery.Flock.Feeds.OrderLeadDays, "day", "days")} and days marked closed are passed over."),
                spare));
        var body = new Column([Items(stationery), ByWeek(stationery), KitList(stationery), More(stationery)], 12);
        return [new Sheet(Kind, Code, stationery.Language.Say("Stores"), SheetUse.Binder, Binder.BothSides(stationery, Code, body, stationery.UprightDesign(Code, head)))];
    }

    private static Table Items(Stationery stationery) => new(
        [
            Track.Share(),
            stationery.Column(Mm(27), Fount.Body, [stationery.Language.Say("in all"), .. stationery.Plan.Stores.Select(s => Total(s, stationery.Language))]),
            stationery.Column(Mm(27), Fount.BodyBold, stationery.Plan.Stores.Select(s => Packs(s.Packs ?? 0, s.PackName, stationery.Language))),
            stationery.DayColumn(Mm(31), Fount.BodyBold, stationery.Language.Say("not ordered"), stationery.Language.Say("at once")),
            stationery.Column(Mm(18), Fount.Label, stationery.Language.Say("ordered")),
            stationery.Column(Mm(18), Fount.Label, stationery.Language.Say("in the shed")),
        ],
        [
            new TableRow(
            [
                Ink.Cell(stationery.Language.Say("what, and how it was reckoned"), Fount.Label), Ink.Cell(stationery.Language.Say("in all"), Fount.Label), Ink.Cell(stationery.Language.Say("to buy"), Fount.Label), Ink.Cell(stationery.Language.Say("order by"), Fount.Label),
                Ink.Cell(stationery.Language.Say("ordered"), Fount.Label, TextAlign.Centre), Ink.Cell(stationery.Language.Say("in the shed"), Fount.Label, TextAlign.Centre),
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
                Ink.Cell(item.Kg is { } kg ? stationery.Amounts.Weight(kg) : Total(item, stationery.Language), Fount.Body),
                Ink.Cell(item.Packs is { } packs ? Packs(packs, item.PackName, stationery.Language) : "", Fount.BodyBold),
                Ink.Cell(OrderBy(item, stationery.Plan.AsOf, stationery.Language)),
                ordered ? Ink.Cell(Ink.Tick(stationery.TableTick)) : Ink.Blank(),
                ordered ? Ink.Cell(Ink.Tick(stationery.TableTick)) : Ink.Blank(),
            ],
            stationery.TableRow,
            Name: item.Item);
    }

    /// <summary>A day that is past when the pack is printed does not help anyone: it says so.</summary>
    private static Element OrderBy(StoreItem item, LocalDate asOf, Language language) => item.OrderBy switch
    {
        null => Ink.Text(language.Say("not ordered"), Fount.Label),
        { } by when by < asOf => Ink.Column(0, Ink.Text(language.Say("at once"), Fount.BodyBold), Ink.Text(language.Say($"was {language.Days.Short(by)}"), Fount.Label)) with { Name = Dated.Name(language.Say("order by"), by) },
        { } by => Ink.Text(language.Days.Short(by), Fount.BodyBold) with { Name = Dated.Name(language.Say("order by"), by) },
    };

    /// <summary>What has no weight is counted in its packs, or, like water, poured.</summary>
    private static string Total(StoreItem item, Language language)
    {
        var sum = item.Weeks.Sum(w => w.Amount);
        return item.PackName.Length > 0
            ? Packs((int)Math.Ceiling(sum), item.PackName, language)
            : language.Say($"{Amounts.Figure(sum, "#,0")}\u00a0litres");
    }

    /// <param name="name">As the plan knows it; empty for what comes loose.</param>
    private static string Packs(int packs, string name, Language language) => name switch
    {
        StoreItem.Bag => language.Count(packs, "bag", "bags"),
        StoreItem.Bale => language.Count(packs, "bale", "bales"),
        _ => language.Count(packs, "bucket", "buckets"),
    };

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
            Ink.Text(stationery.Language.Say("Week by week"), Fount.Heading),
            new Table(
                [stationery.DayColumn(Mm(32), Fount.Body), .. Enumerable.Repeat(Track.Share(), items.Length)],
                [new TableRow([Ink.Cell(stationery.Language.Say("week of"), Fount.Label), .. items.Select(i => Ink.Cell(i.Item, Fount.Label, TextAlign.Right))])],
                [
                    .. weeks.Select(w => new TableRow(
                    [
                        Ink.Cell(stationery.Language.Days.Short(w), Fount.Body),
                        .. items.Select(i => Ink.Cell(i.Weeks.FirstOrDefault(x => x.WeekBeginning == w) is { } week ? stationery.Amounts.Weight(week.Amount) : "-", Fount.Body, TextAlign.Right)),
                    ],
                    Name: Dated.Name(stationery.Language.Say($"week of {stationery.Language.Days.Short(w)}"), w.PlusDays(6)))),
                ])
            { Name = "week by week" });
    }

    private static Element More(Stationery stationery) => Ink.Ruled(stationery.Language.Say("What else to get"), Fount.Label, stationery.TableRow, 2);

    private static NeedSpace KitList(Stationery stationery) => new(
        Ink.Column(
            5,
            Ink.Text(stationery.Language.Say("Lambing kit, in the shed before the first is due"), Fount.Heading),
            new Grid(2, [.. Kit(stationery.Language).Select(k => (Element?)Ink.TickWith(stationery.TableTick, Ink.Text(k, Fount.Body)))], Math.Max(stationery.TableTick + 5, 32), 0)),
        Mm(90));
}
