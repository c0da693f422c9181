using PaperFlock.Layout;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>Ways to break the paper rules on a page of Hollin Bank's pack.</summary>
internal static class Spoils
{
    private static readonly TextStyle Body = new(Face.Text, 12);

    /// <summary>A page of a sheet, what is done to it, and the beginning of the rule that must notice.</summary>
    public static readonly (string Rule, string Code, Func<Page, Page> Spoil)[] Sides =
    [
        ("No ink within 6 mm of an edge", "JOBS", Add(Word("x", 3, 100))),
        ("No ink within 6 mm of an edge", "CARD", Add(new LineItem(Mm(100), Mm(5), Mm(110), Mm(5), 0.35))),
        ("No ink within 12 mm of the foot", "JOBS", Add(Word("x", Mm(100), Mm(287)))),
        ("Nothing but hole ticks within 20 mm", "JOBS", Add(Word("x", Mm(17), 100))),
        ("Nothing but hole ticks within 20 mm", "JOBS", p => p with { Content = new Piece(p.Paper, [new PieceItem(-Mm(1), 0, p.Content)]) }),
        ("A tick 3 mm long at the height of each hole", "JOBS", Add(new LineItem(Mm(7), Mm(60), Mm(10), Mm(60), 0.5))),
        ("A tick 3 mm long at the height of each hole", "JOBS", p => p with { Content = new Piece(p.Paper, [new PieceItem(0, Mm(0.2), p.Content)]) }),
        ("No type under 9 pt", "JOBS", Add(new TextItem(200, 700, "small print", Body with { Size = 8.5 }, 60))),
        ("No type under 9 pt", "CARD", Add(new TextItem(100, 300, "HB-2027 CARD", new TextStyle(Face.Mono, 7), 60))),
        ("No two texts overlap", "JOBS", Twice(0, -2)),
        ("No two texts overlap", "FEED-TWINS-1", Twice(20, 3)),
        ("No ruled line runs through the capitals", "JOBS", Strike(0.4)),
        ("No ruled line runs through the capitals", "STOR", Strike(0.25)),
        ("A tag is always whole", "CARD", Rewrite(IsTag, t => t with { Text = t.Text[..^2] })),
        ("A tag is always whole", "DUE", Rewrite(IsTag, t => t with { Style = Body })),
        ("A tag has the name of its ewe beside it", "CARD", Rewrite(t => t.Text == "Bracken", t => t with { Text = "Somebody" })),
        ("A control line on every side", "JOBS", Rewrite(t => t.Text.StartsWith("HB-2027 JOBS", StringComparison.Ordinal), t => t with { Text = t.Text.Replace("1/", "2/", StringComparison.Ordinal) })),
        ("A control line on every side", "CARD", Rewrite(t => t.Text.StartsWith("HB-2027 CARD", StringComparison.Ordinal), t => t with { Text = "HB-2027" })),
        ("A check bar of exactly 100 mm", "REG", Lines(l => Math.Abs(l.X2 - l.X1 - Mm(100)) < 0.1, l => l with { X2 = l.X2 - Mm(0.2) })),
        ("Tick boxes 8 mm for gloves", "JOBS", Add(new RectItem(300, 700, Mm(7), Mm(7), 1))),
        ("Empty cells and ruled lines", "JOBS", p => Add(new RectItem(300, 500, Mm(40), Mm(10), 0.5))(HeadOf(p))),
        ("Empty cells and ruled lines", "JOBS", p => Add(new LineItem(200, 500, 400, 500, 0.5))(Add(new LineItem(200, 500 + Mm(10), 400, 500 + Mm(10), 0.5))(HeadOf(p)))),
        ("Bold on the planner is for jobs alone", "WALL-28DEC", Rewrite(t => t.Text.Contains("Sorrel", StringComparison.Ordinal), t => t with { Style = t.Style with { Face = Face.TextBold } })),
        ("Bold on the planner is for jobs alone", "WALL-14DEC", Rewrite(t => t.Text == "4", t => t with { Style = t.Style with { Face = Face.TextBold } })),
    ];

    public static readonly (string Rule, Func<ComposedPack, ComposedPack> Spoil)[] Packs =
    [
        // As a long-edge pack is printed when the columns are not mirrored.
        ("The back of each card lies behind its front", On("CARD", 1, p => Moved(p, (x, y) => (x < p.Paper.Width / 2 ? p.Paper.Width / 2 : -p.Paper.Width / 2, 0)))),
        ("Nothing on the back of a card within 4 mm", On("CARD", 1, Add(Word("x", Mm(107), 100)))),
        ("Every ewe of the file has exactly one card", On("CARD", 0, Rewrite(t => t.Text == "ZZ 0123456 00101", t => t with { Text = "ZZ 0123456 00102" }))),
        ("The register lists every sheet once", p => p with { Sheets = p.Sheets.Add(p.Sheets[1] with { Code = "MORE" }) }),
        ("The register lists every sheet once", p => Sheet(p, "JOBS", s => s with { Sides = s.Sides.AddRange(s.Sides) })),
        ("No page code and no page label", p => p with { Sheets = p.Sheets.Add(p.Sheets[^1]) }),
        ("Every ewe that is to lamb", On("DUE", 0, Rewrite(t => t.Text == "ZZ 0123456 00101", t => t with { Text = "ZZ 0123456 00110" }))),
        ("A ewe has the same likeliest day", p => Other(p, "DUE")),
        ("A ewe has the same likeliest day", p => Other(p, "WALL-28DEC")),
        ("A ewe has the same likeliest day", p => Other(p, "CARD")),
        ("A sheet begins on the front of a leaf", p => Sheet(p, "JOBS", s => s with { Sides = s.Sides.RemoveAt(0) })),
    ];

    /// <summary>A sheet of a pack in which Bracken was marked a day later.</summary>
    private static ComposedPack Other(ComposedPack pack, string code) => Sheet(
        pack, code, _ => Composed.Of(Composed.SampleText("hollin-bank").Replace("marks: [2026-08-14]", "marks: [2026-08-15]", StringComparison.Ordinal), Composed.HollinBankDay).Pack.Sheets.Single(s => s.Code == code));

    private static Page HeadOf(Page page) => page with { Content = new Piece(page.Paper, [.. page.Content.Flatten().Items.Where(i => i is TextItem { Baseline: < 200 })]) };

    private static bool IsTag(TextItem text) => text.Text.StartsWith("ZZ 0123456 ", StringComparison.Ordinal);

    private static TextItem Word(string word, double x, double baseline) => new(x, baseline, word, Body, 7 * word.Length);

    private static Func<Page, Page> Add(Item item) => p => p with { Content = new Piece(p.Paper, [.. p.Content.Flatten().Items, item]) };

    /// <summary>Sets the first words of the page again, a little off.</summary>
    private static Func<Page, Page> Twice(double right, double down) => p =>
    {
        var first = p.Content.Flatten().Items.OfType<TextItem>().First();
        return Add(first with { X = first.X + right, Baseline = first.Baseline + down })(p);
    };

    /// <summary>Rules a line through the first words of the page, at a height in em above the baseline.</summary>
    private static Func<Page, Page> Strike(double em) => p =>
    {
        var first = p.Content.Flatten().Items.OfType<TextItem>().First();
        var y = first.Baseline - (em * first.Style.Size);
        return Add(new LineItem(first.X - 5, y, first.X + 20, y, 0.5))(p);
    };

    private static Func<Page, Page> Rewrite(Func<TextItem, bool> which, Func<TextItem, TextItem> how) =>
        Items(i => i is TextItem t && which(t) ? how(t) : i);

    private static Func<Page, Page> Lines(Func<LineItem, bool> which, Func<LineItem, LineItem> how) =>
        Items(i => i is LineItem l && which(l) ? how(l) : i);

    private static Func<Page, Page> Items(Func<Item, Item> how) => p => p with { Content = new Piece(p.Paper, [.. p.Content.Flatten().Items.Select(how)]) };

    private static Page Moved(Page page, Func<double, double, (double X, double Y)> by) => Items(i => i switch
    {
        TextItem t => t with { X = t.X + by(t.X, t.Baseline).X, Baseline = t.Baseline + by(t.X, t.Baseline).Y },
        _ => i,
    })(page);

    private static Func<ComposedPack, ComposedPack> On(string code, int side, Func<Page, Page> spoil) => pack => Sheet(
        pack, code, s => s with { Sides = s.Sides.SetItem(side, s.Sides[side] with { Page = spoil(s.Sides[side].Page) }) });

    private static ComposedPack Sheet(ComposedPack pack, string code, Func<Sheet, Sheet> how) =>
        pack with { Sheets = [.. pack.Sheets.Select(s => s.Code == code ? how(s) : s)] };
}
