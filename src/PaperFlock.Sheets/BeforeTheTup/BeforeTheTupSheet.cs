using PaperFlock.Sheets.Jobs;

namespace PaperFlock.Sheets.BeforeTheTup;

/// <summary>Teeth, toes and teats: a row a ewe, words to ring, and what to do with her.</summary>
internal static class BeforeTheTupSheet
{
    public static readonly SheetDefinition Definition = new("before-tup", "TTT", SheetUse.Binder)
    {
        Lives = "binder",
        OnBack = new("what else was found", [("ewe", 2), ("what was found", 4), ("what was done, by whom", 4)]),
        Purpose = "before the tup: teeth, toes, teats; circle what you find",
        Make = Make,
    };

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        if (JobDays.Last(context, Definition, JobKind.TeethToesTeats, JobKind.TupCheck) is not { } last)
        {
            return [];
        }

        var job = context.Plan.Jobs.FirstOrDefault(j => j.Kind == JobKind.TeethToesTeats);
        var day = job?.Date is { } d ? $"On {DateText.Long(d)}." : "";
        var lead = Block.Sentences(day, "Circle what you find; what is in bold was found before. Feel both halves of the bag, look in every mouth, turn up every foot.");
        var rows = PencilLists.BeforeTheTup(context.Plan).Select((e, i) => Row(context, e, i + 1));
        var table = new Table(
            [Track.Fixed(Mm(56)), Track.Fixed(Mm(38)), Track.Fixed(Mm(38)), Track.Fixed(Mm(42)), Track.Fixed(Mm(18)), Track.Share()],
            [Block.Heads("ewe", "teeth", "toes", "teats", "score", "what to do with her")],
            [.. rows],
            LeastCarried: TypeScale.LeastRows)
        { Name = "ewes", RowHeaders = true };
        var body = new Column([table, TupCheck(context), Block.Notes(context.WriteIn.TableRow)], 12);
        return [Binder.Sideways(context, Definition, "Before the tup: teeth, toes, teats", lead, body) with { Last = last }];
    }

    private static TableRow Row(SheetContext context, EwePlan plan, int number)
    {
        var ewe = plan.Ewe;
        return new TableRow(
            [
                Block.Cell(Who.Of(plan, number)),
                Found(CheckText.Of(ewe.Teeth), "sound   worn   broken"),
                Found(CheckText.Of(ewe.Toes), "sound   treated   lame"),
                Found(CheckText.Of(ewe.Teats), "sound   lumpy   lost half"),
                ewe.Condition is { } c ? Block.Cell(Amounts.Figure(c, "0.#"), TypeScale.BodyBold, TextAlign.Centre) : Block.Blank(),
                Block.Cell(Advice(plan)),
            ],
            context.WriteIn.TableRow,
            About: RowKey.Of(ewe));
    }

    private static TableCell Found(string? found, string choices) =>
        found is null ? Block.Cell(choices, TypeScale.Label, TextAlign.Centre) : Block.Cell(found, TypeScale.BodyBold, TextAlign.Centre);

    private static Text Advice(EwePlan ewe)
    {
        var unchecked_ = ewe.Ewe is { Teeth: Teeth.Unchecked, Toes: Toes.Unchecked, Teats: Teats.Unchecked };
        return unchecked_ && ewe.Advice.Unfit.IsEmpty
            ? Block.Text("tup · treat first · leave out · cull", TypeScale.Label)
            : new Text([new Run(TupAdviceText.Verdict(ewe.Advice.Verdict), TypeScale.BodyBold), new Run(ewe.Advice.Findings.IsEmpty ? "" : $": {TupAdviceText.Reason(ewe)}", TypeScale.Body)]);
    }

    private static IEnumerable<string> Called(TuppingGroup group) =>
        group.Tups.IsEmpty ? [group.Tup ?? (group.Name.Length > 0 ? $"tup of {group.Name}" : "the tup")] : group.Tups.Select(t => t.Name);

    private static NeedSpace TupCheck(SheetContext context)
    {
        var tups = context.Plan.Groups.Select(g => g.Group).Where(g => g.Mating == Mating.Natural).SelectMany(Called).Distinct();
        return new NeedSpace(
            Block.Column(
                4,
                Block.Heading("The tups: ten weeks before, in time to treat or replace one"),
                new Table(
                    [Track.Fixed(Mm(56)), Track.Share(), Track.Share(), Track.Share(), Track.Share(), Track.Share(), Track.Fixed(Mm(18))],
                    [Block.Heads("tup", "teeth", "feet and legs", "eyes, brisket", "testicles, firm and even", "vet\u2019s check", "score")],
                    [
                        .. tups.Select(t => new TableRow(
                            [
                                Block.Cell(t, TypeScale.BodyBold),
                                .. Enumerable.Repeat(Block.Cell("sound   look again", TypeScale.Label, TextAlign.Centre), 4),
                                Block.Cell("yes   no", TypeScale.Label, TextAlign.Centre),
                                Block.Blank(),
                            ],
                            context.WriteIn.TableRow,
                            About: RowKey.Named(RowKind.Tup, t))),
                    ])
                { Name = "tups", RowHeaders = true }),
            Mm(40));
    }
}
