using System.Collections.Immutable;
using System.Globalization;
using PaperFlock.Languages;
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
    private static string[] Shed(Language language) =>
    [
        language.Say("mucked out, limed or dried, bedded deep"), language.Say("every gate and hurdle shuts"), language.Say("troughs clean and fixed"), language.Say("water running in every pen"), language.Say("air moving above them, none on their backs"),
        language.Say("lambing pens up, clean, with bucket and hay"), language.Say("lights work"), language.Say("nothing sharp, no wire, no twine on the floor"),
    ];

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(Stationery stationery)
    {
        var plan = stationery.Plan;
        if (!plan.Jobs.Any(j => j.Id is JobIds.House or JobIds.Dag))
        {
            return [];
        }

        var head = stationery.Head(stationery.Language.Say("Housing and dagging"), Code, plan.Housing.Words);
        var body = new Column([.. Parts(stationery)], 11);
        return [new Sheet(Kind, Code, stationery.Language.Say("Housing and dagging"), SheetUse.Binder, Binder.BothSides(stationery, Code, body, stationery.UprightDesign(Code, head)))];
    }

    private static IEnumerable<Element> Parts(Stationery stationery)
    {
        var plan = stationery.Plan;
        foreach (var gathering in plan.Gatherings.Where(g => g.Jobs.Any(j => j.Id is JobIds.House or JobIds.Dag)))
        {
            var what = gathering.Jobs.Select(j => j.Title.ToLowerInvariant()).Distinct().Aggregate((before, after) => stationery.Language.Say($"{before}, then {after}"));
            yield return Ink.BoldThen(
                stationery.Language.Days.Long(gathering.Date) + ":",
                $"{what}. " + stationery.Language.Say("Quietly, no dogs, no packing tight; dry fleeces only. Lift none and turn none over: dag them standing."),
                Fount.Body);
        }

        yield return new KeepTogether(Ink.Column(
            5,
            Ink.Text(stationery.Language.Say("Before they come in"), Fount.Heading),
            new Grid(2, [.. Shed(stationery.Language).Select(s => (Element?)Ink.TickWith(stationery.TableTick, Ink.Text(s, Fount.Body)))], Math.Max(stationery.TableTick + 7, 32), 0)));

        if (!plan.Housing.Pens.IsEmpty)
        {
            yield return PenTable(stationery);
            yield return Ink.Text(stationery.Language.Say($"Room by {plan.Housing.Source}."), Fount.Label);
            foreach (var pen in plan.Housing.Pens.Where(p => !p.Ewes.IsEmpty))
            {
                yield return PenList(stationery, pen);
            }
        }

        if (plan.Flock.Housing.LambingPens is not null || plan.Lambing.Words.Length > 0)
        {
            yield return Ink.BoldThen(stationery.Language.Say("Lambing pens."), plan.Lambing.Words, Fount.Body);
        }

        yield return Ink.Ruled(stationery.Language.Say("Brought in: what was found, and on which ewe"), Fount.Label, stationery.TableRow, 2);
    }

    private static Table PenTable(Stationery stationery) => new(
        [Track.Share(), Track.Fixed(Mm(18)), Track.Fixed(Mm(22)), Track.Fixed(Mm(46)), Track.Fixed(Mm(46))],
        [
            new TableRow(
            [
                Ink.Cell(stationery.Language.Say("pen"), Fount.Label), Ink.Cell(stationery.Language.Say("ewes"), Fount.Label, TextAlign.Centre), Ink.Cell(stationery.Language.Say("holds about"), Fount.Label, TextAlign.Centre),
                Ink.Cell(stationery.Language.Say("floor wanted, and there"), Fount.Label, TextAlign.Centre), Ink.Cell(stationery.Language.Say("trough wanted, and there"), Fount.Label, TextAlign.Centre),
            ]),
        ],
        [
            .. stationery.Plan.Housing.Pens.Select(p => new TableRow(
                [
                    Ink.Cell(p.Pen.Name, Fount.BodyBold),
                    Ink.Cell(p.Ewes.Length.ToString(CultureInfo.InvariantCulture), Fount.BodyBold, TextAlign.Centre),
                    Ink.Cell(p.Capacity.ToString(CultureInfo.InvariantCulture), Fount.Body, TextAlign.Centre),
                    Ink.Cell(stationery.Amounts.Floor(p.FloorNeeded, p.FloorThere), Fount.Body, TextAlign.Centre),
                    Ink.Cell(p.TroughThere is { } t ? stationery.Language.Say($"{stationery.Amounts.Metres(p.TroughNeeded)} of {stationery.Amounts.Metres(t)}") : stationery.Language.Say($"{stationery.Amounts.Metres(p.TroughNeeded)}, none named"), Fount.Body, TextAlign.Centre),
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
                Ink.Text(stationery.Language.Say($"{pen.Pen.Name}: tick each as she goes in"), Fount.Heading),
                new Table(
                    [.. Enumerable.Repeat(Track.Share(), columns)],
                    [],
                    [
                        .. pen.Ewes.Chunk(columns).Select(row => new TableRow(
                            [
                                .. row.Select(e => Ink.Cell(Ink.TickWith(stationery.TableTick, Who.Of(plans[e.Tag], stationery.Language, Mark(plans[e.Tag], stationery.Language))))),
                                .. Enumerable.Repeat(Ink.Blank(), columns - row.Length),
                            ],
                            stationery.TableTick + 6)),
                    ])
                { Name = pen.Pen.Name }),
            Mm(30));
    }

    private static string Mark(EwePlan ewe, Language language) => ewe.IsScanned ? language.Say($"carries\u00a0{ewe.Litter}") : language.Say("not\u00a0scanned");
}
