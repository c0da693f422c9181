using System.Collections.Immutable;
using PaperFlock.Flocks;
using PaperFlock.Languages;
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
        var day = job?.Date is { } d ? stationery.Language.Say($"On {stationery.Language.Days.Long(d)}.") : "";
        var head = stationery.Head(stationery.Language.Say("Before the tup: teeth, toes, teats"), Code, Ink.Sentences(day, stationery.Language.Say("Ring what you find; what is in bold was found before. Feel both halves of the bag, look in every mouth, turn up every foot.")), sideways: true);
        var rows = PencilLists.BeforeTheTup(stationery.Plan).Select(e => Row(stationery, e));
        var table = new Table(
            [Track.Fixed(Mm(56)), Track.Fixed(Mm(38)), Track.Fixed(Mm(38)), Track.Fixed(Mm(42)), Track.Fixed(Mm(18)), Track.Share()],
            [
                new TableRow(
                [
                    Ink.Cell(stationery.Language.Say("ewe"), Fount.Label), Ink.Cell(stationery.Language.Say("teeth"), Fount.Label), Ink.Cell(stationery.Language.Say("toes"), Fount.Label), Ink.Cell(stationery.Language.Say("teats"), Fount.Label),
                    Ink.Cell(stationery.Language.Say("score"), Fount.Label), Ink.Cell(stationery.Language.Say("what to do with her"), Fount.Label),
                ]),
            ],
            [.. rows],
            LeastCarried: Fount.LeastRows)
        { Name = "ewes" };
        var body = new Column([table, TupCheck(stationery), Ink.Notes(stationery.TableRow, stationery.Language)], 12);
        return [new Sheet(Kind, Code, stationery.Language.Say("Before the tup: teeth, toes, teats"), SheetUse.Binder, Binder.BothSides(stationery, Code, body, stationery.SidewaysDesign(Code, head)))];
    }

    private static TableRow Row(Stationery stationery, EwePlan plan)
    {
        var ewe = plan.Ewe;
        return new TableRow(
            [
                Ink.Cell(Who.Of(plan, stationery.Language)),
                Found(CheckWords.Of(ewe.Teeth, stationery.Language), stationery.Language.Say("sound   worn   broken")),
                Found(CheckWords.Of(ewe.Toes, stationery.Language), stationery.Language.Say("sound   treated   lame")),
                Found(CheckWords.Of(ewe.Teats, stationery.Language), stationery.Language.Say("sound   lumpy   lost half")),
                ewe.Condition is { } c ? Ink.Cell(Amounts.Figure(c, "0.0"), Fount.BodyBold, TextAlign.Centre) : Ink.Blank(),
                Ink.Cell(Advice(plan, stationery.Language)),
            ],
            stationery.TableRow,
            Name: ewe.CallName);
    }

    private static TableCell Found(string? found, string choices) =>
        found is null ? Ink.Cell(choices, Fount.Label, TextAlign.Centre) : Ink.Cell(found, Fount.BodyBold, TextAlign.Centre);

    private static Text Advice(EwePlan ewe, Language language)
    {
        var verdict = ewe.Advice.Verdict switch
        {
            TupVerdict.ToTheTup => language.Say("to the tup"),
            TupVerdict.TreatFirst => language.Say("treat first, look again"),
            TupVerdict.LeaveOut => language.Say("leave out"),
            _ => language.Say("cull"),
        };
        var unchecked_ = ewe.Ewe is { Teeth: Teeth.Unchecked, Toes: Toes.Unchecked, Teats: Teats.Unchecked };
        return unchecked_
            ? Ink.Text(language.Say("tup · treat first · leave out · cull"), Fount.Label)
            : new Text([new Run(verdict, Fount.BodyBold), new Run(ewe.Advice.Reason.Length > 0 ? $": {ewe.Advice.Reason}" : "", Fount.Body)]);
    }

    private static NeedSpace TupCheck(Stationery stationery)
    {
        var tups = stationery.Plan.Groups.Select(g => g.Group).Where(g => g.Mating == Mating.Natural).Select(g => g.Tup ?? (g.Name.Length > 0 ? stationery.Language.Say($"tup of {g.Name}") : stationery.Language.Say("the tup"))).Distinct();
        return new NeedSpace(
            Ink.Column(
                4,
                Ink.Text(stationery.Language.Say("The tups: ten weeks before, so that one found wanting can be mended or replaced in time"), Fount.Heading),
                new Table(
                    [Track.Fixed(Mm(56)), Track.Share(), Track.Share(), Track.Share(), Track.Share(), Track.Share(), Track.Fixed(Mm(18))],
                    [new TableRow([Ink.Cell(stationery.Language.Say("tup"), Fount.Label), Ink.Cell(stationery.Language.Say("teeth"), Fount.Label), Ink.Cell(stationery.Language.Say("feet and legs"), Fount.Label), Ink.Cell(stationery.Language.Say("eyes, brisket"), Fount.Label), Ink.Cell(stationery.Language.Say("testicles, firm and even"), Fount.Label), Ink.Cell(stationery.Language.Say("vet\u2019s check"), Fount.Label), Ink.Cell(stationery.Language.Say("score"), Fount.Label)])],
                    [
                        .. tups.Select(t => new TableRow(
                            [
                                Ink.Cell(t, Fount.BodyBold),
                                .. Enumerable.Repeat(Ink.Cell(stationery.Language.Say("sound   look again"), Fount.Label, TextAlign.Centre), 4),
                                Ink.Cell(stationery.Language.Say("yes   no"), Fount.Label, TextAlign.Centre),
                                Ink.Blank(),
                            ],
                            stationery.TableRow)),
                    ])
                { Name = "tups" }),
            Mm(40));
    }
}
