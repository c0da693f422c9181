using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.ScanDay;

/// <summary>At the scanner's crate: a row a ewe, lambs to ring, early or late to ring.</summary>
internal sealed class ScanDaySheet : ISheetMaker
{
    public const string KindWord = "scan";
    private const string Code = "SCAN";

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(Stationery stationery)
    {
        var ewes = PencilLists.ScanDay(stationery.Plan);
        if (ewes.Length == 0)
        {
            return [];
        }

        var days = stationery.Plan.Jobs.Where(j => j.Id == JobIds.Scan && j.Date is not null).Select(j => j.Date!.Value).Distinct().Order().ToArray();
        var on = days.Length == 0 ? "" : stationery.Language.Say($"On {days.Select(stationery.Language.Days.Long).Aggregate((before, after) => stationery.Language.Say($"{before} and {after}"))}.");
        var head = stationery.Head(stationery.Language.Say("Scan day"), Code, Ink.Sentences(on, stationery.Language.Say("Ring the lambs counted, and early or late if the scanner says so. Dry bellies and an empty gut scan best.")));
        var table = new Table(
            [Track.Fixed(Mm(56)), Track.Fixed(Mm(37)), Track.Share(), Track.Fixed(Mm(29)), Track.Fixed(Mm(21))],
            [
                new TableRow(
                [
                    Ink.Cell(stationery.Language.Say("ewe"), Fount.Label), Ink.Cell(stationery.Language.Say("marked, days in lamb"), Fount.Label), Ink.Cell(stationery.Language.Say("lambs"), Fount.Label, TextAlign.Centre),
                    Ink.Cell(stationery.Language.Say("stage"), Fount.Label, TextAlign.Centre), Ink.Cell(stationery.Language.Say("note"), Fount.Label),
                ]),
            ],
            [.. ewes.Select(e => Row(stationery, e))],
            LeastCarried: Fount.LeastRows)
        { Name = "ewes" };
        var body = new Column([table, Ink.Notes(stationery.BarnRow, stationery.Language)], 12);
        return [new Sheet(Kind, Code, stationery.Language.Say("Scan day"), SheetUse.Clipboard, Binder.BothSides(stationery, Code, body, stationery.UprightDesign(Code, head)))];
    }

    private static TableRow Row(Stationery stationery, EwePlan ewe)
    {
        var spaced = new TextStyle(Face.TextBold, 14);
        var scan = ewe.Ewe.Scan is { } n
            ? Ink.Cell(stationery.Language.Say($"scanned {n}"), Fount.BodyBold, TextAlign.Centre)
            : Ink.Cell("0   1   2   3   4", spaced, TextAlign.Centre);
        var stage = ewe.Ewe.ScanStage is { } s
            ? Ink.Cell(s == Flocks.ScanStage.Early ? stationery.Language.SayAs("stage", "early") : stationery.Language.SayAs("stage", "late"), Fount.BodyBold, TextAlign.Centre)
            : Ink.Cell(stationery.Language.SayAs("stage", "early   late"), Fount.Body, TextAlign.Centre);
        return new TableRow([Ink.Cell(Who.Of(ewe, stationery.Language)), Ink.Cell(Mating(stationery, ewe)), scan, stage, Ink.Blank()], stationery.BarnRow, Name: ewe.Ewe.CallName);
    }

    private static Text Mating(Stationery stationery, EwePlan ewe)
    {
        var group = stationery.Flock.GroupOf(ewe.Ewe);
        var mated = group.IsOneDay ? group.TupIn : ewe.Ewe.Marks.IsEmpty ? (LocalDate?)null : ewe.Ewe.Marks[^1];
        var day = stationery.Plan.Jobs.FirstOrDefault(j => j.Id == JobIds.Scan && j.Group?.Name == group.Name)?.Date;
        if (mated is not { } m)
        {
            return Ink.Text(stationery.Language.Say("no mark seen"), Fount.Label);
        }

        if (day is not { } scan)
        {
            return Ink.Text(stationery.Language.Days.Short(m), Fount.Label);
        }

        var inLamb = Period.DaysBetween(m, scan);
        var marked = stationery.Language.Days.Short(m);
        return Ink.Text(
            inLamb < PregnancyScan.EarliestCountableDays
                ? stationery.Language.Plural(inLamb, $"{marked}, {inLamb}\u00a0day: too early to count", $"{marked}, {inLamb}\u00a0days: too early to count")
                : stationery.Language.Plural(inLamb, $"{marked}, {inLamb}\u00a0day", $"{marked}, {inLamb}\u00a0days"),
            Fount.Label);
    }
}
