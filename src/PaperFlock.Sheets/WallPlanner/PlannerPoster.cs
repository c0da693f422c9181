namespace PaperFlock.Sheets.WallPlanner;

/// <summary>The planner drawn at one size: head, weeks, key. Knows nothing of tiles but where they are cut.</summary>
internal static class PlannerPoster
{
    /// <summary>One that is not cut across. More than it holds runs on to another page.</summary>
    /// <param name="live">Width and height to fill, in points.</param>
    /// <param name="atOneMetre">Largest capital height in millimetres that jobs may take.</param>
    /// <param name="least">Smallest.</param>
    public static Element Of(SheetContext context, Size live, double atOneMetre, double least) =>
        Of(context, PlannerWeeks.Of(context.Plan), live, null, null, atOneMetre, least)!;

    /// <summary>Posters to be cut, each with the cut between two rows: one, or as few as hold all weeks.</summary>
    /// <param name="seamX">Where each is cut upright, from the left; null when it is not.</param>
    /// <param name="seamY">Where each is cut across, from the top.</param>
    /// <exception cref="InvalidOperationException">A single week says more than one side of the cut holds.</exception>
    public static ImmutableArray<Element> ToCut(SheetContext context, Size live, double? seamX, double seamY, double atOneMetre, double least)
    {
        var weeks = PlannerWeeks.Of(context.Plan);

        // Words too many for half a planner even so are set as small as they can be read leaning in.
        foreach (var smallest in (ReadOnlySpan<double>)[least, TypeScale.CapAtHalfMetre, TypeScale.LeastCapLeaningIn])
        {
            for (var parts = 1; parts <= Math.Max(1, weeks.Length / 2); parts++)
            {
                ImmutableArray<Element?> posters =
                [
                    .. weeks.Chunk((weeks.Length + parts - 1) / parts).Select(part => Of(context, [.. part], live, seamX, seamY, atOneMetre, smallest)),
                ];
                if (!posters.Contains(null))
                {
                    return posters.CastArray<Element>();
                }
            }
        }

        throw new InvalidOperationException("a week has more to say than half the planner holds");
    }

    /// <returns>Null when it is cut across and the cut cannot fall between two rows.</returns>
    private static Column? Of(SheetContext context, ImmutableArray<PlannerWeek> weeks, Size live, double? seamX, double? seamY, double atOneMetre, double least)
    {
        var litters = PlannerWeeks.Litters(context.Plan);
        for (var capital = atOneMetre; ; capital = Math.Max(least, capital - 0.4))
        {
            var format = new PlannerFormat(live, capital) { ForCutMark = seamY is null || litters.IsEmpty ? 0 : PlannerTiles.Mark - 3 };
            var columns = format.Columns(context, litters.Length, seamX);
            var rows = new PlannerRows(context, weeks, format, columns);
            var natural = rows.NaturalHeights();
            var head = Head(context, live, seamX, capital);
            var key = PlannerKey.Of(context, format, seamX);
            var tableHead = TableHead(context, format, litters, columns);
            var above = Heights.Of(head, live.Width, context) + Gap;
            var headRow = Heights.Of(new Table(columns, [tableHead], [new TableRow([Block.Blank(11)], 10)]), live.Width, context) - 10;
            var below = Heights.Of(key, live.Width, context) + Gap;
            var room = live.Height - above - headRow - below - 1;
            var busy = weeks.Select(w => w.IsBusy && !w.Past).ToImmutableArray();
            var heights = seamY is { } cut
                ? RowHeights.FillHalves(natural, busy, cut - above - headRow, room - (cut - above - headRow))
                : natural.Sum() <= room ? RowHeights.Fill(natural, busy, room) : (ImmutableArray<double>?)null;
            if (heights is null && capital > least)
            {
                continue;
            }

            if (heights is null && seamY is not null)
            {
                return null;
            }

            if (heights is null)
            {
                rows = new PlannerRows(context, weeks, format, columns, runsOn: true);
            }

            var table = new Table(columns, [tableHead], rows.Build(heights ?? rows.NaturalHeights()), HeadRule: Lines.Section, Outer: rows.Frame) { Name = "weeks", RowHeaders = true };
            return new Column([head, table, key], Gap) { Name = "wall planner" };
        }
    }

    private const double Gap = 6;

    private static Element Head(SheetContext context, Size live, double? seamX, double capital)
    {
        var plan = context.Plan;
        var left = seamX ?? (live.Width * 0.72);
        var name = plan.Flock.Holding.Name;
        var title = Block.Largest(
            name, context.Measurer, left - 8, TextAlign.Left,
            TypeScale.Cap(Face.TextBold, Math.Min(TypeScale.CapAtTwoMetres, capital * 2)), TypeScale.Cap(Face.TextBold, Math.Min(9.5, capital * 1.5)), TypeScale.Cap(Face.TextBold, Math.Min(6.4, capital))) with
        { Tag = StructureTag.Heading(1) };
        var style = TypeScale.Cap(Face.Text, Math.Min(4.7, capital * 0.8));
        var carrying = plan.Ewes.Count(e => e.IsCarrying);
        var due = plan.Dates is { FirstDue: { } first, LastDue: { } last }
            ? $"{English.Count(carrying, "ewe", "ewes")} to lamb, {DateText.Short(first)} to {DateText.Long(last)}"
            : $"{English.Count(plan.Ewes.Length, "ewe", "ewes")}, none in lamb";
        return new Row(
            [
                // A little air above: tiles show only what lies wholly inside them.
                new RowCell(Track.Fixed(left), Block.Column(4, Block.Gap(Mm(1)), title, Block.Text(due, style))),
                new RowCell(
                    Track.Share(),
                    Block.Column(
                        4,
                        Block.Gap(Mm(1)),
                        Block.Text(WallPlannerSheet.Definition.Code, TypeScale.Cap(Face.MonoBold, Math.Min(9.5, capital * 1.5)), TextAlign.Right, 1.1),
                        Block.Text(context.Mark.IssueWords, style with { Size = Math.Min(style.Size, 14) }, TextAlign.Right) with { About = NotContent.Instance })),
            ]);
    }

    private static TableRow TableHead(SheetContext context, PlannerFormat format, ImmutableArray<int> litters, ImmutableArray<Track> columns)
    {
        var small = format.Near with { Size = Math.Min(format.Near.Size, 12) };
        var starts = PlannerWeeks.FirstWeek(context.Plan);
        return new TableRow(
            [
                Block.Cell("week of", small, TextAlign.Right),
                .. Enumerable.Range(0, 7).Select(i => new TableCell(
                    Block.Text(DateText.Weekday(starts.PlusDays(i).DayOfWeek), WeekdayStyle(context, format, columns[1].Points), TextAlign.Centre), Padding: Edges.Of(0, 2))),
                Block.Cell("what is done, and on which day", small),
                new TableCell(Block.Text("rounds", small, TextAlign.Centre), Padding: Edges.Of(1, 2)),
                new TableCell(FeedHead(context, small, litters), Padding: new Edges(1, 2, 1 + format.ForCutMark, 2)),
            ]);
    }

    /// <summary>Points: what stands under a weekday is read leaning in.</summary>
    public const double LeastWeekday = 9;

    private static TextStyle WeekdayStyle(SheetContext context, PlannerFormat format, double width)
    {
        var style = format.NearBold;
        var wide = Enum.GetValues<IsoDayOfWeek>().Where(d => d != IsoDayOfWeek.None).Max(d => context.Measurer.WidthOf(DateText.Weekday(d), style));
        return wide <= width - 2 ? style : style with { Size = Math.Max(LeastWeekday, style.Size * (width - 2) / wide) };
    }

    private static Element? FeedHead(SheetContext context, TextStyle style, ImmutableArray<int> litters) => litters.IsEmpty ? null : Block.Column(
        1,
        Block.Text($"{context.Amounts.FeedUnit} a day, lambs", style, TextAlign.Centre, 1.05),
        new Row([.. litters.Select(l => new RowCell(
            Track.Share(), Block.Text(l.ToString(System.Globalization.CultureInfo.InvariantCulture), style with { Face = Face.TextBold }, TextAlign.Centre, 1.0)))]));
}
