namespace PaperFlock.Sheets.Jobs;

/// <summary>Every job month by month, why it is on that day, the last day it is any use, and what became of it.</summary>
internal static class JobsSheet
{
    public static readonly SheetDefinition Definition = new("jobs", "JOBS", SheetUse.Binder)
    {
        Lives = "binder",
        Purpose = "every job, why it is on that day, the last day it is any use",
        IsForSitter = true,
        Make = Make,
    };

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        if (context.OnlyDays is { } days)
        {
            return DaysJobs.Make(context, days);
        }

        var lines = JobLine.Of(context.Plan);
        if (lines.IsEmpty)
        {
            return [];
        }

        var gatherings = context.Plan.Gatherings.Length;
        var lead = $"Tick what became of each job. The ewes are gathered on {English.Count(gatherings, "day", "days")} in all, no more than needed.";
        var months = lines.GroupBy(e => (e.Job.ShownOn.Year, e.Job.ShownOn.Month)).Select(month => Part(context, DateText.Month(month.First().Job.ShownOn), [.. month]));
        return [Binder.Upright(context, Definition, "Jobs", lead, new Column([.. months, AddedByHand(context)], 10))];
    }

    public static Element AddedByHand(SheetContext context) => Block.Ruled("Added by hand", TypeScale.Heading, context.WriteIn.TableRow, 3);

    /// <param name="title">Such as the month.</param>
    public static NeedSpace Part(SheetContext context, string title, ImmutableArray<JobLine> lines)
    {
        var tick = context.Columns.Fit(Mm(16), TypeScale.Label, "done", "not done", "not needed");
        var table = new Table(
            [context.Columns.FitDays(Mm(28), TypeScale.BodyBold), Track.Share(), tick, tick, tick, context.Columns.Fit(Mm(28), TypeScale.Label, "day, initials")],
            [
                new TableRow(
                [
                    Block.Cell("day", TypeScale.Label), Block.Cell("job, and why on that day", TypeScale.Label),
                    Block.Cell("done", TypeScale.Label, TextAlign.Centre), Block.Cell("not done", TypeScale.Label, TextAlign.Centre),
                    Block.Cell("not needed", TypeScale.Label, TextAlign.Centre), Block.Cell("day, initials", TypeScale.Label),
                ]),
            ],
            [.. lines.Select(l => Row(context, l))])
        { Name = title, RowHeaders = true };
        return new NeedSpace(
            Block.Column(4, Block.Heading(title), table),
            Mm(38));
    }

    private static TableRow Row(SheetContext context, JobLine line)
    {
        var words = new Column(
            [
                new Text([new Run(line.Title, TypeScale.BodyBold), new Run(line.Groups.Length > 0 ? $" · {line.Groups}" : "", TypeScale.Body)]),
                JobText.Trouble(line.Job) is { } trouble
                    ? Block.Text($"NOT PLACED. {trouble}", TypeScale.BodyBold)
                    : Block.Text(line.Why(context.Plan), TypeScale.Body),
            ],
            1);
        var day1 = new List<Element>
        {
            Block.Text(line.Job.Date is { } date ? DateText.Short(date) : "no day", TypeScale.BodyBold),
        };
        if (line.Job.Handled && line.Job.Date is not null)
        {
            day1.Add(Block.Text("gather", TypeScale.Label));
        }

        var tick = Block.Cell(Block.Tick(context.WriteIn.TableTick));
        return new TableRow(
            [
                Block.Cell(new Column([.. day1])),
                Block.Cell(words),
                tick, tick, tick,
                Block.Blank(),
            ],
            Math.Max(context.WriteIn.TableRow, context.WriteIn.TableTick + 5),
            About: new RowKey(RowKind.Job, line.Title + line.Groups, line.Title));
    }
}
