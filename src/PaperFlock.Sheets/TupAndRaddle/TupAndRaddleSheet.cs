using PaperFlock.Sheets.Jobs;

namespace PaperFlock.Sheets.TupAndRaddle;

/// <summary>Which colour from which day, and a grid to write the day each ewe was marked.</summary>
internal static class TupAndRaddleSheet
{
    public static readonly SheetDefinition Definition = new("raddle", "RADL", SheetUse.Clipboard)
    {
        Lives = "clipboard",
        Purpose = "which raddle colour from which day; the day each ewe was marked",
        Make = Make,
    };

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var groups = PencilLists.TupAndRaddle(context.Plan);
        if (groups.Length == 0 || JobDays.Last(context, Definition, JobKind.TupIn, JobKind.TupOut) is not { } last)
        {
            return [];
        }

        const string lead = "Check every ewe\u2019s back end every day. Write the day beside her, in the column of the raddle he is wearing.";
        var body = new Column([.. groups.Select((g, i) => Group(context, g.Group, g.Ewes, groups.Take(i).Sum(before => before.Ewes.Length))), Block.Notes(context.WriteIn.BarnRow)], 14);
        return [Binder.Upright(context, Definition, "Tup and raddle", lead, body) with { Last = last }];
    }

    /// <param name="before">Rows of the groups before it: numbers go on through all of them.</param>
    private static NeedSpace Group(SheetContext context, GroupPlan plan, ImmutableArray<EwePlan> ewes, int before)
    {
        var group = plan.Group;
        var periods = RaddlePeriod.Of(group, context.Flock.Practice.ChangeoverDays);
        var title = string.Join(": ", new[] { group.Name.Length > 0 ? group.Name : null, group.OneTup is { } tup ? $"tup {tup}" : null }.OfType<string>().DefaultIfEmpty("The flock"));
        ImmutableArray<Track> columns = [Track.Fixed(Mm(58)), .. Enumerable.Repeat(Track.Share(), periods.Length)];
        var head = new TableRow(
            [
                Block.Cell("ewe", TypeScale.Label),
                .. periods.Select(p => Block.Cell(
                    Block.Column(0, Block.Text(p.Colour, TypeScale.BodyBold, TextAlign.Centre), Block.Text($"{DateText.Short(p.From)}\nto {DateText.Short(p.To)}", TypeScale.Label, TextAlign.Centre)))),
            ]);
        return new NeedSpace(Block.Column(
            5,
            Block.Heading(title),
            Block.Text(Block.Sentences(Days(group), Meaning(context, periods)), TypeScale.Body, leading: 1.25),
            new Table(columns, [head], [.. ewes.Select((e, i) => Row(context, e, before + i + 1, periods))], LeastCarried: TypeScale.LeastRows) { Name = title, RowHeaders = true }), Mm(75));
    }

    private static string Days(TuppingGroup group) => group.Tups.IsEmpty
        ? $"In on {DateText.Long(group.TupIn)}, out on {DateText.Long(group.TupOut)}."
        : string.Join(" ", group.Tups.Select(t => $"{t.Name} in on {DateText.Long(t.In)}, out on {DateText.Long(t.Out)}."));

    private static string Meaning(SheetContext context, ImmutableArray<RaddlePeriod> periods) => periods.Length < 2
        ? "A ewe marked a second time has come round again: go by the later day."
        : $"A second colour on her means she did not hold and has come round again after about {context.Flock.Practice.ChangeoverDays} days: go by the later day. Most of them with a second colour means the tup is not getting lambs: ring the vet while there is time to change him.";

    private static TableRow Row(SheetContext context, EwePlan ewe, int number, ImmutableArray<RaddlePeriod> periods) => new(
        [
            Block.Cell(Who.Of(ewe, number)),
            .. periods.Select(p => Mark(ewe.Ewe.Marks.Where(m => p.From <= m && m <= p.To))),
        ],
        context.WriteIn.BarnRow,
        About: RowKey.Of(ewe.Ewe));

    private static TableCell Mark(IEnumerable<LocalDate> marks)
    {
        var words = string.Join(", ", marks.Select(DateText.Short));
        return words.Length == 0 ? Block.Blank() : Block.Cell(words, TypeScale.BodyBold, TextAlign.Centre);
    }
}
