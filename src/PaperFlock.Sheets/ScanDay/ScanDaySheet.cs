using PaperFlock.Sheets.Jobs;

namespace PaperFlock.Sheets.ScanDay;

/// <summary>At the scanner's crate: a row a ewe, lambs to circle, early or late to circle.</summary>
internal static class ScanDaySheet
{
    public static readonly SheetDefinition Definition = new("scan", "SCAN", SheetUse.Clipboard)
    {
        Lives = "clipboard",
        Purpose = "at the scanner\u2019s crate: circle the lambs counted",
        Make = Make,
    };

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        var ewes = PencilLists.ScanDay(context.Plan);
        if (ewes.Length == 0 || JobDays.Last(context, Definition, JobKind.Scan) is not { } last)
        {
            return [];
        }

        var days = context.Plan.Jobs.Where(j => j.Kind == JobKind.Scan && j.Date is not null).Select(j => j.Date!.Value).Distinct().Order().ToArray();
        var on = days.Length == 0 ? "" : $"On {days.Select(DateText.Long).Aggregate((before, after) => $"{before} and {after}")}.";
        var lead = Block.Sentences(on, "Circle the lambs counted, and early or late if the scanner says so. Scan them dry and empty.");
        var table = new Table(
            [Track.Fixed(Mm(56)), Track.Fixed(Mm(37)), Track.Share(), Track.Fixed(Mm(29)), Track.Fixed(Mm(21))],
            [Block.Heads(2..4, "ewe", "marked, days in lamb", "lambs", "stage", "note")],
            [.. ewes.Select((e, i) => Row(context, e, i + 1))],
            LeastCarried: TypeScale.LeastRows)
        { Name = "ewes", RowHeaders = true };
        var body = new Column([table, Block.Notes(context.WriteIn.BarnRow)], 12);
        return [Binder.Upright(context, Definition, "Scan day", lead, body) with { Last = last }];
    }

    private static TableRow Row(SheetContext context, EwePlan ewe, int number)
    {
        var spaced = new TextStyle(Face.TextBold, 14);
        var scan = ewe.Ewe.Scan is { } n
            ? Block.Cell($"scanned {n}", TypeScale.BodyBold, TextAlign.Centre)
            : Block.Cell("0   1   2   3   4", spaced, TextAlign.Centre);
        var stage = ewe.Ewe.ScanStage is { } s
            ? Block.Cell(EvidenceText.Stage(s), TypeScale.BodyBold, TextAlign.Centre)
            : Block.Cell("early   late", TypeScale.Body, TextAlign.Centre);
        return new TableRow([Block.Cell(Who.Of(ewe, number)), ewe.Standing == Standing.Gone ? Block.Cell("gone", TypeScale.Body) : Block.Cell(Mating(context, ewe)), scan, stage, Block.Blank()], context.WriteIn.BarnRow, About: RowKey.Of(ewe.Ewe));
    }

    private static Text Mating(SheetContext context, EwePlan ewe)
    {
        var group = context.Flock.GroupOf(ewe.Ewe);
        var mated = group.IsOneDay ? group.TupIn : ewe.Ewe.Marks.IsEmpty ? (LocalDate?)null : ewe.Ewe.Marks[^1];
        var day = context.Plan.Jobs.FirstOrDefault(j => j.Kind == JobKind.Scan && j.Group?.Name == group.Name)?.Date;
        if (mated is not { } m)
        {
            return Block.Text("no mark seen", TypeScale.Label);
        }

        if (day is not { } scan)
        {
            return Block.Text(DateText.Short(m), TypeScale.Label);
        }

        var inLamb = Period.DaysBetween(m, scan);
        var marked = DateText.Short(m);
        return Block.Text(
            inLamb < PregnancyScan.EarliestCountableDays
                ? English.Plural(inLamb, $"{marked}, {inLamb}\u00a0day: too early to count", $"{marked}, {inLamb}\u00a0days: too early to count")
                : English.Plural(inLamb, $"{marked}, {inLamb}\u00a0day", $"{marked}, {inLamb}\u00a0days"),
            TypeScale.Label);
    }
}
