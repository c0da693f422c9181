using System.Collections.Immutable;
using System.Globalization;
using PaperFlock.Flocks;
using PaperFlock.Languages;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.LambingRecord;

/// <summary>A row a ewe in the order they are expected, to fill in as they lamb.</summary>
internal sealed class LambingRecordSheet : ISheetMaker
{
    public const string KindWord = "lambing";
    private const string Code = "LAMB";

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(Stationery stationery)
    {
        var ewes = PencilLists.LambingRecord(stationery.Plan).Where(stationery.MayLamb).ToArray();
        if (ewes.Length == 0)
        {
            return [];
        }

        var head = stationery.Head(stationery.Language.Say("Lambing record"), Code, stationery.Language.Say("In the order they are expected. Ring what is printed; write the rest. Her card holds the detail."), sideways: true);
        var table = new Table(
            [Track.Fixed(Mm(57)), Track.Fixed(Mm(38)), Track.Fixed(Mm(30)), Track.Fixed(Mm(26)), Track.Fixed(Mm(26)), Track.Fixed(Mm(28)), Track.Share()],
            [
                new TableRow(
                [
                    Ink.Cell(stationery.Language.Say("ewe"), Fount.Label), Ink.Cell(stationery.Language.Say("expected"), Fount.Label), Ink.Cell(stationery.Language.Say("lambed: day, time"), Fount.Label),
                    Ink.Cell(stationery.Language.Say("alive"), Fount.Label, TextAlign.Centre), Ink.Cell(stationery.Language.Say("dead"), Fount.Label, TextAlign.Centre), Ink.Cell(stationery.Language.Say("help"), Fount.Label, TextAlign.Centre),
                    Ink.Cell(stationery.Language.Say("lambs\u2019 marks, sex, weight; what happened"), Fount.Label),
                ]),
            ],
            [.. ewes.Select(e => Row(stationery, e))],
            LeastCarried: Fount.LeastRows)
        { Name = "ewes" };
        var body = new Column([table, Ink.Notes(stationery.BarnRow, stationery.Language)], 12);
        return [new Sheet(Kind, Code, stationery.Language.Say("Lambing record"), SheetUse.Binder, Binder.BothSides(stationery, Code, body, stationery.SidewaysDesign(Code, head)))];
    }

    private static TableRow Row(Stationery stationery, EwePlan ewe)
    {
        var mark = ewe.IsScanned ? stationery.Language.Say($"carries\u00a0{ewe.Litter}") : stationery.Language.Say("not\u00a0scanned");
        var expected = ewe.Due is { } due
            ? Ink.Cell(Ink.Column(0, Ink.Text(stationery.Language.Days.Short(due.Likely), Fount.BodyBold), Ink.Text(stationery.Language.Say($"to {stationery.Language.Days.Short(due.Latest)}"), Fount.Label)))
            : Ink.Cell(stationery.Language.Say("lambed"), Fount.Label);
        var result = ewe.Ewe.Lambing;
        var time = result.Time is { } at ? $", {Days.Clock(at)}" : "";
        var lambed = ewe.Ewe.Lambed is { } day ? Ink.Cell(stationery.Language.Days.Short(day) + time, Fount.BodyBold) : Ink.Blank();
        return new TableRow(
            [
                Ink.Cell(Who.Of(ewe, stationery.Language, mark)), expected, lambed,
                Lambs(result.Alive, ewe), Lambs(result.Dead, ewe),
                result.Help is { } help
                    ? Ink.Cell(help switch { LambingHelp.None => stationery.Language.Say("none"), LambingHelp.Hand => stationery.Language.Say("hand"), _ => stationery.Language.Say("vet") }, Fount.BodyBold, TextAlign.Centre)
                    : Ink.Cell(stationery.Language.Say("none hand vet"), Fount.Label, TextAlign.Centre),
                Ink.Blank(),
            ],
            stationery.BarnRow,
            Name: ewe.Ewe.CallName);
    }

    private static TableCell Lambs(int? known, EwePlan ewe) => known is { } count
        ? Ink.Cell(count.ToString(CultureInfo.InvariantCulture), Fount.BodyBold, TextAlign.Centre)
        : Ink.Cell(Ink.LambsToRing(ewe.Litter), Fount.Body, TextAlign.Centre);
}
