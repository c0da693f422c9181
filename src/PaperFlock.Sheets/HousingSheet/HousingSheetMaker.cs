namespace PaperFlock.Sheets.HousingSheet;

/// <summary>Bringing them in: who goes in which pen, whether there is room, and the order of the day.</summary>
internal static class HousingSheetMaker
{
    public static readonly SheetDefinition Definition = new("housing", "HOUS", SheetUse.Binder)
    {
        Lives = "binder",
        Purpose = "who goes in which pen, and whether there is room",
        Make = Make,
    };

    /// <summary>Common practice, no source.</summary>
    private static string[] Shed() =>
    [
        "mucked out, limed or dried, bedded deep", "every gate and hurdle shuts", "troughs clean and fixed", "water running in every pen", "air moving above them, none on their backs",
        "lambing pens up, clean, with bucket and hay", "lights work", "nothing sharp, no wire, no twine on the floor",
    ];

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var plan = context.Plan;
        if (!plan.Jobs.Any(j => j.Kind is JobKind.House or JobKind.Dag))
        {
            return [];
        }

        return [Binder.Upright(context, Definition, "Housing and dagging", HousingText.Of(plan.Housing, plan.Flock.Housing), new Column([.. Parts(context)], 11))];
    }

    private static IEnumerable<Element> Parts(SheetContext context)
    {
        var plan = context.Plan;
        foreach (var gathering in plan.Gatherings.Where(g => g.Jobs.Any(j => j.Kind is JobKind.House or JobKind.Dag)))
        {
            var what = gathering.Jobs.Select(j => JobText.Title(j, plan.Flock).ToLowerInvariant()).Distinct().Aggregate((before, after) => $"{before}, then {after}");
            yield return Block.BoldThen(
                DateText.Long(gathering.Date) + ":",
                $"{what}. " + "Quietly, no dogs, no packing tight; dry fleeces only. Lift none and turn none over: dag them standing.",
                TypeScale.Body);
        }

        yield return new KeepTogether(Block.Column(
            5,
            Block.Heading("Before they come in"),
            Block.TickList(context.WriteIn.TableTick, Math.Max(context.WriteIn.TableTick + 7, 32), Shed())));

        if (!plan.Housing.Pens.IsEmpty)
        {
            yield return PenTable(context);
            yield return Block.Text($"Room by {FigureSourceText.Of(FigureSource.HousingRoom)}.", TypeScale.Label);
            foreach (var pen in plan.Housing.Pens.Where(p => !p.Ewes.IsEmpty))
            {
                yield return PenList(context, pen);
            }
        }

        yield return Block.BoldThen("Lambing pens.", LambingText.Of(plan.Lambing, plan.Flock.Housing), TypeScale.Body);
        yield return Block.Ruled("Brought in: what was found, and on which ewe", TypeScale.Label, context.WriteIn.TableRow, 2);
    }

    private static Table PenTable(SheetContext context) => new(
        [Track.Share(), Track.Fixed(Mm(18)), Track.Fixed(Mm(22)), Track.Fixed(Mm(46)), Track.Fixed(Mm(46))],
        [
            new TableRow(
            [
                Block.Cell("pen", TypeScale.Label), Block.Cell("ewes", TypeScale.Label, TextAlign.Centre), Block.Cell("holds about", TypeScale.Label, TextAlign.Centre),
                Block.Cell("floor wanted, and there", TypeScale.Label, TextAlign.Centre), Block.Cell("trough wanted, and there", TypeScale.Label, TextAlign.Centre),
            ]),
        ],
        [
            .. context.Plan.Housing.Pens.Select(p => new TableRow(
                [
                    Block.Cell(p.Pen.Name, TypeScale.BodyBold),
                    Block.Cell(p.Ewes.Length.ToString(CultureInfo.InvariantCulture), TypeScale.BodyBold, TextAlign.Centre),
                    Block.Cell(p.Capacity.ToString(CultureInfo.InvariantCulture), TypeScale.Body, TextAlign.Centre),
                    Block.Cell(context.Amounts.Floor(p.FloorNeeded, p.FloorThere), TypeScale.Body, TextAlign.Centre),
                    Block.Cell(p.TroughThere is { } t ? $"{context.Amounts.Metres(p.TroughNeeded)} of {context.Amounts.Metres(t)}" : $"{context.Amounts.Metres(p.TroughNeeded)}, none named", TypeScale.Body, TextAlign.Centre),
                ],
                24,
                About: RowKey.Named(RowKind.Pen, p.Pen.Name))),
        ])
    { Name = "pens", RowHeaders = true };

    private static NeedSpace PenList(SheetContext context, PenPlan pen)
    {
        var plans = context.Plan.Ewes.ToDictionary(e => e.Ewe.Tag, StringComparer.Ordinal);

        // Three abreast unless a tag is too long to stand beside its tick box.
        var widest = pen.Ewes.Max(e => context.Measurer.WidthOf(e.Tag, Who.TagStyle)) + (context.WriteIn.TableTick * 1.5) + 12;
        var columns = widest * 3 <= context.Page.UprightWidth ? 3 : 2;
        return new NeedSpace(
            Block.Column(
                4,
                Block.Heading($"{pen.Pen.Name}: tick each as she goes in"),
                new Table(
                    [.. Enumerable.Repeat(Track.Share(), columns)],
                    [],
                    [
                        .. pen.Ewes.Chunk(columns).Select(row => new TableRow(
                            [
                                .. row.Select(e => Block.Cell(Block.TickWith(context.WriteIn.TableTick, Who.Of(plans[e.Tag], Mark(plans[e.Tag]))))),
                                .. Enumerable.Repeat(Block.Blank(), columns - row.Length),
                            ],
                            context.WriteIn.TableTick + 6)),
                    ])
                { Name = pen.Pen.Name }),
            Mm(30));
    }

    private static string Mark(EwePlan ewe) => ewe.IsScanned ? $"carries\u00a0{ewe.Litter}" : "not\u00a0scanned";
}
