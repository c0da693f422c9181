using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>Room for a pencil.</summary>
internal static class WriteIn
{
    private const double Allowed = 0.1;

    /// <summary>Cells ruled on all four sides, and strips between two lines of the same length, that are empty.</summary>
    public static IEnumerable<string> TooLow(SideInPack side)
    {
        if (side.IsPlanner || side.IsBlankBack)
        {
            return [];
        }

        var outOfDoors = side.IsCards || side.Sheet.Use == SheetUse.Clipboard;
        var least = Mm(side.IsDue ? 7 : side.Print.Gloves ? side.Sheet.Kind == "log" ? 10 : 11 : outOfDoors ? 9 : 7) - Allowed;
        var control = side.Ink.Words.Where(side.IsControlLine).ToArray();
        return Cells(side.Ink).Where(c => c.Width > Mm(10) && !IsTickBox(c) && !IsLeftOver(side, c))
            .Concat(Strips(side.Ink).Where(s => !control.Any(c => c.All.Top > s.Top && c.All.Top < s.Bottom + 12)))
            .Where(a => a.Height < least && IsEmpty(side.Ink, a))
            .Select(a => $"{a.Height / PointsPerMillimetre:0.0} mm high at {a.Left / PointsPerMillimetre:0.0}, {a.Top / PointsPerMillimetre:0.0} mm");
    }

    private static bool IsTickBox(Area area) => Math.Abs(area.Width - area.Height) < 0.5;

    /// <summary>
    /// Nobody writes in the cells left over at the end of a list: of the weeks on a card's front, of the ewes that go into a pen, of ewes of whom there is nothing to remark, and
    /// on the roll and in the list of the register, where they live being said of all cards at once.
    /// </summary>
    private static bool IsLeftOver(SideInPack side, Area cell) => side.Sheet.Kind switch
    {
        "cards" => side.IsFront,
        "handover" or "register" => side.Ink.Words.Any(w => w.IsMono && cell.Top < w.Baseline && w.Baseline < cell.Bottom),
        "housing" => true,
        // Days of the chart are not written in.
        "due" => side.Ink.Words.Single(w => w.Text == "lambed").Core.Left - 30 > cell.Left,
        _ => false,
    };

    private static bool IsEmpty(PageInk ink, Area area)
    {
        var inside = area.Shrunk(2.5);
        return !ink.Words.Any(w => w.All.Overlaps(inside)) && !ink.Strokes.Any(s => s.Crosses(inside)) && !ink.Fills.Any(inside.Overlaps);
    }

    /// <summary>With the lines round them, so that a cell at the edge of a table counts as high as its row.</summary>
    private static IEnumerable<Area> Cells(PageInk ink)
    {
        var levels = ink.Strokes.Where(s => s.IsLevel).OrderBy(s => s.Area.MiddleY).ToArray();
        var uprights = ink.Strokes.Where(s => s.IsUpright).OrderBy(s => s.Area.MiddleX).ToArray();
        var found = new HashSet<Area>();
        foreach (var left in uprights)
        {
            var x = left.Area.MiddleX;
            foreach (var top in levels.Where(l => Along(l, x) && Down(left, l.Area.MiddleY)))
            {
                var y = top.Area.MiddleY;
                var right = uprights.FirstOrDefault(u => u.Area.MiddleX > x + 2 && Down(u, y));
                var bottom = levels.FirstOrDefault(l => l.Area.MiddleY > y + 2 && Along(l, x));
                if (right is not null && bottom is not null && Along(bottom, right.Area.MiddleX - 2) && Down(right, bottom.Area.MiddleY - 2))
                {
                    found.Add(new Area(x, Math.Round(top.Area.Top, 1), right.Area.MiddleX, Math.Round(bottom.Area.Bottom, 1)));
                }
            }
        }

        return found;
    }

    private static IEnumerable<Area> Strips(PageInk ink) => ink.Strokes
        .Where(s => s.IsLevel && s.Area.Width > Mm(30) && s.Thickness is > 0.4 and < 0.6)
        .GroupBy(s => (Math.Round(s.Area.Left), Math.Round(s.Area.Right)))
        .SelectMany(g =>
        {
            var lines = g.OrderBy(s => s.Area.MiddleY).ToArray();
            return lines.Zip(lines.Skip(1)).Where(p => p.Second.Area.MiddleY - p.First.Area.MiddleY > 3)
                .Select(p => new Area(p.First.Area.Left, p.First.Area.MiddleY, p.First.Area.Right, p.Second.Area.MiddleY));
        });

    /// <summary>Whether a level line runs on to the right of a place.</summary>
    private static bool Along(Stroke level, double x) => level.Area.Left <= x + 1 && x + 1 <= level.Area.Right;

    /// <summary>Whether an upright line runs on downwards from a height.</summary>
    private static bool Down(Stroke upright, double y) => upright.Area.Top <= y + 1 && y + 1 <= upright.Area.Bottom;
}
