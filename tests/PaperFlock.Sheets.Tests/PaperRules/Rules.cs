namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>
/// The rules of the printed page, each with the source of its figure. "Own rule" is a decision of this project; it rests on the
/// source named after it where there is one, and is no standard.
/// </summary>
internal static class Rules
{
    public static readonly ImmutableArray<PaperRule> OfASide =
    [
        new("No ink within 6 mm of an edge of the paper",
            "Own rule. Page printers guarantee all but 4 mm (Konica Minolta 2490MF manual, p. 58) to 5 mm (BarTender help 2019, “unprintable region”)",
            Edges.NearAnEdge),
        new("No ink within 12 mm of the foot as the page goes through the printer; on a page on its side, of the left end too, which is the leaf's foot",
            "Own rule; from memory: some inkjet printers lose 12 mm or more at the trailing edge",
            Edges.NearTheFoot),
        new("Nothing but hole ticks within 20 mm of the binding edge: left on fronts, right on backs; at the head of a front on its side, at the foot of its back",
            "ISO 838:1974: centres 12 ± 1 mm in, holes 6 ± 0.5 mm across, so they reach 16.3 mm in; the rest own rule",
            Edges.InTheBindingMargin),
        new("A tick 3 mm long at the height of each hole, centre to centre, and none elsewhere",
            "ISO 838:1974: two holes 80 ± 0.5 mm apart, symmetrical; four-hole (“888”): two more 80 mm outside them; three-hole: 108 mm (4 1/4 in) apart, North American use",
            Edges.HoleTicksAmiss),
        new("No type under 9 pt, but control lines: 8.5 pt, on cards 7.5 pt",
            "Own rule. ND ITD forms standards: 8 pt or more; 16 minutes of arc at 0.4 m (ISO 9241-3) is a capital of 1.9 mm, 8 pt in these faces",
            Type.TooSmall),
        new("No two texts overlap, from their baselines to their x-heights, with 0.25 pt allowed", "Own rule", Type.Overlapping),
        new("No ruled line runs through the capitals of a text, with 0.4 pt allowed",
            "Own rule. ABBYY FlexiCapture 12, “requirements for elements”: labels clear of other ink", Type.Crossed),
        new("A tag is always whole, and in the mono face; nothing else is mono but page codes and control lines",
            "Own rule. ISMP, “Misidentification of Alphanumeric Symbols”: like characters read as each other are a proven cause of error",
            Tags.NotWholeOrNotMono),
        new("A tag has the name of its ewe beside it, within 22 mm up or down",
            "Own rule: two marks that do not depend on each other, as ISMP asks for names and numbers", Tags.WithoutName),
        new("A control line on every side: pack, page code, issue and day; and page n of N, what it replaces and its last day but on cards and blank backs",
            "Transport Canada, SOP chapter 1 section 3 (1815): amendment status at the foot of each page; SSA POMS NL 10608.130: page x of x and an identifier on every page",
            Marks.WithoutControlLine),
        new("A check bar of exactly 100 mm on the first side of the register, with 0.05 mm allowed",
            "Own rule: “fit to page” moves hole ticks and cards (rasterbator.pics, “Actual Size vs Fit to Page”)", Marks.WithoutCheckBar),
        new("Tick boxes 8 mm for gloves; else 6 mm out of doors, 5 mm at the table",
            "Own rule within the 4 to 10 mm of LightComp Tests Checker, “Frames”", Marks.TickBoxesTooSmall),
        new("Empty cells and ruled lines to write on are 11 mm high for gloves, on the round log 10 mm; else 9 mm out of doors, 7 mm at the table",
            "Own rule; 7 mm where a day and two figures are all that is written, so that all who lamb stand on a page; from the 8.5 mm row of forms practice (three lines to the inch) and the 7.1 mm of college ruled paper, with more for a cold or gloved hand", WriteIn.TooLow),
        new("Bold on the planner is for jobs alone", "Own rule: what is to be done is seen from across the room", Planner.BoldAmiss),
    ];

    public static readonly ImmutableArray<PackRule> OfAPack =
    [
        new("The back of each card lies behind its front when the sheet is turned on the edge the printer turns it on",
            "imba.missouri.edu, “How to print double sided”; badgebuilder manual, “Mirror Back Page Layout”", Cards.BacksElsewhere),
        new("Nothing on the back of a card within 4 mm of where it is cut",
            "Own rule: 1 mm each way by Canon GP160 service manual p. 478 for automatic duplex, 3 mm from memory by hand", Cards.BacksNearTheCut),
        new("Every ewe of the file has exactly one card", "Own rule", Cards.NotOneEach),
        new("The register lists every sheet once, with the leaves it has",
            "ISO 9001:2015 7.5.3: distribution and version control; a master list (ISO Helpline, 4.2.3)", RegisterList.Wrong),
        new("No page code and no page label stands twice",
            "Central Bank of Bahrain rulebook UG-3.1.6A: insertions take numbers of their own", Codes.Twice),
        new("Every ewe that is to lamb, or has, has one row on who lambs when, and no other ewe has one", "Own rule", LikeliestDays.NotOneRowEach),
        new("A ewe has the same likeliest day on who lambs when, on the planner and on her card", "Own rule: one fact, one form", LikeliestDays.Apart),
        new("A sheet begins on the front of a leaf, and fronts and backs take turns", "Own rule: one leaf can be replaced alone (US Navy, NAVEDTRA 14292, “Updating Publications”)", Codes.LeavesAmiss),
    ];

    /// <summary>Everything that breaks a rule.</summary>
    public static ImmutableArray<BrokenRule> Broken(PackInHand pack) =>
    [
        .. pack.Sides.SelectMany(side => OfASide.SelectMany(rule =>
            rule.Broken(side).Select(what => new BrokenRule(side.Sheet.Kind, side.Side.Label, rule.Name, what)))),
        .. OfAPack.SelectMany(rule => rule.Broken(pack).Select(what => new BrokenRule("pack", pack.Pack.Id, rule.Name, what))),
    ];
}
