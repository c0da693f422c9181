using PaperFlock.Flocks;
using PaperFlock.Layout;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>Cards are printed four to a sheet, turned, printed again and cut.</summary>
internal static class Cards
{
    public static IEnumerable<string> BacksElsewhere(PackInHand pack)
    {
        var tags = pack.Plan.Ewes.Select(e => e.Ewe.Tag).ToHashSet(StringComparer.Ordinal);
        foreach (var (front, back) in Leaves(pack))
        {
            var paper = front.Printed.Paper;
            var fronts = Where(front.Printed, tags, (x, y) => (x, y), paper);
            var backs = Where(back.Printed, tags, (x, y) => Behind(pack, paper, x, y), paper);
            foreach (var (tag, place) in fronts)
            {
                if (!backs.TryGetValue(tag, out var behind) || behind != place)
                {
                    yield return $"{front.Side.Label}: the back of {tag} is not behind her front";
                }
            }

            if (fronts.Count != backs.Count)
            {
                yield return $"{front.Side.Label}: {fronts.Count} fronts and {backs.Count} backs";
            }
        }
    }

    public static IEnumerable<string> BacksNearTheCut(PackInHand pack)
    {
        foreach (var (_, back) in Leaves(pack))
        {
            var ink = back.Printed;
            var (x, y) = (ink.Paper.Width / 2, ink.Paper.Height / 2);
            var least = Mm(4);
            var areas = ink.Words.Select(w => (w.All, w.Text)).Concat(ink.Strokes.Select(s => (s.Area, "a line")));
            foreach (var (area, what) in areas.Where(a => area_near(a.Item1)))
            {
                yield return $"{back.Side.Label}: {what} at {area.Left:0}, {area.Top:0} pt";
            }

            bool area_near(Area a) => (a.Left < x + least && a.Right > x - least) || (a.Top < y + least && a.Bottom > y - least);
        }
    }

    public static IEnumerable<string> NotOneEach(PackInHand pack)
    {
        var shown = pack.Sides.Where(s => s.IsCards && s.IsFront)
            .SelectMany(s => s.Printed.Words).Where(w => w.IsMono).GroupBy(w => w.Text).ToDictionary(g => g.Key, g => g.Count());
        return pack.Plan.Ewes.Where(e => shown.GetValueOrDefault(e.Ewe.Tag) != 1).Select(e => $"{e.Ewe.Tag} has {shown.GetValueOrDefault(e.Ewe.Tag)}");
    }

    private static IEnumerable<(SideInPack Front, SideInPack Back)> Leaves(PackInHand pack) =>
        pack.Sides.Where(s => s.IsCards).Chunk(2).Select(pair => (pair[0], pair[1]));

    /// <summary>Which quarter of the sheet each tag stands in, seen from the front.</summary>
    private static Dictionary<string, (bool Right, bool Lower)> Where(PageInk ink, HashSet<string> tags, Func<double, double, (double X, double Y)> seen, Size paper)
    {
        var places = new Dictionary<string, (bool, bool)>(StringComparer.Ordinal);
        foreach (var words in ink.Words.Where(w => w.IsMono && tags.Contains(w.Text)))
        {
            var (x, y) = seen(words.Core.MiddleX, words.Core.MiddleY);
            places[words.Text] = (x > paper.Width / 2, y > paper.Height / 2);
        }

        return places;
    }

    /// <summary>The point of the front behind which a point of the back comes to lie.</summary>
    private static (double X, double Y) Behind(PackInHand pack, Size paper, double x, double y) =>
        pack.Plan.Flock.Print.Duplex == Duplex.ShortEdge ? (x, paper.Height - y) : (paper.Width - x, y);
}
