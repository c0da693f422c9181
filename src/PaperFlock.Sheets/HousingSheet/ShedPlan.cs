namespace PaperFlock.Sheets.HousingSheet;

/// <summary>The pens to one scale, with who goes into each.</summary>
internal static class ShedPlan
{
    private const double Wall = 2;
    private const double Inset = 6;
    private const double TroughThick = 5;

    /// <summary>From what is read at a metre down to what is read at half of that: the largest in which every name stands in its pen.</summary>
    private static readonly TextStyle[] Styles =
        [.. new[] { TypeScale.CapAtOneMetre, 5.5, TypeScale.LeastCapAtOneMetre, 4, TypeScale.CapAtHalfMetre }.Select(c => TypeScale.Cap(Face.Text, c)), TypeScale.Body];

    /// <summary>Where not every name has room in its pen, the plan says how many stand in each, and a list below it says who.</summary>
    public static IEnumerable<Element> Of(SheetContext context, Size space)
    {
        var room = new Space(space.Width, space.Height, space.Height);
        if (Styles.Select(style => Board(context, space, style, named: true)).FirstOrDefault(b => b.Place(room, context.Measurer) is Placement.Fits) is { } named)
        {
            return [named];
        }

        var low = space with { Height = space.Height / 2 };
        return
        [
            new FirstThatFits([.. Styles.Select(style => (Element)Board(context, low, style, named: false)), new Column([])]),
            .. context.Plan.Housing.Pens.SelectMany(pen => TroughsOf(pen, context.Plan).Select(ewes => List(context, pen, ewes))),
        ];
    }

    private static Column List(SheetContext context, PenPlan pen, ImmutableArray<EwePlan> ewes) => Block.Column(
        0,
        Block.Text($"{pen.Pen.Name}, {Fed(context, ewes)}", TypeScale.BodyBold, leading: 1.3),
        new Text([.. Who.AllCalled([.. ewes.Where(e => !e.IsLost)], Dots.After)], Leading: 1.3));

    /// <summary>"Twins, 11:".</summary>
    private static string Fed(SheetContext context, ImmutableArray<EwePlan> ewes) =>
        (context.Plan.Feeding.ChartOf(ewes[0]) is { } chart ? FeedText.Kind(chart.Kind) + ", " : "") + $"{ewes.Length}:";

    private static Board Board(SheetContext context, Size space, TextStyle style, bool named)
    {
        var places = PenPlace.Of(context.Flock.Housing.Pens);
        decimal left = places.Min(p => p.Right), top = places.Min(p => p.Down);
        var (width, height) = ((double)(places.Max(p => p.RightEnd) - left), (double)(places.Max(p => p.DownEnd) - top));
        var scale = Math.Min(space.Width / width, space.Height / height);
        return new Board(
            new Size(width * scale, height * scale),
            [
                .. places.Zip(context.Plan.Housing.Pens, (place, pen) => new BoardPlace(
                    (double)(place.Right - left) * scale,
                    (double)(place.Down - top) * scale,
                    (double)pen.Pen.Length.Metres * scale,
                    (double)pen.Pen.Width.Metres * scale,
                    Pen(context, pen, style, scale, named))),
            ]);
    }

    private static Box Pen(SheetContext context, PenPlan pen, TextStyle style, double scale, bool named)
    {
        var inside = ((double)pen.Pen.Length.Metres * scale) - (2 * (Inset + Wall));
        var bold = Block.Bold(style);
        return new Box(
            Block.Column(
                4,
                [
                    .. pen.Pen.Trough is { } trough ? [TroughBar(trough.Metres, pen.Pen.Length.Metres, inside)] : Array.Empty<Element>(),
                    new Row(
                        [
                            new RowCell(Track.Share(), Block.Text(pen.Pen.Name, bold, leading: 1.1) with { Tag = StructureTag.Heading(2) }),
                            new RowCell(Track.Fixed(style.Size * 2), Block.Text(pen.Ewes.Length.ToString(CultureInfo.InvariantCulture), bold, TextAlign.Right, 1.1) with { About = NotContent.Instance }),
                        ]),
                    Block.Text(HousingText.Measures(pen.Pen, context.Amounts), TypeScale.Body),
                    .. named ? Troughs(context, pen, style, inside) : [],
                ]),
            Edges.All(Inset),
            Wall)
        { About = RowKey.Named(RowKind.Pen, pen.Pen.Name) };
    }

    /// <summary>Along one wall, since the file does not say where it stands; one longer than the pen has ewes at both its sides.</summary>
    private static Picture TroughBar(decimal trough, decimal length, double inside)
    {
        var width = inside * (double)Math.Min(1, (trough > length ? trough / 2 : trough) / length);
        return new Picture(new Size(width, TroughThick), [new RectItem(0, 0, width, TroughThick, 0)]);
    }

    /// <summary>Those fed by one chart eat together.</summary>
    public static ImmutableArray<ImmutableArray<EwePlan>> TroughsOf(PenPlan pen, SeasonPlan plan) =>
        [.. pen.Ewes.Select(e => plan.Ewes.First(p => p.Ewe.Tag == e.Tag)).GroupBy(e => e.Chart).Where(g => g.Any(e => !e.IsLost)).Select(g => g.ToImmutableArray())];

    /// <summary>A heavy rule between two is a hurdle.</summary>
    private static IEnumerable<Element> Troughs(SheetContext context, PenPlan pen, TextStyle style, double inside)
    {
        foreach (var (i, ewes) in TroughsOf(pen, context.Plan).Index())
        {
            if (i > 0)
            {
                yield return new Rule(Lines.Section);
            }

            yield return Block.BoldThen(Fed(context, ewes), ewes[0].Chart ?? "", TypeScale.Body);
            yield return Names(ewes, context, style, inside);
        }
    }

    private static Grid Names(ImmutableArray<EwePlan> planned, SheetContext context, TextStyle style, double inside)
    {
        var ewes = planned.Where(e => !e.IsLost).ToImmutableArray();
        var names = ewes.Select(e => (Called: Who.Called(e.Ewe, style), Dots: Dots.After(e), About: RowKey.Of(e.Ewe))).ToArray();
        var widest = names.Select(n => context.Measurer.WidthOf(n.Called.Words, n.Called.Style) + context.Measurer.WidthOf(n.Dots, style)).DefaultIfEmpty(0).Max() + style.Size;
        return new Grid(
            Math.Max(1, (int)(inside / widest)),
            [.. names.Select(n => (Element)new Text([n.Called, new Run(n.Dots, style)], Leading: 1.1) { About = n.About })],
            style.Size * 1.3);
    }
}
