using PaperFlock.Layout.Pages;
using PaperFlock.Pdf;
using PaperFlock.Sheets.Theme;
using PaperFlock.Sheets.WallPlanner;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>A planner cut up and glued together again.</summary>
internal static class Tiles
{
    private const double OverlapMm = 12;

    public static IEnumerable<string> TextAcrossACut(SideInPack side)
    {
        if (side.Tiles is not { } scheme)
        {
            yield break;
        }

        var tile = Tile.Of(scheme, side.Index, side.Print.Duplex == Flocks.Duplex.SingleSided);
        foreach (var words in side.Ink.Words.Where(w => tile.Window.Overlaps(w.Core)))
        {
            var area = words.All.Shrunk(0.25);
            if (tile.Cuts.Any(c => c.Overlaps(area)))
            {
                yield return $"“{words.Text}”";
            }
        }
    }

    public static IEnumerable<string> OverlapAmiss(PackInHand pack)
    {
        var sides = pack.Sides.Where(s => s.Tiles is not null).ToArray();
        if (sides.Length == 0)
        {
            return [];
        }

        var scheme = sides[0].Tiles!;
        var single = sides[0].Print.Duplex == Flocks.Duplex.SingleSided;
        var placed = sides.Select(s => (s.Ink, Tile: Tile.Of(scheme, s.Index, single))).ToArray();
        return [.. Differences(placed), .. Lost(pack, scheme, placed)];
    }

    /// <summary>What one tile shows in the 12 mm it shares, the other must show at the same place.</summary>
    private static IEnumerable<string> Differences((PageInk Ink, Tile Tile)[] placed)
    {
        foreach (var (ink, tile) in placed)
        {
            foreach (var (otherInk, other) in placed.Where(p => p.Tile != tile && p.Tile.Poster == tile.Poster))
            {
                var shared = tile.Shared(other);
                if (shared.Width <= 0 || shared.Height <= 0)
                {
                    continue;
                }

                if (Math.Abs(Math.Min(shared.Width, shared.Height) - Mm(OverlapMm)) > Mm(0.05))
                {
                    yield return $"tiles share {Math.Min(shared.Width, shared.Height) / PointsPerMillimetre:0.00} mm";
                }

                var there = otherInk.Words.Select(w => (w.Text, Area: other.OnPoster(w.Core))).ToArray();
                foreach (var words in ink.Words.Where(w => tile.Window.Overlaps(w.Core)))
                {
                    var on = tile.OnPoster(words.All);
                    var core = tile.OnPoster(words.Core);

                    // Room for the line it stands on: what has less is shown by the tile it lies on after the cut.
                    var inside = shared.Shrunk(1 + (0.2 * words.Style.Size));
                    if (inside.Contains(on.Left, on.Top) && inside.Contains(on.Right, on.Bottom)
                        && !there.Any(t => t.Text == words.Text && Math.Abs(t.Area.Left - core.Left) < 0.05 && Math.Abs(t.Area.Top - core.Top) < 0.05))
                    {
                        yield return $"“{words.Text}” is in the overlap of one tile and not of the other";
                    }
                }

                // Level lines that run on over the seam must meet.
                var lines = LevelLinesAcross(ink, tile, shared);
                var otherLines = LevelLinesAcross(otherInk, other, shared);
                if (lines.Length != otherLines.Length || lines.Zip(otherLines).Any(p => Math.Abs(p.First - p.Second) > 0.05))
                {
                    yield return $"{lines.Length} lines run over the seam on one tile, {otherLines.Length} on the other, or they do not meet";
                }
            }
        }
    }

    private static double[] LevelLinesAcross(PageInk ink, Tile tile, Area shared) =>
    [
        .. ink.Strokes.Where(s => s.IsLevel && s.Thickness >= 0.5 && tile.Window.Contains(s.Area.MiddleX, s.Area.MiddleY)).Select(s => tile.OnPoster(s.Area))
            .Where(a => a.Left <= shared.Left + 1.5 && a.Right >= shared.Right - 1.5 && shared.Shrunk(1).Contains(shared.MiddleX, a.MiddleY))
            .Select(a => a.MiddleY).Order(),
    ];

    /// <summary>Words of the planner in one piece that are on no tile.</summary>
    private static IEnumerable<string> Lost(PackInHand pack, TileScheme scheme, (PageInk Ink, Tile Tile)[] placed)
    {
        var context = new SheetContext(pack.Plan, FontLibrary.Measurer);
        var design = new PageDesign(scheme.Live, Layout.Edges.None, Layout.Edges.None, null, null, null, 0);
        var pages = PlannerPoster.ToCut(context, scheme.Live, scheme.SeamX, scheme.SeamY, TypeScale.CapAtOneMetre, TypeScale.LeastCapOnTiles)
            .SelectMany(poster => Paginator.Paginate(poster, design, context.Layout, PageSide.Front, singleSided: true)).ToArray();
        for (var i = 0; i < pages.Length; i++)
        {
            var shown = placed.Where(p => p.Tile.Poster == i)
                .SelectMany(p => p.Ink.Words.Select(w => (w.Text, Area: p.Tile.OnPoster(w.Core))))
                .ToLookup(w => w.Text, w => w.Area, StringComparer.Ordinal);
            foreach (var words in PageInk.AsPrinted(pages[i]).Words)
            {
                if (!shown[words.Text].Any(a => Math.Abs(a.Left - words.Core.Left) < 0.05 && Math.Abs(a.Top - words.Core.Top) < 0.05))
                {
                    yield return $"“{words.Text}” is on no tile";
                }
            }
        }
    }

    /// <summary>Where a tile stands on the planner, worked out from the paper: 6 mm round it, 12 mm at the foot, a strip at its outer edge of 11 mm, on an upright tile 13 mm, and more only where a language needs it.</summary>
    private sealed record Tile(int Poster, int Row, int Column, Area Window, double OffsetX, double OffsetY, Area[] Cuts)
    {
        public static Tile Of(TileScheme scheme, int sideIndex, bool singleSided)
        {
            var index = singleSided ? sideIndex : sideIndex / 2;
            var each = scheme.Across * scheme.Down;
            var (poster, place) = (index / each, index % each);
            var (row, column) = (place / scheme.Across, place % scheme.Across);
            var strip = Math.Max(Mm(scheme.Tile.Height > scheme.Tile.Width ? 13 : 11), scheme.Strip);
            var (width, height) = (scheme.Tile.Width - (2 * Mm(6)), scheme.Tile.Height - Mm(6) - Mm(12) - strip);
            var (left, top) = (Mm(6), Mm(6) + (row == 0 ? strip : 0));
            var window = new Area(left, top, left + width, top + height);
            var half = Mm(OverlapMm / 2);
            const double line = 0.05;
            var cuts = new List<Area>();
            if (row > 0)
            {
                cuts.Add(new Area(left, top + half - line, window.Right, top + half + line));
            }

            if (row + 1 < scheme.Down)
            {
                cuts.Add(new Area(left, window.Bottom - half - line, window.Right, window.Bottom - half + line));
            }

            if (column > 0)
            {
                cuts.Add(new Area(left + half - line, top, left + half + line, window.Bottom));
            }

            if (column + 1 < scheme.Across)
            {
                cuts.Add(new Area(window.Right - half - line, top, window.Right - half + line, window.Bottom));
            }

            return new Tile(poster, row, column, window, (column * (width - Mm(OverlapMm))) - left, (row * (height - Mm(OverlapMm))) - top, [.. cuts]);
        }

        public Area OnPoster(Area area) => new(area.Left + OffsetX, area.Top + OffsetY, area.Right + OffsetX, area.Bottom + OffsetY);

        public Area Shared(Tile other)
        {
            var (a, b) = (OnPoster(Window), other.OnPoster(other.Window));
            return new Area(Math.Max(a.Left, b.Left), Math.Max(a.Top, b.Top), Math.Min(a.Right, b.Right), Math.Min(a.Bottom, b.Bottom));
        }
    }
}
