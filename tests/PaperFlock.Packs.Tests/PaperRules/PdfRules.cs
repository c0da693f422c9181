using PaperFlock.Sheets.Tests.PaperRules;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Packs.Tests.PaperRules;

/// <summary>Rules of the file and of letters as their outlines draw them; the table of paper rules goes before these.</summary>
internal static class PdfRules
{
    // Capitals and figures without a curve at top or foot, which would stand out a little.
    private const string Flat = "BDEFHIKLMNPRTXYZ147";

    public static readonly ImmutableArray<PdfRule> OfAPage =
    [
        new("A page is called by its page code", "ISO 32000-1, 12.4.2", MisLabelled),
        new("The paper is as large as the page was laid out for", "Own rule: nothing is scaled on its way to paper", OnOtherPaper),
        new("Everything is opaque black, or white in a drawing, in DeviceGray", "Own rule: printed on a black printer, nothing may depend on a colour or a tint", s => s.Page.Colours),
        new("Every font is in the file", "ISO 19005-1 asks the same of files to keep (from memory): no printer may choose another face for a tag", s => s.Page.NotEmbedded),
        new("Every text can be read back as it was written", "ISO 32000-1, 9.10: to search a pack, or have it read aloud", Unreadable),
        new("No capital or figure lower than that of 9 pt, 2.1 mm; on control lines of 8.5 pt, on cards 7.5 pt",
            "As the rule on type size, measured on the outlines: 16 minutes of arc at 0.4 m (ISO 9241-3) is 1.9 mm", CapitalsTooLow),
        new("No outline of a letter touches one of another text", "Own rule", OutlinesTouching),
        new("No outline of a letter touches a line", "Own rule", OutlinesOnALine),
    ];

    private static IEnumerable<string> MisLabelled(PdfSide side)
    {
        if (side.Label != side.Side.Side.Label)
        {
            yield return $"{side.Label}, not {side.Side.Side.Label}";
        }

        if (!side.Label.StartsWith(side.Side.Sheet.Code, StringComparison.Ordinal))
        {
            yield return $"{side.Label} does not begin with {side.Side.Sheet.Code}";
        }
    }

    private static IEnumerable<string> OnOtherPaper(PdfSide side)
    {
        var (paper, wanted) = (side.Page.Ink.Paper, side.Side.Side.Page.Paper);
        if (paper != wanted)
        {
            yield return $"{paper}, not {wanted}";
        }
    }

    private static IEnumerable<string> Unreadable(PdfSide side)
    {
        var read = side.Page.Ink.Words.CountBy(w => w.Text).ToDictionary(StringComparer.Ordinal);
        var meant = PageInk.AsPrinted(side.Side.Side.Page).Words.CountBy(w => w.Text.Replace("\u00ad", "", StringComparison.Ordinal)).ToDictionary(StringComparer.Ordinal);
        return meant.Where(m => read.GetValueOrDefault(m.Key) != m.Value).Select(m => $"“{m.Key}” {read.GetValueOrDefault(m.Key)} times, not {m.Value}")
            .Concat(read.Keys.Where(k => !meant.ContainsKey(k)).Select(k => $"“{k}” was not meant"));
    }

    private static IEnumerable<string> CapitalsTooLow(PdfSide side)
    {
        var control = side.Page.Ink.Words.Where(side.Side.IsControlLine).ToArray();
        foreach (var run in side.Page.Glyphs.Where(g => g.Character.Length == 1 && Flat.Contains(g.Character[0], StringComparison.Ordinal)).GroupBy(g => g.Run))
        {
            var lowest = run.MinBy(Height)!;
            var points = !control.Any(c => c.All.Contains(lowest.Box.MiddleX, lowest.Box.MiddleY)) ? 9 : side.Side.IsCards ? 7.5 : 8.5;
            if (Height(lowest) < (points * PageInk.CapitalOfEm) - 0.06)
            {
                yield return $"{lowest.Character} is {Height(lowest) / PointsPerMillimetre:0.00} mm high at {At(lowest.Box)}";
            }
        }
    }

    /// <summary>Flat letters are higher than wide or as wide as high, whichever way they are turned; only their height is one of few figures.</summary>
    private static double Height(Glyph glyph)
    {
        var (a, b) = (glyph.Box.Height, glyph.Box.Width);
        var capital = glyph.Style.Size * PageInk.CapitalOfEm;
        return Math.Abs(a - capital) <= Math.Abs(b - capital) ? a : b;
    }

    private static IEnumerable<string> OutlinesTouching(PdfSide side)
    {
        var glyphs = side.Page.Glyphs.Where(g => !g.IsBlank).OrderBy(g => g.Box.Top).ToArray();
        for (var i = 0; i < glyphs.Length; i++)
        {
            for (var j = i + 1; j < glyphs.Length && glyphs[j].Box.Top < glyphs[i].Box.Bottom; j++)
            {
                if (glyphs[i].Run != glyphs[j].Run && glyphs[i].Box.Overlaps(glyphs[j].Box))
                {
                    yield return $"“{glyphs[i].Character}” and “{glyphs[j].Character}” at {At(glyphs[j].Box)}";
                }
            }
        }
    }

    private static IEnumerable<string> OutlinesOnALine(PdfSide side)
    {
        var strokes = side.Page.Ink.Strokes;
        return side.Page.Glyphs.Where(g => !g.IsBlank && (strokes.Any(s => s.Crosses(g.Box)) || side.Page.Ink.Fills.Any(g.Box.Overlaps)))
            .Select(g => $"“{g.Character}” of “{TextOf(side, g)}” at {At(g.Box)}");
    }

    private static string TextOf(PdfSide side, Glyph glyph) => string.Concat(side.Page.Glyphs.Where(g => g.Run == glyph.Run).Select(g => g.Character));

    private static string At(Area area) => $"{area.Left / PointsPerMillimetre:0.0}, {area.Top / PointsPerMillimetre:0.0} mm";

    /// <summary>Everything on any page that breaks one of these or one of the paper rules.</summary>
    public static ImmutableArray<BrokenRule> Broken(PrintedPack pack) =>
    [
        .. Rules.Broken(pack.InHand),
        .. pack.Sides.SelectMany(side => OfAPage.SelectMany(rule =>
            rule.Broken(side).Select(what => new BrokenRule(side.Side.Sheet.Kind, side.Side.Side.Label, rule.Name, what)))),
        .. OutlineAstray(pack).Select(what => new BrokenRule("pack", pack.InHand.Pack.Id, "Each line of the outline leads to the page it names", what)),
    ];

    /// <summary>On a card a long name is broken over lines.</summary>
    private static bool IsFirstLineOf(string title, string text) => text.Trim() is { Length: > 8 } first && title.StartsWith(first + " ", StringComparison.Ordinal);

    /// <summary>A sheet's line leads to its first page, that of a card to a page with her words on it, that of several sheets to the first of them.</summary>
    public static IEnumerable<string> OutlineAstray(PrintedPack pack)
    {
        var codes = pack.InHand.Pack.Sheets.Select(s => s.Code).ToArray();
        for (var i = 0; i < pack.Outline.Length; i++)
        {
            var line = pack.Outline[i];
            var side = pack.Sides[line.Page];
            var isThere = codes.Any(line.Names)
                ? line.Names(side.Side.Sheet.Code) && side.Side.Index == 0
                : i + 1 < pack.Outline.Length && pack.Outline[i + 1].Level > line.Level
                    ? pack.Outline[i + 1].Page == line.Page
                    : side.Page.Ink.Words.Any(w => w.Text.Contains(line.Title, StringComparison.Ordinal) || IsFirstLineOf(line.Title, w.Text));
            if (!isThere)
            {
                yield return $"“{line.Title}” leads to {side.Label}";
            }
        }

        foreach (var code in codes.Where(c => pack.Outline.Count(l => l.Names(c)) != 1))
        {
            yield return $"{code} is not once in the outline";
        }
    }
}
