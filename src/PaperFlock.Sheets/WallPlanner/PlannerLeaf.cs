namespace PaperFlock.Sheets.WallPlanner;

/// <summary>Parts of a leaf of the planner.</summary>
internal sealed class PlannerLeaf
{
    private const double Apart = 3;

    private static readonly Edges Padding = Edges.Of(5, 3);

    private readonly SheetContext _context;
    private readonly PlannerFormat _format;
    private readonly ImmutableArray<Track> _columns;
    private readonly TableRow _head;
    private readonly WeekWords _words;
    private readonly Dictionary<LocalDate, (Element? Words, double Height)> _said = [];
    private readonly double _room;
    private readonly double _width;

    public PlannerLeaf(SheetContext context, PlannerFormat format)
    {
        (_context, _format) = (context, format);
        _columns = format.Columns(context.Measurer);
        _width = format.Width - _columns.Sum(c => c.Points) - Padding.Horizontal;
        _words = new WeekWords(context, format, _width);
        _head = new TableRow(
            [
                Block.Cell("week from", format.Label, TextAlign.Centre),
                .. Enumerable.Range(0, 7).Select(i => new TableCell(Block.Text(DateText.Weekday(context.Plan.From.PlusDays(i).DayOfWeek), format.Label, TextAlign.Centre), Padding: Edges.Of(0, 2))),
                new TableCell(Block.Text("what to do, and who is due", format.Label), Padding: Edges.Of(5, 2)),
                new TableCell(Block.Text("rounds", format.Label, TextAlign.Centre), Padding: Edges.Of(1, 2)),
            ]);

        // Any leaf's head, key and foot are as high as these.
        var longest = new LocalDate(2026, 12, 28);
        var taken = Heights.Of(Head($"{DateText.Short(longest)} to {DateText.Long(longest)}", "WALL-28DEC"), format.Width, context)
            + Heights.Of(PageDesigns.ControlLine(context, "WALL-28DEC", format.Width), format.Width, context) + Heights.Of(Key([], isLast: false), format.Width, context) + Apart + Heights.Of(new Table(_columns, [], [_head]), format.Width, context);
        _room = format.Paper.Height - PlannerFormat.Margins.Vertical - taken - Mm(4);
    }

    /// <summary>Weeks leaf by leaf, as many to each as it has room for; the weeks heavy in lamb begin one. What is over by today moves none of them to another leaf.</summary>
    public IEnumerable<ImmutableArray<PlannerWeek>> Split(ImmutableArray<PlannerWeek> weeks)
    {
        var leaf = ImmutableArray.CreateBuilder<PlannerWeek>();
        var heavy = _context.Plan.Jobs.Where(j => j.Kind == JobKind.HeavyRounds).Min(j => j.Date);
        var taken = 0.0;
        foreach (var week in weeks)
        {
            var height = Least(week);
            var most = week.NamesMany && leaf.Any(w => w.NamesMany) ? PlannerFormat.MostWeeksOfLambing : PlannerFormat.MostWeeks;
            if (leaf.Count >= most || (leaf.Count > 0 && (taken + height > _room || (week.Start <= heavy && heavy <= week.Last))))
            {
                yield return leaf.DrainToImmutable();
                taken = 0;
            }

            leaf.Add(week);
            taken += height;
        }

        if (leaf.Count > 0)
        {
            yield return leaf.DrainToImmutable();
        }
    }

    public Element Head(string days, string code)
    {
        var wide = _context.Measurer.WidthOf(code, _format.Code);
        var title = Block.Largest($"{_context.Flock.Holding.Name}, {days}", _context.Measurer, _format.Width - wide - 10, TextAlign.Left, _format.Title, TypeScale.SmallerTitle, TypeScale.Heading);
        return Block.Ends(title with { Tag = StructureTag.Heading(1), About = NotContent.Instance }, Block.Text(code, _format.Code, TextAlign.Right), wide + 2, 8, VerticalAlign.Top);
    }

    /// <summary>Rows as tall as the leaf allows, and what the signs mean.</summary>
    /// <param name="weeks">Those not over yet.</param>
    /// <param name="all">All of the leaf's: what is left off by today does not change what the signs are said to mean.</param>
    public Element Body(ImmutableArray<PlannerWeek> weeks, ImmutableArray<PlannerWeek> all, bool isLast)
    {
        var least = weeks.Select(Least).ToArray();
        var more = (_room - least.Sum()) / weeks.Length;
        var rows = weeks.Select((w, i) => Row(w, Math.Max(least[i], Math.Min(_format.TallestRow, least[i] + more))));
        return Block.Column(Apart, new Table(_columns, [_head], [.. rows]) { Name = "weeks", RowHeaders = true }, Key(all, isLast));
    }

    private Text Key(ImmutableArray<PlannerWeek> weeks, bool isLast)
    {
        var sitters = weeks.SelectMany(w => w.Days).Select(d => d.Away).OfType<Absence>().Select(a => a.Sitter ?? "a sitter").Distinct().ToArray();
        return Block.Text(
            Block.Sentences(
                "Strike each day off. Heavy box: something to do.",
                sitters.Length == 0 ? "" : $"Hatched: {English.List(sitters, "or")} is in charge.",
                weeks.Any(w => w.Due.Any(e => e.IsScanned)) ? "\u2022 \u2022\u2022 \u2022\u2022\u2022 lambs she carries." : "",
                isLast ? "" : "The next leaf hangs below."),
            _format.Label);
    }

    private double Least(PlannerWeek week) => Math.Max(_format.LeastRow, Words(week).Height);

    /// <summary>In the larger type unless a leaf of its own would not hold the week.</summary>
    private (Element? Words, double Height) Words(PlannerWeek week)
    {
        if (!_said.TryGetValue(week.Start, out var said))
        {
            foreach (var words in _format.Job.Select(style => _words.Of(week, style)))
            {
                said = (words, words is null ? 0 : Heights.Of(words, _width, _context) + Padding.Vertical);
                if (said.Height <= _room)
                {
                    break;
                }
            }

            _said.Add(week.Start, said);
        }

        return said;
    }

    private TableRow Row(PlannerWeek week, double height) => new(
        [
            Block.Cell(DateText.DayMonth(week.Start), _format.Large, TextAlign.Centre),
            .. week.Days.Select(d => new TableCell(DayBox.Of(d, _format, height - 1), Padding: Edges.None, Align: VerticalAlign.Top)),
            new TableCell(Words(week).Words, Padding: Padding),
            Block.Cell(week.Rounds == 0 ? "" : week.Rounds.ToString(CultureInfo.InvariantCulture), _format.Large, TextAlign.Centre),
        ],
        height,
        About: RowKey.OfWeek(week.Start));
}
