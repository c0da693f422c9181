using PaperFlock.Sheets.Handover;
using PaperFlock.Sheets.RoundLog;
using PaperFlock.Sheets.Swap;

namespace PaperFlock.Sheets.Register;

/// <summary>The first leaf: which sheets there are, which issue of each is right, and how to print and file them.</summary>
internal static class RegisterSheet
{
    public static readonly SheetDefinition Definition = new("register", "REG", SheetUse.Binder)
    {
        Lives = "binder, first",
        Purpose = "which sheets there are and which issue of each is right",
    };

    private static readonly TextStyle CodeStyle = new(Face.MonoBold, 11);

    public static Sheet Make(SheetContext context, Registered registered)
    {
        var body = new Column(
            [
                HowToPrint(context, registered),
                SheetTable(context, registered),
                .. PrintOn(context, registered),
                IssueTable.Of(context, registered.Issues),
                .. Roll(context),
            ],
            12);
        return Binder.Upright(context, Definition, "Register", Season(context), body, issue: true);
    }

    /// <summary>The round log is printed so many weeks ahead, and somebody has to know when it runs out.</summary>
    private static IEnumerable<Element> PrintOn(SheetContext context, Registered registered)
    {
        if (registered.All.Where(s => s.Definition == RoundLogSheet.Definition).Max(s => s.Last) is not { } last || last >= context.Plan.To)
        {
            return [];
        }

        var before = last.PlusDays(-LogRhythm.LeastDaysLeft);
        return [Block.BoldThen($"The round log goes to {DateText.Short(last)}.", $"Print what has changed on {DateText.Short(before.PlusDays(1))} or soon after: more of it comes then.", TypeScale.Body)];
    }

    /// <summary>Where nobody is to be away no sheet but this one names every ewe.</summary>
    private static IEnumerable<Element> Roll(SheetContext context)
    {
        var today = context.Plan.AsOf;
        if (context.Flock.KeeperDays.Away.Any(a => a.To >= today))
        {
            return [];
        }

        return [Block.Heading($"Every ewe, {DateText.Long(today)}"), new EweRoll(context, new DateInterval(today, today), context.Page.UprightWidth).Whole()];
    }

    private static string Season(SheetContext context)
    {
        var plan = context.Plan;
        var ewes = English.Count(plan.Ewes.Length, "ewe", "ewes");
        var due = plan.Dates is { FirstDue: { } first, LastDue: { } last }
            ? $"lambs from {DateText.Short(first)} to {DateText.Long(last)}"
            : "no ewe in lamb";
        return $"{plan.Flock.Holding.Name}: {ewes}, {due}.";
    }

    private static Box HowToPrint(SheetContext context, Registered registered)
    {
        var leaves = registered.Printed.Sum(s => s.Leaves) + 1;
        var flip = context.Print.Duplex switch
        {
            Duplex.LongEdge => "on both sides, turned on the long edge",
            Duplex.ShortEdge => "on both sides, turned on the short edge",
            _ => "on one side",
        };
        string?[] steps =
        [
            $"Print {(context.IsSplit && !context.Page.SingleSided ? $"the binder and the cards {flip}, all else on one side" : flip)}, at actual size (100 %), never \u201cfit to page\u201d. About {English.Count(leaves, "sheet", "sheets")} of {context.Print.Paper} paper, uncoated, 80 to 100 g.",
            "Lay a ruler on the bar below. If it is not 100 mm, stop and print again: hole ticks and cards will be wrong too.",
            registered.IsWhole
                ? "Tick each sheet off below as it is filed. A sheet that is not listed here, or bears another issue, is out of date: bin it."
                : $"Go by sheet {SwapSheet.Definition.Code}: take out, put in, tick. What stays is good as long as it is listed below, whatever day stands at its foot; what is not, or bears another issue, is out of date: bin it.",
            registered.Printed.Any(s => s.Use == SheetUse.CutUp) ? "Print the cards on stiff paper or card, and cut where the marks on the fronts say." : null,
            registered.WholePlanner is not null ? $"The planner is here on {context.Print.Paper}, and in a file of its own for a printer that takes {context.Print.Planner}." : null,
        ];
        return new Box(
            Block.Column(3, Block.Heading("How to print this pack"), Block.Numbered(3, steps.OfType<string>().Select(s => Block.Text(s, TypeScale.Body, leading: 1.25))), Block.Gap(2), CheckBar.Element()),
            Edges.Of(10, 8),
            Lines.Box);
    }

    private static Table SheetTable(SheetContext context, Registered registered) => new(
        [context.Columns.Fit(Mm(28), CodeStyle, registered.All.Select(s => s.Code)), Track.Share(), context.Columns.Fit(Mm(24), TypeScale.Label, "cut, in a box"), context.Columns.Fit(Mm(12), TypeScale.Label, "leaves"), context.Columns.Fit(Mm(12), TypeScale.Label, "issue", "below"), Track.Fixed(context.WriteIn.TableTick + 10)],
        [Block.Heads(3.., "code", "sheet", "lives", "leaves", "issue", "filed")],
        [.. Rows(context, registered)])
    { Name = "list of sheets", RowHeaders = true };

    private static IEnumerable<TableRow> Rows(SheetContext context, Registered registered)
    {
        // Links lead to the first page of a sheet, which may stay in the binder while a later leaf is printed.
        var printed = registered.Printed.Where(s => s.Sides[0].Page.Number.Number == 1).Select(s => s.Code).ToHashSet(StringComparer.Ordinal);
        foreach (var sheet in registered.All)
        {
            // Printed apart, what is pinned, cut or carried is in another file, where no link can lead.
            var target = (context.IsSplit && sheet.Use != SheetUse.Binder) || !printed.Contains(sheet.Code) ? null : sheet.Code;
            var issue = registered.IssueOf(sheet);
            yield return SheetRow(context, sheet.Code, Block.Text(sheet.Title, TypeScale.Label, leading: 1.1), Where(sheet), sheet.Leaves, issue, target);
            var parts = issue is null
                ? registered.ByIssue(sheet).Select(p => SheetRow(context, p.Label, p.Names.IsEmpty ? Block.Text(sheet.Title, TypeScale.Label) : CardNames(p.Names), "", p.Leaves, p.Issue, null))
                : sheet.Sides.Where(s => !s.Contents.IsEmpty).Select(s => SheetRow(context, s.Label, CardNames(s.Contents), "", 1, issue, null));
            foreach (var part in parts)
            {
                yield return part;
            }
        }
    }

    /// <summary>Whose cards a leaf holds; a ewe without a name goes by her tag.</summary>
    private static Text CardNames(ImmutableArray<Phrase> names) =>
        new(Phrase.Join(", ", names).Runs(TypeScale.Label), Leading: 1.2);

    private static TableRow SheetRow(SheetContext context, string code, Element title, string where, int? leaves, int? issue, string? target)
    {
        Element codeText = new Text([new Run(code, CodeStyle)]);
        return new TableRow(
            [
                Block.Cell(target is null ? codeText : new Link(codeText, target)),
                Block.Cell(title),
                Block.Cell(where, TypeScale.Label),
                Figure(leaves, "-"),
                Figure(issue, "below"),
                Block.Cell(Block.Tick(context.WriteIn.TableTick)),
            ],
            context.WriteIn.TableTick + 2,
            Name: code);
    }

    private static TableCell Figure(int? figure, string none) =>
        Block.Cell(figure is { } n ? n.ToString(CultureInfo.InvariantCulture) : none, figure is null ? TypeScale.Label : TypeScale.Body, TextAlign.Centre);

    private static string Where(Sheet sheet) => sheet.Use switch
    {
        SheetUse.Pinned => "wall",
        SheetUse.CutUp => "cut, in a box",
        SheetUse.Clipboard => "clipboard",
        _ => "binder",
    };
}
