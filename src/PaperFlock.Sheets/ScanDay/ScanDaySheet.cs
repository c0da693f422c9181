using System.Collections.Immutable;
using System.Globalization;
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
        var on = days.Length == 0 ? "" : $"On {string.Join(" and ", days.Select(Days.Long))}. ";
        var head = stationery.Head("Scan day", Code, $"{on}Ring the lambs counted, and early or late if the scanner says so. Dry bellies and an empty gut scan best.");
        var table = new Table(
            [Track.Fixed(Mm(56)), Track.Fixed(Mm(37)), Track.Share(), Track.Fixed(Mm(29)), Track.Fixed(Mm(21))],
            [
                new TableRow(
                [
                    Ink.Cell("ewe", Fount.Label), Ink.Cell("marked, days in lamb", Fount.Label), Ink.Cell("lambs", Fount.Label, TextAlign.Centre),
                    Ink.Cell("stage", Fount.Label, TextAlign.Centre), Ink.Cell("note", Fount.Label),
                ]),
            ],
            [.. ewes.Select(e => Row(stationery, e))],
            LeastCarried: Fount.LeastRows)
        { Name = "ewes" };
        var body = new Column([table, Ink.Notes(stationery.BarnRow)], 12);
        return [new Sheet(Kind, Code, "Scan day", SheetUse.Clipboard, Binder.BothSides(stationery, Code, body, stationery.UprightDesign(Code, head)))];
    }

    private static TableRow Row(Stationery stationery, EwePlan ewe)
    {
        var spaced = new TextStyle(Face.TextBold, 14);
        var scan = ewe.Ewe.Scan is { } n
            ? Ink.Cell($"scanned {n.ToString(CultureInfo.InvariantCulture)}", Fount.BodyBold, TextAlign.Centre)
            : Ink.Cell("0   1   2   3   4", spaced, TextAlign.Centre);
        var stage = ewe.Ewe.ScanStage is { } s
            ? Ink.Cell(s == Flocks.ScanStage.Early ? "early" : "late", Fount.BodyBold, TextAlign.Centre)
            : Ink.Cell("early   late", Fount.Body, TextAlign.Centre);
        return new TableRow([Ink.Cell(Who.Of(ewe)), Ink.Cell(Mating(stationery, ewe)), scan, stage, Ink.Blank()], stationery.BarnRow, Name: ewe.Ewe.CallName);
    }

    private static Text Mating(Stationery stationery, EwePlan ewe)
    {
        var group = stationery.Flock.GroupOf(ewe.Ewe);
        var mated = group.IsOneDay ? group.TupIn : ewe.Ewe.Marks.IsEmpty ? (LocalDate?)null : ewe.Ewe.Marks[^1];
        var day = stationery.Plan.Jobs.FirstOrDefault(j => j.Id == JobIds.Scan && j.Group?.Name == group.Name)?.Date;
        if (mated is not { } m)
        {
            return Ink.Text("no mark seen", Fount.Label);
        }

        if (day is not { } scan)
        {
            return Ink.Text(Days.Short(m), Fount.Label);
        }

        var inLamb = Period.DaysBetween(m, scan);
        var tooEarly = inLamb < PregnancyScan.EarliestCountableDays ? ": too early to count" : "";
        return Ink.Text($"{Days.Short(m)}, {inLamb.ToString(CultureInfo.InvariantCulture)}\u00a0days{tooEarly}", Fount.Label);
    }
}
