using System.Collections.Immutable;
using System.Globalization;
using PaperFlock.Flocks;
using PaperFlock.Languages;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;
using PaperFlock.Sheets.Swap;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Register;

/// <summary>The first leaf: which sheets there are, which issue of each is right, and how to print and file them.</summary>
internal static class RegisterSheet
{
    public const string Kind = "register";
    public const string Code = "REG";

    public static Sheet Make(Stationery stationery, Registered registered)
    {
        var title = stationery.OnlyDays is { } days ? stationery.Language.Say($"Register, {stationery.Language.Days.Span(days)}") : stationery.Language.Say("Register");
        var head = stationery.Head(title, Code, Season(stationery), stationery.Mark.IssueWords);
        var body = new Column(
            [
                HowToPrint(stationery, registered),
                SheetTable(stationery, registered),
                .. stationery.OnlyDays is null ? [IssueTable.Of(stationery, registered.Issues)] : Array.Empty<Element>(),
            ],
            12);
        var sides = Binder.BothSides(stationery, Code, body, stationery.UprightDesign(Code, head));
        return new Sheet(Kind, Code, title, SheetUse.Binder, sides);
    }

    private static string Season(Stationery stationery)
    {
        var plan = stationery.Plan;
        var ewes = stationery.Language.Count(plan.Ewes.Length, "ewe", "ewes");
        var due = plan.Dates is { FirstDue: { } first, LastDue: { } last }
            ? stationery.Language.Say($"lambs from {stationery.Language.Days.Short(first)} to {stationery.Language.Days.Long(last)}")
            : stationery.Language.Say("no ewe in lamb");
        return $"{plan.Flock.Holding.Name}: {ewes}, {due}.";
    }

    private static Box HowToPrint(Stationery stationery, Registered registered)
    {
        var leaves = registered.Printed.Sum(s => s.Leaves) + 1;
        var flip = stationery.Print.Duplex switch
        {
            Duplex.LongEdge => stationery.Language.Say("on both sides, turned on the long edge"),
            Duplex.ShortEdge => stationery.Language.Say("on both sides, turned on the short edge"),
            _ => stationery.Language.Say("on one side"),
        };
        var steps = new List<string>
        {
            stationery.Language.Say($"Print {(stationery.IsSplit && !stationery.SingleSided ? stationery.Language.Say($"the binder and the cards {flip}, all else on one side") : flip)}, at actual size (100 %), never \u201cfit to page\u201d. About {stationery.Language.Count(leaves, "sheet", "sheets")} of {stationery.Print.Paper} paper, uncoated, 80 to 100 g."),
            stationery.Language.Say("Lay a ruler on the bar below. If it is not 100 mm, stop and print again: hole ticks, tiles and cards will be wrong too."),
            stationery.OnlyDays is { } days
                ? stationery.Language.Say($"Tick each sheet off below as it goes in. The set is for {stationery.Language.Days.Span(days)} only: when those days are over, keep what was written on and bin the rest.")
                : registered.IsWhole
                    ? stationery.Language.Say("Tick each sheet off below as it is filed. A sheet that is not listed here, or bears another issue, is out of date: bin it.")
                    : stationery.Language.Say($"Go by sheet {SwapSheet.Code}: take out, put in, tick. What stays is good as long as it is listed below, whatever day stands at its foot; what is not, or bears another issue, is out of date: bin it."),
        };
        if (registered.Printed.Any(s => s.Use == SheetUse.CutUp))
        {
            steps.Add(stationery.Language.Say("Print the cards on stiff paper or card, and cut where the marks on the fronts say."));
        }

        if (registered.WholePlanner is not null)
        {
            steps.Add(stationery.Language.Say($"The planner comes as tiles to glue, and in one piece in a file of its own for a printer that takes {stationery.Print.Planner}."));
        }

        var children = new List<Element> { Ink.Text(stationery.Language.Say("How to print this pack"), Fount.Heading) };
        children.AddRange(steps.Select((s, i) => (Element)new Row(
            [
                new RowCell(Track.Fixed(16), Ink.Text((i + 1).ToString(CultureInfo.InvariantCulture), Fount.BodyBold)),
                new RowCell(Track.Share(), Ink.Text(s, Fount.Body, leading: 1.25)),
            ])));
        children.Add(Ink.Gap(2));
        children.Add(CheckBar.Element(stationery.Language));
        return new Box(new Column([.. children], 3), Edges.Of(10, 8), Lines.Box);
    }

    private static Table SheetTable(Stationery stationery, Registered registered)
    {
        // Links lead to the first page of a sheet, which may stay in the binder while a later leaf is printed.
        var printed = registered.Printed.Where(s => s.Sides[0].Page.Number.Number == 1).Select(s => s.Code).ToHashSet(StringComparer.Ordinal);
        var ewes = stationery.Plan.Ewes.ToLookup(e => e.Ewe.CallName, StringComparer.Ordinal);
        var rows = ImmutableArray.CreateBuilder<TableRow>();
        foreach (var sheet in registered.All)
        {
            // Printed apart, what is pinned, cut or carried is in another file, where no link can lead.
            var target = (stationery.IsSplit && sheet.Use != SheetUse.Binder) || !printed.Contains(sheet.Code) ? null : sheet.Code;
            var issue = registered.IssueOf(sheet);
            rows.Add(SheetRow(stationery, sheet.Code, Ink.Text(sheet.Title, Fount.Body), Where(sheet, stationery.Language), sheet.Leaves, issue, target));
            rows.AddRange(issue is null
                ? registered.ByIssue(sheet).Select(p => SheetRow(stationery, p.Label, p.Names.IsEmpty ? Ink.Text(sheet.Title, Fount.Label) : CardNames(ewes, p.Names), Where(sheet, stationery.Language), p.Leaves, p.Issue, null))
                : sheet.Sides.Where(s => !s.Contents.IsEmpty).Select(s => SheetRow(stationery, s.Label, CardNames(ewes, s.Contents), "", 1, issue, null)));
        }

        return new Table(
            [Track.Fixed(Mm(30)), Track.Share(), Track.Fixed(Mm(34)),
                stationery.Column(Mm(15), Fount.Label, stationery.Language.Say("leaves")),
                stationery.Column(Mm(14), Fount.Label, stationery.Language.Say("issue"), stationery.Language.Say("below")),
                stationery.Column(Mm(17), Fount.Label, stationery.Language.Say("filed"))],
            [
                new TableRow(
                [
                    Ink.Cell(stationery.Language.Say("code"), Fount.Label), Ink.Cell(stationery.Language.Say("sheet"), Fount.Label), Ink.Cell(stationery.Language.Say("lives"), Fount.Label),
                    Ink.Cell(stationery.Language.Say("leaves"), Fount.Label, TextAlign.Centre), Ink.Cell(stationery.Language.Say("issue"), Fount.Label, TextAlign.Centre),
                    Ink.Cell(stationery.Language.Say("filed"), Fount.Label, TextAlign.Centre),
                ]),
            ],
            rows.ToImmutable())
        { Name = "list of sheets" };
    }

    /// <summary>Whose cards a leaf holds; a ewe without a name goes by her tag.</summary>
    private static Text CardNames(ILookup<string, EwePlan> ewes, ImmutableArray<string> names)
    {
        var runs = names.SelectMany((c, i) => new[] { new Run(i > 0 ? ", " : "", Fount.Label), Who.Called(ewes[c].First(), Fount.Label) });
        return new Text([.. runs], Leading: 1.2);
    }

    private static TableRow SheetRow(Stationery stationery, string code, Element title, string where, int? leaves, int? issue, string? target)
    {
        Element codeText = Ink.Text(code, new TextStyle(Face.MonoBold, 11));
        return new TableRow(
            [
                Ink.Cell(target is null ? codeText : new Link(codeText, target)),
                Ink.Cell(title),
                Ink.Cell(where, Fount.Label),
                Figure(leaves, "-"),
                Figure(issue, stationery.Language.Say("below")),
                Ink.Cell(Ink.Tick(stationery.TableTick)),
            ],
            stationery.TableTick + 5,
            Name: code);
    }

    private static TableCell Figure(int? figure, string none) =>
        Ink.Cell(figure is { } n ? n.ToString(CultureInfo.InvariantCulture) : none, figure is null ? Fount.Label : Fount.Body, TextAlign.Centre);

    private static string Where(Sheet sheet, Language language) => sheet.Use switch
    {
        SheetUse.Pinned => language.Say("on the wall"),
        SheetUse.CutUp => language.Say("cut, in a card box"),
        SheetUse.Clipboard => language.Say("on the clipboard"),
        _ => language.Say("in the binder"),
    };
}
