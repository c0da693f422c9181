namespace PaperFlock.Sheets.Jobs;

/// <summary>Every job still to be done, a line each, to tick and to say who did it.</summary>
internal static class JobsSheet
{
    public static readonly SheetDefinition Definition = new("jobs", "JOBS", SheetUse.Binder)
    {
        Lives = "binder",
        Purpose = "what was done, when, by whom",
        IsForSitter = true,
        IsOneLeaf = true,
        IsStruckByHand = true,
        OnBack = new("more jobs", [("day", 2), ("job", 6), ("who, which day", 3)]),
        Make = Make,
    };

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var plan = context.Plan;
        var lines = JobLine.Of(plan, plan.Jobs.Where(j => (context.OnlyDays?.Contains(j.ShownOn) ?? true) && LastDay(j) >= plan.AsOf));
        if (lines.IsEmpty)
        {
            return [];
        }

        var title = context.OnlyDays is { } days ? $"Jobs, {DateText.Span(days)}" : "Jobs";
        var byHand = Block.Ruled("Added by hand", TypeScale.Heading, context.WriteIn.TableRow, 2);
        var sheet = Binder.Upright(context, Definition, title, "Tick what is done, and say who did it, on which day.", Block.Column(10, Table(context, lines), byHand));
        return [sheet with { Last = lines.Max(l => LastDay(l.Job)) }];
    }

    /// <summary>One that has no day waits for one as long as it is any use.</summary>
    private static LocalDate LastDay(Job job) => job.Date ?? job.Latest;

    private static Table Table(SheetContext context, ImmutableArray<JobLine> lines) => new(
        [Track.Fixed(context.WriteIn.TableTick + 8), context.Columns.FitDays(Mm(26), TypeScale.BodyBold), Track.Share(), Track.Fixed(Mm(42))],
        [
            new TableRow(
            [
                Block.Cell("done", TypeScale.Label, TextAlign.Centre) with { Padding = Edges.Of(1, 2) }, Block.Cell("day", TypeScale.Label),
                Block.Cell("job", TypeScale.Label), Block.Cell("who, which day", TypeScale.Label),
            ]),
        ],
        [.. lines.Select(l => Row(context, l))],
        LeastCarried: TypeScale.LeastRows)
    { Name = "jobs" };

    private static TableRow Row(SheetContext context, JobLine line) => new(
        [
            Block.Cell(Block.Tick(context.WriteIn.TableTick)) with { Padding = Edges.Of(1, 1) },
            Block.Cell(line.Job.Date is { } date ? DateText.SpanOf(context.Flock, new DateInterval(date, date)) : "no day", TypeScale.BodyBold),
            Block.Cell(new Text([new Run(DateText.Whole(line.Title), TypeScale.BodyBold), new Run(More(line), TypeScale.Body), .. line.Names.Length > 0 ? Who.Quoted(Strikes.Between + line.Names, context.Plan, TypeScale.Body) : []], Leading: 1.15)),
            Block.Blank(),
        ],
        Math.Max(context.WriteIn.TableRow, context.WriteIn.TableTick + 4),
        About: new RowKey(RowKind.Job, line.Title, line.Title, LastDay(line.Job)));

    private static string More(JobLine line) => line switch
    {
        { Job.Date: null } => $". {JobText.Trouble(line.Job)}",
        { NoLaterThan: { } last } => $", no later than {DateText.Short(last)}",
        _ => "",
    };
}
