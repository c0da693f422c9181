using System.Collections.Immutable;

namespace PaperFlock.Layout.Pieces;

/// <summary>Cuts paths to a window.</summary>
internal static class PathCutter
{
    /// <summary>The stretches of a stroke that lie inside, each an open path, so that corners inside the window stay joined.</summary>
    public static IEnumerable<PathItem> CutStroke(PathItem path, ClipWindow window)
    {
        var points = path.Points;
        var stretches = new List<List<(double X, double Y)>>();
        var segments = path.Closed ? points.Length : points.Length - 1;
        var joins = false;
        for (var i = 0; i < segments; i++)
        {
            var (a, b) = (points[i], points[(i + 1) % points.Length]);
            if (!window.Cut(a, b, out var from, out var to))
            {
                joins = false;
                continue;
            }

            if (!joins || from > 0)
            {
                stretches.Add([Windower.Along(a, b, from)]);
            }

            stretches[^1].Add(Windower.Along(a, b, to));
            joins = to == 1;
        }

        // A closed path that begins inside the window goes on where it ended.
        if (path.Closed && joins && stretches.Count > 1 && stretches[0][0] == points[0])
        {
            stretches[^1].AddRange(stretches[0].Skip(1));
            stretches.RemoveAt(0);
        }

        return stretches.Select(stretch => new PathItem([.. stretch], Closed: false, path.Thickness));
    }

    /// <summary>
    /// The part of a filled polygon inside, by the method of Sutherland and Hodgman (Communications of the ACM 17, 1974): one edge of the window after another.
    /// Parts of a hollow polygon may stay joined along the window's edge by a strip without area.
    /// </summary>
    public static ImmutableArray<(double X, double Y)> CutFill(ImmutableArray<(double X, double Y)> points, ClipWindow window)
    {
        points = CutSide(points, point => point.X - window.Left);
        points = CutSide(points, point => window.Right - point.X);
        points = CutSide(points, point => point.Y - window.Top);
        return CutSide(points, point => window.Bottom - point.Y);
    }

    /// <param name="inside">How far a point is on the inner side of the edge.</param>
    private static ImmutableArray<(double X, double Y)> CutSide(ImmutableArray<(double X, double Y)> points, Func<(double X, double Y), double> inside)
    {
        var kept = ImmutableArray.CreateBuilder<(double X, double Y)>(points.Length + 2);
        for (var i = 0; i < points.Length; i++)
        {
            var (a, b) = (points[i], points[(i + 1) % points.Length]);
            double from = inside(a), to = inside(b);
            if (from >= 0)
            {
                kept.Add(a);
            }

            if ((from > 0 && to < 0) || (from < 0 && to > 0))
            {
                kept.Add(Windower.Along(a, b, from / (from - to)));
            }
        }

        return kept.DrainToImmutable();
    }
}
