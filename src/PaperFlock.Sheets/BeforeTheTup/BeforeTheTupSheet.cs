using System.Collections.Immutable;
using PaperFlock.Flocks;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.BeforeTheTup;

/// <summary>Teeth, toes and teats: a row a ewe, words to ring, and what to do with her.</summary>
internal sealed class BeforeTheTupSheet : ISheetMaker
{
    public const string KindWord = "before-tup";
    private const string Code = "TTT";

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(Stationery stationery)
    {
        var job = stationery.Plan.Jobs.FirstOrDefault(j => j.Id == JobIds.TeethToesTeats);
        var day = job?.Date is { } d ? $"On {Days.Long(d)}. " : "";
        var head = stationery.Head("Before the tup: teeth, toes, teats", Code, $"{day}Ring what you find; what is in bold was found before. Feel both halves of the bag, look in every mouth, turn up every foot.", sideways: true);
        var rows = PencilLists.BeforeTheTup(stationery.Plan).Select(e => Row(stationery, e));
        var table = new Table(
            [Track.Fixed(Mm(56)), Track.Fixed(Mm(38)), Track.Fixed(Mm(38)), Track.Fixed(Mm(42)), Track.Fixed(Mm(18)), Track.Share()],
            [
                new TableRow(
                [
                    Ink.Cell("ewe", Fount.Label), Ink.Cell("teeth", Fount.Label), Ink.Cell("toes", Fount.Label), Ink.Cell("teats", Fount.Label),
                    Ink.Cell("score", Fount.Label), Ink.Cell("what to do with her", Fount.Label),
                ]),
            ],
            [.. rows],
            LeastCarried: Fount.LeastRows)
        { Name = "ewes" };
        var body = new Column([table, TupCheck(stationery), Ink.Notes(stationery.TableRow)], 12);
        return [new Sheet(Kind, Code, "Before the tup: teeth, toes, teats", SheetUse.Binder, Binder.BothSides(stationery, Code, body, stationery.SidewaysDesign(Code, head)))];
    }

    private static TableRow Row(Stationery stationery, EwePlan plan)
    {
        var ewe = plan.Ewe;
        return new TableRow(
            [
                Ink.Cell(Who.Of(plan)),
                Found(ewe.Teeth switch { Teeth.Sound => "sound", Teeth.Worn => "worn", Teeth.Broken => "broken", _ => null }, "sound   worn   broken"),
                Found(ewe.Toes switch { Toes.Sound => "sound", Toes.Treated => "treated", Toes.Lame => "lame", _ => null }, "sound   treated   lame"),
                Found(ewe.Teats switch { Teats.Sound => "sound", Teats.Lumpy => "lumpy", Teats.LostHalf => "lost half", _ => null }, "sound   lumpy   lost half"),
                ewe.Condition is { } c ? Ink.Cell(Amounts.Figure(c, "0.0"), Fount.BodyBold, TextAlign.Centre) : Ink.Blank(),
                Ink.Cell(Advice(plan)),
            ],
            stationery.TableRow,
            Name: ewe.CallName);
    }

    private static TableCell Found(string? found, string choices) =>
        found is null ? Ink.Cell(choices, Fount.Label, TextAlign.Centre) : Ink.Cell(found, Fount.BodyBold, TextAlign.Centre);

    private static Text Advice(EwePlan ewe)
    {
        var verdict = ewe.Advice.Verdict switch
        {
            TupVerdict.ToTheTup => "to the tup",
            TupVerdict.TreatFirst => "treat first, look again",
            TupVerdict.LeaveOut => "leave out",
            _ => "cull",
        };
        var unchecked_ = ewe.Ewe is { Teeth: Teeth.Unchecked, Toes: Toes.Unchecked, Teats: Teats.Unchecked };
        return unchecked_
            ? Ink.Text("tup · treat first · leave out · cull", Fount.Label)
            : new Text([new Run(verdict, Fount.BodyBold), new Run(ewe.Advice.Reason.Length > 0 ? $": {ewe.Advice.Reason}" : "", Fount.Body)]);
    }

    private static NeedSpace TupCheck(Stationery stationery)
    {
        var tups = stationery.Plan.Groups.Select(g => g.Group).Where(g => g.Mating == Mating.Natural).Select(g => g.Tup ?? (g.Name.Length > 0 ? $"tup of {g.Name}" : "the tup")).Distinct();
        return new NeedSpace(
            Ink.Column(
                4,
                Ink.Text("The tups: ten weeks before, so that one found wanting can be mended or replaced in time", Fount.Heading),
                new Table(
                    [Track.Fixed(Mm(56)), Track.Share(), Track.Share(), Track.Share(), Track.Share(), Track.Share(), Track.Fixed(Mm(18))],
                    [new TableRow([Ink.Cell("tup", Fount.Label), Ink.Cell("teeth", Fount.Label), Ink.Cell("feet and legs", Fount.Label), Ink.Cell("eyes, brisket", Fount.Label), Ink.Cell("testicles, firm and even", Fount.Label), Ink.Cell("vet\u2019s check", Fount.Label), Ink.Cell("score", Fount.Label)])],
                    [
                        .. tups.Select(t => new TableRow(
                            [
                                Ink.Cell(t, Fount.BodyBold),
                                .. Enumerable.Repeat(Ink.Cell("sound   look again", Fount.Label, TextAlign.Centre), 4),
                                Ink.Cell("yes   no", Fount.Label, TextAlign.Centre),
                                Ink.Blank(),
                            ],
                            stationery.TableRow)),
                    ])
                { Name = "tups" }),
            Mm(40));
    }
}
