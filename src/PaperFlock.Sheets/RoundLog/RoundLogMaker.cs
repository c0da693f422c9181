namespace PaperFlock.Sheets.RoundLog;

/// <summary>Lays the days of the log out on sides: four heavy days, three while rounds go by night, a week when little happens; fewer where they do not fit.</summary>
internal sealed class RoundLogMaker(SheetContext context)
{
    private const double Apart = 6;

    private readonly Dictionary<(string, double), LogTable> _tables = [];

    /// <summary>Of each day of the season, by its place in it. Days with the same columns have the same key.</summary>
    private readonly ImmutableArray<(ImmutableArray<LogColumn> Columns, string Key)> _columns = [.. Columns(context.Plan)];
    private readonly Dictionary<RoundReason, bool> _sideways = [];
    private readonly Dictionary<RoundReason, int> _daysASide = [];

    /// <summary>Rows share the height of a side; a gloved hand needs so much.</summary>
    private double LeastRow => Mm(context.WriteIn.Gloves ? 10 : 9);

    public ImmutableArray<Sheet> Make() => [.. LogRhythm.Of(context, DaysASide).Select(Leaf)];

    private Sheet Leaf(LogLeaf leaf)
    {
        var code = $"{RoundLogSheet.Definition.Code}-{DateText.Code(leaf.From)}";
        var sides = leaf.Sides.Where(side => !Shown(side).IsEmpty).SelectMany(side => Fitting(side, code)).ToArray();
        var pages = Pages(sides, code, Even(sides.Length));
        // Each side has a head of its own, so pages are made again with their numbers where one did not hold all that it should.
        pages = pages.Length == sides.Length ? pages : Pages(sides, code, Even(pages.Length));
        if (Even(pages.Length) is var all && all > pages.Length)
        {
            pages = pages.Add(MoreRoom(sides[0].Side.Why, code, all));
        }

        var title = LogText.Title(Shown(sides[0].Side)[0].Date, leaf.Last).Replace("Rounds", "Round log", StringComparison.Ordinal);
        return new Sheet(RoundLogSheet.Definition, code, title, Binder.Sides(context, code, pages)) { Last = leaf.Last };
    }

    /// <summary>Both sides of a leaf are used.</summary>
    private int Even(int pages) => context.LogsOnFronts ? pages : pages + (pages % 2);

    private ImmutableArray<Page> Pages(FilledSide[] sides, string code, int of)
    {
        var pages = ImmutableArray.CreateBuilder<Page>();
        foreach (var filled in sides)
        {
            var (side, before) = (filled.Side, pages.Count);
            var design = Design(side.Why, code, filled.Head, n => n with { Number = n.Number + before, Of = of });
            var startsOn = before % 2 == 0 || context.LogsOnFronts ? PageSide.Front : PageSide.Back;
            pages.AddRange(Binder.Pages(context, code, Body(filled), design, startsOn, context.LogsOnFronts)
                .Select(p => p with
                {
                    Number = p.Number with { Number = p.Number.Number + before, Of = of },
                    // Once its last day is past, nobody misses the page.
                    Content = p.Content.Concerning(RowKey.Paragraph with { Last = side.Days[^1].Date }),
                }));
        }

        return pages.ToImmutable();
    }

    /// <summary>A back that no day needs is ruled, and is no content.</summary>
    private Page MoreRoom(RoundReason why, string code, int number)
    {
        var design = Design(why, code, Block.Text("Rounds, more room to write", TypeScale.SmallerTitle) with { About = NotContent.Instance, Tag = StructureTag.Heading(1) }, n => n with { Number = number, Of = number });
        var body = Block.Column(3, Block.Text($"day, time, {LogText.Saw}", TypeScale.Body) with { About = NotContent.Instance }, new LogLines(context.WriteIn.BarnRow));
        var page = Binder.Pages(context, code, body, design, PageSide.Back, frontsOnly: false)[0];
        return page with { Number = new PageNumber(number, number, PageSide.Back) };
    }

    private Column Head(ImmutableArray<RoundDay> shown, ImmutableArray<RoundDay> all, string code)
    {
        var width = Width(all[0].Why);
        var codeWidth = context.Measurer.WidthOf(code, TypeScale.LongCode) + 2;
        var title = Block.Largest(LogText.Title(shown[0].Date, shown[^1].Date), context.Measurer, width - codeWidth - 10, TextAlign.Left, TypeScale.SmallerTitle, TypeScale.Heading);
        return Block.Column(
            2,
            [
                new Row(
                    [
                        // It says only which rows follow, and changes with them.
                        new RowCell(Track.Share(), title with { About = NotContent.Instance, Tag = StructureTag.Heading(1) }, VerticalAlign.Bottom),
                        new RowCell(Track.Fixed(codeWidth), Block.Text(code, TypeScale.LongCode, TextAlign.Right)),
                    ],
                    10),
                LogText.Lead(context),
                .. LogText.Unseen(all) is { } unseen ? [Block.Text(unseen, TypeScale.BodyBold, leading: 1.15)] : Array.Empty<Element>(),
            ]);
    }

    /// <summary>Days that one side does not hold go on as many as they need, each with rows as high as it has room for.</summary>
    private IEnumerable<FilledSide> Fitting(LogSide side, string code)
    {
        for (var left = side.Days; !left.IsEmpty;)
        {
            var days = left.Length;
            var filled = Filled(new LogSide(left), code);
            // Days that are over are not printed, and take no room.
            var least = days - Shown(filled.Side).Length + 1;
            while (filled.Spare < 0 && days > least)
            {
                filled = Filled(new LogSide(left[..--days]), code);
            }

            yield return filled;
            left = left[days..];
        }
    }

    private FilledSide Filled(LogSide side, string code)
    {
        var shown = Shown(side);
        var (head, runs) = (Head(shown, side.Days, code), Runs(shown));
        var taken = runs.Sum(r => Heights.Of(r.Table.Of(r.Days, LeastRow), Width(side.Why), context) + Apart) - Apart;
        return new FilledSide(side, head, runs, Room(side.Why, Design(side.Why, code, head)) - taken);
    }

    private Column Body(FilledSide filled)
    {
        var rows = filled.Runs.Sum(r => r.Days.Sum(r.Table.RowsOf));
        var row = Math.Clamp(LeastRow + ((filled.Spare - 1) / rows), LeastRow, context.WriteIn.BarnRow);
        return new Column([.. filled.Runs.Select(r => new KeepTogether(r.Table.Of(r.Days, row))), Block.Notes(context.WriteIn.BarnRow)], Apart);
    }

    /// <summary>Days that follow one another and have the same places share a table.</summary>
    private List<(LogTable Table, List<RoundDay> Days)> Runs(ImmutableArray<RoundDay> days)
    {
        var runs = new List<(LogTable Table, List<RoundDay> Days)>();
        foreach (var day in days)
        {
            var table = TableOf(day);
            if (runs.Count > 0 && runs[^1].Table == table)
            {
                runs[^1].Days.Add(day);
            }
            else
            {
                runs.Add((table, [day]));
            }
        }

        return runs;
    }

    private ImmutableArray<RoundDay> Shown(LogSide side) => context.OnlyDays is null ? [.. side.Days.Where(d => d.Date >= context.Plan.AsOf)] : side.Days;

    private int DaysASide(RoundReason why)
    {
        if (_daysASide.TryGetValue(why, out var known))
        {
            return known;
        }

        var days = Days(why);
        var across = days.Where(d => TableOf(d).LiesAcross).ToArray();
        // A day or two between two places must not make every side of the season as roomy as theirs.
        var usual = across.Length * 2 >= days.Length ? across : [.. days.Except(across)];
        var most = why switch { RoundReason.Lambing => 3, RoundReason.HeavyWeeks => 4, _ => NodaConstants.DaysPerWeek };
        var room = Room(why, Design(why, "LOG-00AAA", Head([days[0], days[^1]], [.. days], "LOG-00AAA")));
        foreach (var day in usual.DistinctBy(d => (TableOf(d), d.Times.Length)))
        {
            var (one, two) = (HeightOf(1), HeightOf(2));
            most = Math.Clamp(1 + (int)((room - one) / (two - one)), 1, most);

            double HeightOf(int days) => Heights.Of(TableOf(day).Of(Enumerable.Repeat(day, days), LeastRow), Width(why), context);
        }

        return _daysASide[why] = most;
    }

    private LogTable TableOf(RoundDay day) => TableOf(day, Width(day.Why));

    private LogTable TableOf(RoundDay day, double width)
    {
        var (columns, key) = _columns[Period.DaysBetween(context.Plan.From, day.Date)];
        return _tables.TryGetValue((key, width), out var same) ? same : _tables[(key, width)] = new LogTable(context, columns, width);
    }

    private static IEnumerable<(ImmutableArray<LogColumn> Columns, string Key)> Columns(SeasonPlan plan)
    {
        var changes = LogColumn.Changes(plan);
        var (columns, key) = (ImmutableArray<LogColumn>.Empty, "");
        foreach (var day in plan.Rounds.Select(r => r.Date))
        {
            if (day == plan.From || changes.Contains(day))
            {
                columns = LogColumn.On(plan, day);
                key = string.Join('\n', columns.Select(c => $"{c.Place}\t{c.Kind}\t{c.Chart}"));
            }

            yield return (columns, key);
        }
    }

    /// <summary>Days of a pace that mostly have more places than an upright side is wide lie on their side.</summary>
    private bool IsSideways(RoundReason why)
    {
        if (!_sideways.TryGetValue(why, out var sideways))
        {
            var days = Days(why);
            sideways = days.Count(d => !TableOf(d, context.Page.UprightWidth).LiesAcross && TableOf(d, context.Page.SidewaysBody.Width).LiesAcross) * 2 > days.Length;
            _sideways.Add(why, sideways);
        }

        return sideways;
    }

    private double Width(RoundReason why) => IsSideways(why) ? context.Page.SidewaysBody.Width : context.Page.UprightWidth;

    private PageDesign Design(RoundReason why, string code, Element head, Func<PageNumber, PageNumber>? renumber = null) =>
        IsSideways(why) ? PageDesigns.Sideways(context, code, head, renumber) : PageDesigns.Upright(context, code, head, renumber);

    private RoundDay[] Days(RoundReason why) => [.. context.Plan.Rounds.Where(d => Pace(d.Why) == Pace(why))];

    private static RoundReason Pace(RoundReason why) => why == RoundReason.NoneInLamb ? RoundReason.OutsideHeavyWeeks : why;

    /// <summary>Height of a page's body, in points.</summary>
    private double Room(RoundReason why, PageDesign design) => Heights.OfBody(design, Width(why), context);

    /// <summary>A side with its head and its tables.</summary>
    /// <param name="Spare">Points of its height that they leave with the lowest rows there may be; below 0 where they do not fit.</param>
    private sealed record FilledSide(LogSide Side, Element Head, List<(LogTable Table, List<RoundDay> Days)> Runs, double Spare);
}
