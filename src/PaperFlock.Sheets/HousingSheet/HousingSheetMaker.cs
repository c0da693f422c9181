using System.Collections.Immutable;
using System.Globalization;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.HousingSheet;

/// <summary>Bringing them in: who goes in which pen, whether there is room, and the order of the day.</summary>
internal sealed class HousingSheetMaker : ISheetMaker
{
    public const string KindWord = "housing";
    private const string Code = "HOUS";

    /// <summary>Common practice, no source.</summary>
    private static readonly string[] Shed =
    [
        "mucked out, limed or dried, bedded deep", "every gate and hurdle shuts", "troughs clean and fixed", "water running in every pen", "air moving above them, none on their backs",
        "lambing pens up, clean, with bucket and hay", "lights work", "nothing sharp, no wire, no twine on the floor",
    ];

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(Stationery stationery)
    {
        var plan = stationery.Plan;
        if (!plan.Jobs.Any(j => j.Id is JobIds.House or JobIds.Dag))
        {
            return [];
        }

        var head = stationery.Head("Housing and dagging", Code, plan.Housing.Words);
        var body = new Column([.. Parts(stationery)], 11);
        return [new Sheet(Kind, Code, "Housing and dagging", SheetUse.Binder, Binder.BothSides(stationery, Code, body, stationery.UprightDesign(Code, head)))];
    }

    private static IEnumerable<Element> Parts(Stationery stationery)
    {
        var plan = stationery.Plan;
        foreach (var gathering in plan.Gatherings.Where(g => g.Jobs.Any(j => j.Id is JobIds.House or JobIds.Dag)))
        {
            var what = string.Join(", then ", gathering.Jobs.Select(j => j.Title.ToLowerInvariant()).Distinct());
            yield return Ink.BoldThen(
                Days.Long(gathering.Date) + ":",
                $"{what}. Quietly, no dogs, no packing tight; dry fleeces only. Lift none and turn none over: dag them standing.",
                Fount.Body);
        }

        yield return new KeepTogether(Ink.Column(
            5,
            Ink.Text("Before they come in", Fount.Heading),
            new Grid(2, [.. Shed.Select(s => (Element?)Ink.TickWith(stationery.TableTick, Ink.Text(s, Fount.Body)))], Math.Max(stationery.TableTick + 7, 32), 0)));

        if (!plan.Housing.Pens.IsEmpty)
        {
            yield return PenTable(stationery);
            yield return Ink.Text($"Room by {plan.Housing.Source}.", Fount.Label);
            foreach (var pen in plan.Housing.Pens.Where(p => !p.Ewes.IsEmpty))
            {
                yield return PenList(stationery, pen);
            }
        }

        if (plan.Flock.Housing.LambingPens is not null || plan.Lambing.Words.Length > 0)
        {
            yield return Ink.BoldThen("Lambing pens.", plan.Lambing.Words, Fount.Body);
        }

        yield return Ink.Ruled("Brought in: what was found, and on which ewe", Fount.Label, stationery.TableRow, 2);
    }

    private static Table PenTable(Stationery stationery) => new(
        [Track.Share(), Track.Fixed(Mm(18)), Track.Fixed(Mm(22)), Track.Fixed(Mm(46)), Track.Fixed(Mm(46))],
        [
            new TableRow(
            [
                Ink.Cell("pen", Fount.Label), Ink.Cell("ewes", Fount.Label, TextAlign.Centre), Ink.Cell("holds about", Fount.Label, TextAlign.Centre),
                Ink.Cell("floor wanted, and there", Fount.Label, TextAlign.Centre), Ink.Cell("trough wanted, and there", Fount.Label, TextAlign.Centre),
            ]),
        ],
        [
            .. stationery.Plan.Housing.Pens.Select(p => new TableRow(
                [
                    Ink.Cell(p.Pen.Name, Fount.BodyBold),
                    Ink.Cell(p.Ewes.Length.ToString(CultureInfo.InvariantCulture), Fount.BodyBold, TextAlign.Centre),
                    Ink.Cell(p.Capacity.ToString(CultureInfo.InvariantCulture), Fount.Body, TextAlign.Centre),
                    Ink.Cell(stationery.Amounts.Floor(p.FloorNeeded, p.FloorThere), Fount.Body, TextAlign.Centre),
                    Ink.Cell(p.TroughThere is { } t ? $"{stationery.Amounts.Metres(p.TroughNeeded)} of {stationery.Amounts.Metres(t)}" : $"{stationery.Amounts.Metres(p.TroughNeeded)}, none named", Fount.Body, TextAlign.Centre),
                ],
                24)),
        ])
    { Name = "pens" };

    private static NeedSpace PenList(Stationery stationery, PenPlan pen)
    {
        var plans = stationery.Plan.Ewes.ToDictionary(e => e.Ewe.Tag, StringComparer.Ordinal);

        // Three abreast unless a tag is too long to stand beside its tick box.
        var widest = pen.Ewes.Max(e => stationery.Measurer.WidthOf(e.Tag, Who.TagStyle)) + (stationery.TableTick * 1.5) + 12;
        var columns = widest * 3 <= stationery.UprightWidth ? 3 : 2;
        return new NeedSpace(
            Ink.Column(
                4,
                Ink.Text($"{pen.Pen.Name}: tick each as she goes in", Fount.Heading),
                new Table(
                    [.. Enumerable.Repeat(Track.Share(), columns)],
                    [],
                    [
                        .. pen.Ewes.Chunk(columns).Select(row => new TableRow(
                            [
                                .. row.Select(e => Ink.Cell(Ink.TickWith(stationery.TableTick, Who.Of(plans[e.Tag], Mark(plans[e.Tag]))))),
                                .. Enumerable.Repeat(Ink.Blank(), columns - row.Length),
                            ],
                            stationery.TableTick + 6)),
                    ])
                { Name = pen.Pen.Name }),
            Mm(30));
    }

    private static string Mark(EwePlan ewe) => ewe.IsScanned ? $"carries\u00a0{ewe.Litter.ToString(CultureInfo.InvariantCulture)}" : "not\u00a0scanned";
}
