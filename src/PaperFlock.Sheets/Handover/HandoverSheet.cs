using System.Collections.Immutable;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Languages;
using PaperFlock.Layout.Elements;
using PaperFlock.Sheets.House;

namespace PaperFlock.Sheets.Handover;

/// <summary>One for each absence: read through together, read back, signed by both.</summary>
internal sealed class HandoverSheet : ISheetMaker
{
    public const string KindWord = "handover";

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(Stationery stationery) =>
        [.. Absences(stationery).Select(a => One(stationery, a))];

    /// <summary>Days asked for that no absence touches are handed over all the same, to somebody still to be found.</summary>
    private static IEnumerable<Absence> Absences(Stationery stationery)
    {
        var away = stationery.Flock.KeeperDays.Away;
        return stationery.OnlyDays is { } days
            ? away.Where(a => stationery.Concerns(a.From, a.To)).DefaultIfEmpty(new Absence(days.Start, days.End, null, null, SourceSpan.WholeFile))
            : away.Where(a => a.To >= stationery.Plan.AsOf);
    }

    private static Sheet One(Stationery stationery, Absence away)
    {
        var code = $"HAND-{Days.Code(away.From)}";
        var who = away.Sitter ?? stationery.Language.Say("the sitter");
        var head = stationery.Head(
            stationery.Language.Say("Handover"),
            code,
            Lead(away, stationery.Language),
            away.Phone is null ? null : $"{who}\n{away.Phone}");
        var facts = HandoverFacts.Of(stationery, away);
        var body = new Column(
            [
                .. SitterBlanks.For(stationery, away) is { } blanks ? [blanks] : Array.Empty<Element>(),
                Section(stationery.Language.Say("What is different just now"), facts.Different, stationery, 1),
                Section(stationery.Language.Say("Jobs in these days"), facts.Jobs, stationery, 0),
                .. MayLamb.Words(stationery.Plan, away) is { IsEmpty: false } ewes ? [Section(stationery.Language.Say("Whose time may come in these days"), ewes, stationery, 0)] : Array.Empty<Element>(),
                Section(stationery.Language.Say("Ewes to watch, and why"), [.. facts.Watch], stationery, 1),
                Section(
                    stationery.Language.Say("What you may decide alone"),
                    [stationery.Language.Say("Move a ewe, feed by the chart, roll a ewe up, ring the vet: always. Never wait for the keeper to answer before ringing the vet."), stationery.Language.Say("Spend without asking, up to ____________________")],
                    stationery,
                    0),
                Section(stationery.Language.Say("When we next speak"), [stationery.Language.Say("The keeper rings, or you ring, at these times; if there is no answer, go on and write it in the log:")], stationery, 1),
                Signatures(stationery, away),
                new LogLines(stationery.TableRow, AtLeast: 0),
            ],
            7);
        var sides = Binder.BothSides(stationery, code, body, stationery.UprightDesign(code, head));
        return new Sheet(KindWord, code, stationery.Language.Say($"Handover to {who}, {stationery.Language.Days.Short(away.From)}"), SheetUse.Binder, sides) { Last = away.To };
    }

    private static string Lead(Absence away, Language language)
    {
        var (from, to) = (language.Days.Short(away.From), language.Days.Long(away.To));
        return away.Sitter is { } sitter
            ? language.Say($"{sitter} has the flock from {from} to {to}, both days included.")
            : language.Say($"The sitter has the flock from {from} to {to}, both days included.");
    }

    private static Element Section(string title, ImmutableArray<string> lines, Stationery stationery, int blanks) =>
        Section(title, [.. lines.Select(l => Ink.Text(l, Fount.Body, leading: 1.25))], stationery, blanks);

    private static KeepTogether Section(string title, ImmutableArray<Element> lines, Stationery stationery, int blanks)
    {
        var children = new List<Element> { Ink.Text(title, Fount.Heading) };
        children.AddRange(lines);
        for (var i = 0; i < blanks; i++)
        {
            children.Add(new Box(new Layout.Elements.Sized(null, Height: stationery.TableRow - 2), Layout.Edges.None, Lines.Grid, Sides.Bottom));
        }

        return new KeepTogether(new Column([.. children], 3));
    }

    private static KeepTogether Signatures(Stationery stationery, Absence away) => new(Ink.Column(
        4,
        Ink.Text(stationery.Language.Say("Walked the round together, read back, and understood"), Fount.Heading),
        new Table(
            [Track.Share(), Track.Share(), Track.Share(0.8)],
            [],
            [
                Signature(stationery, stationery.Flock.Holding.Keeper ?? stationery.Language.Say("keeper")),
                Signature(stationery, away.Sitter ?? stationery.Language.Say("sitter")),
            ])));

    private static TableRow Signature(Stationery stationery, string name) => new(
        [
            new TableCell(Ink.Text(name, Fount.Body), Align: VerticalAlign.Top),
            new TableCell(Ink.Text(stationery.Language.Say("signed"), Fount.Label), Align: VerticalAlign.Top),
            new TableCell(Ink.Text(stationery.Language.Say("day and time"), Fount.Label), Align: VerticalAlign.Top),
        ],
        stationery.TableRow);
}
