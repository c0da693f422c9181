namespace PaperFlock.Sheets.LambingRecord;

/// <summary>A row a ewe in the order they are expected, to fill in as they lamb.</summary>
internal static class LambingRecordSheet
{
    public static readonly SheetDefinition Definition = new("lambing", "LAMB", SheetUse.Binder)
    {
        Lives = "lambing shed",
        Purpose = "a row a ewe in the order they are expected",
        IsForSitter = true,
        Make = Make,
    };

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var ewes = PencilLists.LambingRecord(context.Plan).Where(context.MayLamb).ToArray();
        if (ewes.Length == 0)
        {
            return [];
        }

        var table = new Table(
            [Track.Fixed(Mm(57)), Track.Fixed(Mm(38)), Track.Fixed(Mm(30)), Track.Fixed(Mm(26)), Track.Fixed(Mm(26)), Track.Fixed(Mm(28)), Track.Share()],
            [
                new TableRow(
                [
                    Block.Cell("ewe", TypeScale.Label), Block.Cell("expected", TypeScale.Label), Block.Cell("lambed: day, time", TypeScale.Label),
                    Block.Cell("alive", TypeScale.Label, TextAlign.Centre), Block.Cell("dead", TypeScale.Label, TextAlign.Centre), Block.Cell("help", TypeScale.Label, TextAlign.Centre),
                    Block.Cell("lambs\u2019 marks, sex, weight; what happened", TypeScale.Label),
                ]),
            ],
            [.. ewes.Select(e => Row(context, e))],
            LeastCarried: TypeScale.LeastRows)
        { Name = "ewes", RowHeaders = true };
        var body = new Column([table, Block.Notes(context.WriteIn.BarnRow)], 12);
        return [Binder.Sideways(context, Definition, "Lambing record", "In the order they are expected. Ring what is printed; write the rest. Her card holds the detail.", body)];
    }

    private static TableRow Row(SheetContext context, EwePlan ewe)
    {
        var mark = ewe.IsScanned ? $"carries\u00a0{ewe.Litter}" : "not\u00a0scanned";
        var expected = ewe.Due is { } due
            ? Block.Cell(Block.Column(0, Block.Text(DateText.Short(due.Likely), TypeScale.BodyBold), Block.Text($"to {DateText.Short(due.Latest)}", TypeScale.Label)))
            : Block.Cell("lambed", TypeScale.Label);
        var result = ewe.Ewe.Lambing;
        var time = result.Time is { } at ? $", {DateText.Clock(at)}" : "";
        var lambed = ewe.Ewe.Lambed is { } day ? Block.Cell(DateText.Short(day) + time, TypeScale.BodyBold) : Block.Blank();
        return new TableRow(
            [
                Block.Cell(Who.Of(ewe, mark)), expected, lambed,
                Lambs(result.Alive, ewe), Lambs(result.Dead, ewe),
                result.Help is { } help
                    ? Block.Cell(help switch { LambingHelp.None => "none", LambingHelp.Hand => "hand", _ => "vet" }, TypeScale.BodyBold, TextAlign.Centre)
                    : Block.Cell("none hand vet", TypeScale.Label, TextAlign.Centre),
                Block.Blank(),
            ],
            context.WriteIn.BarnRow,
            About: RowKey.Of(ewe.Ewe));
    }

    private static TableCell Lambs(int? known, EwePlan ewe) => known is { } count
        ? Block.Cell(count.ToString(CultureInfo.InvariantCulture), TypeScale.BodyBold, TextAlign.Centre)
        : Block.Cell(Block.LambsToRing(ewe.Litter), TypeScale.Body, TextAlign.Centre);
}
