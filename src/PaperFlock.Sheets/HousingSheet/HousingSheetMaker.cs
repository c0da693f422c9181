namespace PaperFlock.Sheets.HousingSheet;

/// <summary>The shed to scale: where each goes, and whether there is room. On the back, bringing them in.</summary>
internal static class HousingSheetMaker
{
    public static readonly SheetDefinition Definition = new("housing", "HOUS", SheetUse.Binder)
    {
        Lives = "shed door",
        Purpose = "who goes in which pen, and whether there is room",
        IsStruckByHand = true,
        Make = Make,
    };

    private const string Title = "Who goes where";

    private static readonly TextStyle AtOneMetre = TypeScale.Cap(Face.Text, TypeScale.LeastCapAtOneMetre);

    /// <summary>Common practice, no source.</summary>
    private static string[] Shed() =>
    [
        "mucked out, limed or dried, bedded deep", "every gate and hurdle shuts", "troughs clean and fixed", "water running in every pen", "fresh air, no draught at sheep height",
        "lambing pens up, clean, with bucket and hay", "lights work", "nothing sharp, no wire, no twine on the floor",
    ];

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var plan = context.Plan;
        if (plan.Housing.Pens.IsEmpty || !plan.Jobs.Any(j => j.Kind == JobKind.House))
        {
            return [];
        }

        var places = PenPlace.Of(plan.Flock.Housing.Pens);
        var sideways = places.Max(p => p.RightEnd) - places.Min(p => p.Right) > places.Max(p => p.DownEnd) - places.Min(p => p.Down);
        var head = PageHead.Of(context, Title, Definition.Code, sideways: sideways);
        var page = sideways ? PageDesigns.Sideways(context, Definition.Code, head) : PageDesigns.Upright(context, Definition.Code, head);
        var width = page.Paper.Width - page.Front.Horizontal;
        var body = new Column([.. Front(context, new Size(width, Heights.OfBody(page, width, context))), .. BringingIn(context)], 8);
        return [Binder.Bind(context, Definition, Definition.Code, Title, body, page)];
    }

    private static IEnumerable<Element> Front(SheetContext context, Size space)
    {
        var plan = context.Plan;
        var hurdles = plan.Housing.Pens.Select(p => (Pen: p, Troughs: ShedPlan.TroughsOf(p, plan))).Where(p => p.Troughs.Length > 1)
            .Select(p => HousingText.Hurdles(p.Pen, [.. p.Troughs.Select(t => t.Length)]));
        var said = HousingText.Of(plan.Housing, plan.Flock.Housing) + " "
            + Block.Sentences([.. hurdles, HousingText.WithLambs(plan.Housing.WithLambs, plan.Flock.Housing.TurnoutDaysAfterLambing)]);
        var room = new Text(said.Runs(AtOneMetre), Leading: 1.15);
        yield return room;
        var source = Block.Text(HousingText.Drawn(plan.Flock.Housing.Pens) + "Room by " + FigureSourceText.Of(FigureSource.HousingRoom) + ".", TypeScale.Label);
        var left = space.Height - Heights.Of(room, space.Width, context) - Heights.Of(source, space.Width, context) - 20;
        var drawn = ShedPlan.Of(context, space with { Height = Math.Max(left, space.Height / 3) }).ToArray();
        foreach (var part in drawn.Append(source))
        {
            yield return part;
        }

        if (drawn.Length == 1)
        {
            yield return new PageBreak();
        }
    }

    private static IEnumerable<Element> BringingIn(SheetContext context)
    {
        var plan = context.Plan;
        foreach (var gathering in plan.Gatherings.Where(g => g.Jobs.Any(j => j.Kind is JobKind.House or JobKind.Dag)))
        {
            var what = gathering.Jobs.Where(j => j.Kind is JobKind.House or JobKind.Dag).Select(j => JobText.Title(j, plan.Flock)).Select(t => char.ToLowerInvariant(t[0]) + t[1..]).Distinct();
            yield return Block.BoldThen(
                DateText.Long(gathering.Date) + ":",
                $"{string.Join(", then ", what)}. Quietly, no dogs, no packing tight; dry fleeces only. Lift none and turn none over: dag them standing.",
                TypeScale.Body);
        }

        yield return new KeepTogether(Block.Column(
            5,
            Block.Heading("Before they come in"),
            Block.TickList(context.WriteIn.TableTick, Math.Max(context.WriteIn.TableTick + 7, 32), Shed())));
        yield return Block.BoldThen("Lambing pens.", LambingText.Of(plan.Lambing, plan.Flock.Housing), TypeScale.Body) with { About = NotContent.Instance };
        yield return Block.Ruled("Brought in: what was found, and on which ewe", TypeScale.Label, context.WriteIn.TableRow, 2);
    }
}
