using PaperFlock.Diagnostics;

namespace PaperFlock.Sheets.Handover;

/// <summary>One for each absence: read through together, read back, signed by both.</summary>
internal static class HandoverSheet
{
    public static readonly SheetDefinition Definition = new("handover", "HAND", SheetUse.Binder)
    {
        Lives = "binder",
        Purpose = "read through together before the keeper goes, read back, signed by both",
        IsForSitter = true,
        Together = "Handovers",
        Make = Make,
    };

    private static ImmutableArray<Sheet> Make(SheetContext context) =>
        [.. Absences(context).Select(a => One(context, a))];

    /// <summary>Days asked for that no absence touches are handed over all the same, to somebody still to be found.</summary>
    private static IEnumerable<Absence> Absences(SheetContext context)
    {
        var away = context.Flock.KeeperDays.Away;
        return context.OnlyDays is { } days
            ? away.Where(a => context.Concerns(a.From, a.To)).DefaultIfEmpty(new Absence(days.Start, days.End, null, null, SourceSpan.WholeFile))
            : away.Where(a => a.To >= context.Plan.AsOf);
    }

    private static Sheet One(SheetContext context, Absence away)
    {
        var code = $"{Definition.Code}-{DateText.Code(away.From)}";
        var who = away.Sitter ?? "the sitter";
        var head = PageHead.Of(
            context,
            "Handover",
            code,
            Lead(away),
            away.Phone is null ? null : $"{who}\n{away.Phone}");
        var facts = HandoverFacts.Of(context, away);
        var body = new Column(
            [
                .. SitterBlanks.For(context, away) is { } blanks ? [blanks] : Array.Empty<Element>(),
                Section("What is different just now", facts.Different, context, 1),
                Section("Jobs in these days", facts.Jobs, context, 0),
                .. MayLamb.Words(context.Plan, away) is { IsEmpty: false } ewes ? [Section("Whose time may come in these days", ewes, context, 0)] : Array.Empty<Element>(),
                Section("Ewes to watch, and why", [.. facts.Watch], context, 1),
                Section(
                    "What you may decide alone",
                    ["Move a ewe, feed by the chart, roll a ewe up, ring the vet: always. Never wait for the keeper to answer before ringing the vet.", "Spend without asking, up to ____________________"],
                    context,
                    0),
                Section("When we next speak", ["The keeper rings, or you ring, at these times; if there is no answer, go on and write it in the log:"], context, 1),
                Signatures(context, away),
                new LogLines(context.WriteIn.TableRow, AtLeast: 0),
            ],
            7);
        return Binder.Bind(context, Definition, code, $"Handover to {who}, {DateText.Short(away.From)}", body, PageDesigns.Upright(context, code, head)) with { Last = away.To };
    }

    private static string Lead(Absence away)
    {
        var (from, to) = (DateText.Short(away.From), DateText.Long(away.To));
        return away.Sitter is { } sitter
            ? $"{sitter} has the flock from {from} to {to}, both days included."
            : $"The sitter has the flock from {from} to {to}, both days included.";
    }

    private static Element Section(string title, ImmutableArray<string> lines, SheetContext context, int blanks) =>
        Section(title, [.. lines.Select(l => Block.Text(l, TypeScale.Body, leading: 1.25))], context, blanks);

    private static KeepTogether Section(string title, ImmutableArray<Element> lines, SheetContext context, int blanks)
    {
        var children = new List<Element> { Block.Heading(title) };
        children.AddRange(lines);
        for (var i = 0; i < blanks; i++)
        {
            children.Add(new Box(new Layout.Elements.Sized(null, Height: context.WriteIn.TableRow - 2), Layout.Edges.None, Lines.Grid, Sides.Bottom));
        }

        return new KeepTogether(new Column([.. children], 3));
    }

    private static KeepTogether Signatures(SheetContext context, Absence away) => new(Block.Column(
        4,
        Block.Heading("Walked the round together, read back, and understood"),
        new Table(
            [Track.Share(), Track.Share(), Track.Share(0.8)],
            [],
            [
                Signature(context, context.Flock.Holding.Keeper ?? "keeper"),
                Signature(context, away.Sitter ?? "sitter"),
            ])
        { RowHeaders = true }));

    private static TableRow Signature(SheetContext context, string name) => new(
        [
            new TableCell(Block.Text(name, TypeScale.Body), Align: VerticalAlign.Top),
            new TableCell(Block.Text("signed", TypeScale.Label), Align: VerticalAlign.Top),
            new TableCell(Block.Text("day and time", TypeScale.Label), Align: VerticalAlign.Top),
        ],
        context.WriteIn.TableRow);
}
