using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Languages;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.TupAndRaddle;

/// <summary>Which colour from which day, and a grid to write the day each ewe was marked.</summary>
internal sealed class TupAndRaddleSheet : ISheetMaker
{
    public const string KindWord = "raddle";
    private const string Code = "RADL";

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(Stationery stationery)
    {
        var groups = PencilLists.TupAndRaddle(stationery.Plan);
        if (groups.Length == 0)
        {
            return [];
        }

        var head = stationery.Head(stationery.Language.Say("Tup and raddle"), Code, stationery.Language.Say("Look at every rump every day. Write the day beside her in the column of the colour the tup wears."));
        var body = new Column([.. groups.Select(g => Group(stationery, g.Group, g.Ewes)), Ink.Notes(stationery.BarnRow, stationery.Language)], 14);
        return [new Sheet(Kind, Code, stationery.Language.Say("Tup and raddle"), SheetUse.Clipboard, Binder.BothSides(stationery, Code, body, stationery.UprightDesign(Code, head)))];
    }

    private static NeedSpace Group(Stationery stationery, GroupPlan plan, ImmutableArray<EwePlan> ewes)
    {
        var group = plan.Group;
        var periods = RaddlePeriod.Of(group, stationery.Flock.Practice.ChangeoverDays);
        var title = string.Join(": ", new[] { group.Name.Length > 0 ? group.Name : null, group.Tup is { } tup ? stationery.Language.Say($"tup {tup}") : null }.OfType<string>().DefaultIfEmpty(stationery.Language.Say("The flock")));
        ImmutableArray<Track> columns = [Track.Fixed(Mm(58)), .. Enumerable.Repeat(Track.Share(), periods.Length)];
        var head = new TableRow(
            [
                Ink.Cell(stationery.Language.Say("ewe"), Fount.Label),
                .. periods.Select(p => Ink.Cell(
                    Ink.Column(0, Ink.Text(p.Colour, Fount.BodyBold, TextAlign.Centre), Ink.Text(stationery.Language.Say($"{stationery.Language.Days.Short(p.From)}\nto {stationery.Language.Days.Short(p.To)}"), Fount.Label, TextAlign.Centre)))),
            ]);
        return new NeedSpace(Ink.Column(
            5,
            Ink.Text(title, Fount.Heading),
            Ink.Text(Ink.Sentences(stationery.Language.Say($"In on {stationery.Language.Days.Long(group.TupIn)}, out on {stationery.Language.Days.Long(group.TupOut)}."), Meaning(stationery, periods)), Fount.Body, leading: 1.25),
            new Table(columns, [head], [.. ewes.Select(e => Row(stationery, e, periods))], LeastCarried: Fount.LeastRows) { Name = title }), Mm(75));
    }

    private static string Meaning(Stationery stationery, ImmutableArray<RaddlePeriod> periods) => periods.Length < 2
        ? stationery.Language.Say("A ewe marked a second time has come round again: go by the later day.")
        : stationery.Language.Say($"A second colour on her means she did not hold and has come round again after about {stationery.Flock.Practice.ChangeoverDays} days: go by the later day. Most of them with a second colour means the tup is not getting lambs: ring the vet while there is time to change him.");

    private static TableRow Row(Stationery stationery, EwePlan ewe, ImmutableArray<RaddlePeriod> periods) => new(
        [
            Ink.Cell(Who.Of(ewe, stationery.Language)),
            .. periods.Select(p => Mark(ewe.Ewe.Marks.Where(m => p.From <= m && m <= p.To), stationery.Language)),
        ],
        stationery.BarnRow,
        Name: ewe.Ewe.CallName);

    private static TableCell Mark(IEnumerable<LocalDate> marks, Language language)
    {
        var words = string.Join(", ", marks.Select(language.Days.Short));
        return words.Length == 0 ? Ink.Blank() : Ink.Cell(words, Fount.BodyBold, TextAlign.Centre);
    }
}
