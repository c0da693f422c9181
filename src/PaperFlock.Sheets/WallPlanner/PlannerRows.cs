namespace PaperFlock.Sheets.WallPlanner;

/// <summary>
/// Heights and contents of the planner's rows. Quiet weeks stand thin and busy weeks stand tall: height is spent where
/// something happens, so that it can be read from across a barn.
/// </summary>
/// <param name="runsOn">The planner takes more than a page, and any row may be the last on one.</param>
internal sealed class PlannerRows(SheetContext context, ImmutableArray<PlannerWeek> weeks, PlannerFormat format, ImmutableArray<Track> columns, bool runsOn = false)
{
    private readonly double _scale = weeks.SelectMany(w => w.Days).Select(d => Math.Max(d.High, d.ExpectedEwes)).DefaultIfEmpty(0).Max();

    private static readonly double LambingHeight = Mm(12);

    /// <summary>Thickness in points of the line above a week that is the first of a month.</summary>
    private const double NewMonth = 1.5;

    /// <summary>Thickness of the frame, all of which lies inside the last row. A thick one would take room of every row that may be the last.</summary>
    public double Frame { get; } = runsOn ? Lines.Box : Lines.Section;

    /// <summary>The least each row can do with, in points.</summary>
    public ImmutableArray<double> NaturalHeights() => [.. weeks.Select((_, i) => Natural(i))];

    /// <summary>Rows of the given heights.</summary>
    public ImmutableArray<TableRow> Build(ImmutableArray<double> heights)
    {
        var perEwe = PerEwe(heights);
        return [.. weeks.Select((w, i) => Row(w, i, heights[i], perEwe))];
    }

    private double Natural(int index)
    {
        var week = weeks[index];
        var below = Below(index);
        var thin = Math.Max(LowRow.Least(format.NearBold, NewMonth / 2, below), week.Days.Max(d => DayCell.LeastHeight(d, format, below)));
        if (!week.IsBusy)
        {
            return thin;
        }

        var words = JobWords(week);
        var text = words is null ? 0 : Heights.Of(words, JobWidth, context) + 5;
        var bars = week.IsLambing ? LambingHeight : 0;
        return Math.Max(Math.Max(text, bars), week.Past ? thin : Mm(8));
    }

    /// <summary>Height of one ewe in a bar, in points: the same in every row, so that bars can be compared down the page.</summary>
    private double PerEwe(ImmutableArray<double> heights)
    {
        // A single ewe's chances may be spread so thin that no week is a lambing week.
        var lambing = heights.Where((_, i) => weeks[i].IsLambing).ToArray();
        return lambing.Length > 0 && _scale > 0 ? (lambing.Min() - context.Measurer.MetricsOf(format.Near).CapHeight - DayCell.AboveBar) / _scale : 0;
    }

    private bool BeginsMonth(int index) => index > 0 && weeks[index].Days[6].Date.Month != weeks[index - 1].Days[6].Date.Month;

    /// <summary>What the line below a row takes of it, in points.</summary>
    private double Below(int index) =>
        runsOn || index + 1 == weeks.Length ? Frame : (BeginsMonth(index + 1) ? NewMonth : Lines.Grid) / 2;

    private double JobWidth
    {
        get
        {
            var taken = columns.Sum(c => c.Points);
            return format.Live.Width - taken - PlannerFormat.CellPadding.Horizontal - 2;
        }
    }

    private TableRow Row(PlannerWeek week, int index, double height, double perEwe)
    {
        var loud = week.IsBusy && !week.Past;

        // A row that was given no height for bars has none.
        var perBar = week.IsLambing ? perEwe : 0;
        var style = loud ? format.BusyWeek : format.NearBold;
        var low = LowRow.Of(height, style, Below(index));
        return new TableRow(
            [
                new TableCell(low.Line(DateText.DayMonth(week.Start), style, TextAlign.Right), Padding: low.Padding(5)),
                .. week.Days.Select(d => new TableCell(DayCell.Of(d, format, low, perBar), Padding: Edges.None, Align: VerticalAlign.Top)),
                new TableCell(JobWords(week), Padding: PlannerFormat.CellPadding),
                new TableCell(Rounds(week, low), Padding: low.Padding()),
                new TableCell(Feed(week, low), Padding: low.Padding() with { Right = format.ForCutMark }),
            ],
            height,
            BeginsMonth(index) ? NewMonth : null,
            About: RowKey.OfWeek(week.Start));
    }

    private Text? Rounds(PlannerWeek week, LowRow low) => week.Rounds == 0 ? null : low.Line(
        week.Rounds.ToString(CultureInfo.InvariantCulture),
        week.HeavyRounds ? format.NearBold : format.Near,
        TextAlign.Centre);

    private Text? JobWords(PlannerWeek week)
    {
        if (!week.IsBusy)
        {
            return null;
        }

        // What is over is not read from across the barn.
        var (plain, bold) = week.Past ? (format.Near, format.NearBold) : (format.Job, format.JobBold);
        var runs = new List<Run>();
        foreach (var line in week.Days.SelectMany(d => d.Lines()))
        {
            if (runs.Count > 0)
            {
                runs.Add(new Run("\n", plain));
            }

            runs.Add(new Run(line.Day, bold, Whole: true));
            runs.Add(new Run($" {line.Words}", line.Loud ? bold : plain));
        }

        if (week.IsLambing)
        {
            runs.Add(new Run((runs.Count > 0 ? "\n" : "") + Expected(week), format.Near));
        }

        return new Text([.. runs], TextAlign.Left, 1.12);
    }

    private static string Expected(PlannerWeek week)
    {
        var ewes = week.Days.Sum(d => d.ExpectedEwes);
        return ewes < 0.75
            ? "a late or early ewe may lamb"
            : $"about {English.Count((int)Math.Round(ewes, MidpointRounding.AwayFromZero), "ewe", "ewes")} to lamb this week";
    }

    private Element? Feed(PlannerWeek week, LowRow low)
    {
        if (week.Rations.All(r => r is null))
        {
            return null;
        }

        return new Row([.. week.Rations.Select(r => new RowCell(
            Track.Share(),
            low.Line(r is { } kg ? context.Amounts.PlainFigure(kg) : "-", format.Figures, TextAlign.Centre),
            VerticalAlign.Middle))]);
    }
}
