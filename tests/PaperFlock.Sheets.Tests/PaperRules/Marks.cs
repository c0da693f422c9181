using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>Control lines, check bars and tick boxes.</summary>
internal static class Marks
{
    public static IEnumerable<string> WithoutControlLine(SideInPack side)
    {
        var lines = side.Ink.Words.Where(side.IsControlLine).Select(w => w.Text).ToArray();
        if (side.IsCards && !side.IsBlankBack)
        {
            // One for each card: the front of the leaf says how many there are.
            var leaf = side.Sheet.Sides[side.IsFront ? side.Index : side.Index - 1];
            var which = side.IsFront ? side.Says.Front : side.Says.Back;
            var joined = string.Join(' ', lines);
            var good = Math.Min(Times(joined, $"{side.Pack.Id} CARD-"), Times(joined, $" {which} · {side.Says.CardIssue}"));
            return good == leaf.Contents.Length ? [] : [$"{good} of {leaf.Contents.Length} cards have one"];
        }

        var all = string.Join(" · ", lines);
        var number = side.Side.Page.Number;
        var code = side.Side.Label.Split(' ')[0];
        string[] wanted = side.IsBlankBack
            ? [$"{side.Pack.Id} {code} {side.Says.Back}", side.Says.CardIssue]
            : [$"{side.Pack.Id} {code} {number.Number}/{number.Of}", side.Says.Issue, all.Contains(side.Says.ReplacesNone, StringComparison.Ordinal) ? side.Says.ReplacesNone : side.Says.Replaces, side.Says.NotAfter];
        return wanted.Where(w => !all.Contains(w, StringComparison.Ordinal)).Select(w => $"“{w}” is not in “{all}”");
    }

    private static int Times(string text, string part) => text.Split(part).Length - 1;

    public static IEnumerable<string> WithoutCheckBar(SideInPack side)
    {
        if (side.Sheet.Kind != "register" || side.Index > 0)
        {
            return [];
        }

        var ends = side.Ink.Strokes.Where(s => s.IsUpright && s.Area.Height < Mm(4)).ToArray();
        var bar = side.Ink.Strokes.Any(s => s.IsLevel && Math.Abs(s.Area.Width - Mm(100)) < Mm(0.05)
            && Ends(ends, s.Area.Left, s) && Ends(ends, s.Area.Right, s));
        var words = side.Ink.Words.Any(w => w.Text.Contains("100", StringComparison.Ordinal) && side.Says.CheckBar.StartsWith(w.Text, StringComparison.Ordinal));
        return bar && words ? [] : [bar ? "no words say what it is for" : "there is none"];
    }

    private static bool Ends(Stroke[] ends, double x, Stroke bar) =>
        ends.Any(e => Math.Abs(e.Area.MiddleX - x) < Mm(0.05) && e.Area.Top < bar.Area.Top && bar.Area.Bottom < e.Area.Bottom);

    public static IEnumerable<string> TickBoxesTooSmall(SideInPack side)
    {
        var outOfDoors = side.IsCards || side.Sheet.Use == SheetUse.Clipboard;
        var least = Mm(side.Print.Gloves ? 8 : outOfDoors ? 6 : 5);
        return side.Ink.Boxes.Where(b => IsTickBox(b.Item, b.Area) && b.Area.Width < least - 0.05)
            .Select(b => $"one of {b.Area.Width / PointsPerMillimetre:0.0} mm at {b.Area.Left:0}, {b.Area.Top:0} pt");
    }

    /// <summary>An empty square as wide as a fingernail with an outline of 1 pt; the heavier ones on the planner are not ticked.</summary>
    private static bool IsTickBox(Layout.Pieces.RectItem item, Area area) =>
        Math.Abs(item.Width - item.Height) < 0.05 && item.Thickness is > 0.9 and < 1.1 && area.Width < Mm(15);
}
