using System.Collections.Immutable;
using System.Globalization;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Sheets.House;
using PaperFlock.Sheets.Issues;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.WallPlanner;

/// <summary>
/// Heights and contents of the planner's rows. Quiet weeks stand thin and busy weeks stand tall: height is spent where
/// something happens, so that it can be read from across a barn.
/// </summary>
internal sealed class PlannerRows(Stationery stationery, ImmutableArray<PlannerWeek> weeks, PlannerFormat format, ImmutableArray<Track> columns)
{
    private readonly double _scale = weeks.SelectMany(w => w.Days).Select(d => Math.Max(d.High, d.ExpectedEwes)).DefaultIfEmpty(0).Max();

    private static readonly double LambingHeight = Mm(12);

    /// <summary>The least each row can do with, in points.</summary>
    public ImmutableArray<double> NaturalHeights() => [.. weeks.Select(Natural)];

    /// <summary>Rows of the given heights.</summary>
    public ImmutableArray<TableRow> Build(ImmutableArray<double> heights)
    {
        var perEwe = PerEwe(heights);
        return [.. weeks.Select((w, i) => Row(w, i, heights[i], perEwe))];
    }

    private double Natural(PlannerWeek week)
    {
        var thin = (stationery.Measurer.MetricsOf(format.Near).CapHeight * 1.5) + 1;
        if (!week.IsBusy)
        {
            return thin;
        }

        var words = JobWords(week);
        var text = words is null ? 0 : Heights.Of(words, JobWidth, stationery) + 5;
        var bars = week.IsLambing ? LambingHeight : 0;
        return Math.Max(Math.Max(text, bars), week.Past ? thin : Mm(8));
    }

    /// <summary>Height of one ewe in a bar, in points: the same in every row, so that bars can be compared down the page.</summary>
    private double PerEwe(ImmutableArray<double> heights)
    {
        // A single ewe's chances may be spread so thin that no week is a lambing week.
        var lambing = heights.Where((_, i) => weeks[i].IsLambing).ToArray();
        return lambing.Length > 0 && _scale > 0 ? (lambing.Min() - stationery.Measurer.MetricsOf(format.Near).CapHeight - DayCell.AboveBar) / _scale : 0;
    }

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
        var newMonth = index > 0 && week.Days[6].Date.Month != weeks[index - 1].Days[6].Date.Month;
        var loud = week.IsBusy && !week.Past;

        // A row that was given no height for bars has none.
        var perBar = week.IsLambing ? perEwe : 0;
        var label = Ink.Text(stationery.Language.Days.DayMonth(week.Start), loud ? format.BusyWeek : format.NearBold, TextAlign.Right, 1.0);
        var none = Edges.None;
        return new TableRow(
            [
                new TableCell(label, Padding: Edges.Of(5, 0)),
                .. week.Days.Select(d => new TableCell(DayCell.Of(d, format, height, perBar, stationery.Language), Padding: none, Align: VerticalAlign.Top)),
                new TableCell(JobWords(week), Padding: PlannerFormat.CellPadding),
                new TableCell(Rounds(week), Padding: none),
                new TableCell(Feed(week), Padding: none),
            ],
            height,
            newMonth ? 1.5 : null,
            Name: Dated.Name(stationery.Language.Say($"week of {stationery.Language.Days.Short(week.Start)}"), week.Days[6].Date));
    }

    private Text? Rounds(PlannerWeek week) => week.Rounds == 0 ? null : Ink.Text(
        week.Rounds.ToString(CultureInfo.InvariantCulture),
        week.HeavyRounds ? format.NearBold : format.Near,
        TextAlign.Centre,
        1.0);

    private Text? JobWords(PlannerWeek week)
    {
        if (week.Lines.IsEmpty && !week.IsLambing)
        {
            return null;
        }

        // What is over is not read from across the barn.
        var (plain, bold) = week.Past ? (format.Near, format.NearBold) : (format.Job, format.JobBold);
        var runs = new List<Run>();
        foreach (var line in week.Lines)
        {
            if (runs.Count > 0)
            {
                runs.Add(new Run("\n", plain));
            }

            runs.Add(new Run($"{line.Day}", bold, Whole: true));
            runs.Add(new Run($" {line.Words}", line.Loud ? bold : plain));
        }

        if (week.IsLambing)
        {
            runs.Add(new Run((runs.Count > 0 ? "\n" : "") + Expected(week), format.Near));
        }

        return new Text([.. runs], TextAlign.Left, 1.12);
    }

    private string Expected(PlannerWeek week)
    {
        var ewes = week.Days.Sum(d => d.ExpectedEwes);
        return ewes < 0.75
            ? stationery.Language.Say("a late or early ewe may lamb")
            : stationery.Language.Say($"about {stationery.Language.Count((int)Math.Round(ewes, MidpointRounding.AwayFromZero), "ewe", "ewes")} to lamb this week");
    }

    private Element? Feed(PlannerWeek week)
    {
        if (week.Rations.All(r => r is null))
        {
            return null;
        }

        return new Row([.. week.Rations.Select(r => new RowCell(
            Track.Share(),
            Ink.Text(r is { } kg ? stationery.Amounts.RationFigure(kg) : "-", format.Figures, TextAlign.Centre, 1.0),
            VerticalAlign.Middle))]);
    }
}
