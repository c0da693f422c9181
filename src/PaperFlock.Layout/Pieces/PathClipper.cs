namespace PaperFlock.Layout.Pieces;

/// <summary>Cuts paths to an area.</summary>
internal static class PathClipper
{
    /// <summary>The stretches of a stroke that lie inside, each an open path, so that corners inside the area stay joined.</summary>
    public static IEnumerable<PathItem> CutStroke(PathItem path, ClipArea area)
    {
        var points = path.Points;
        var stretches = new List<List<(double X, double Y)>>();
        var segments = path.Closed ? points.Length : points.Length - 1;
        var joins = false;
        for (var i = 0; i < segments; i++)
        {
            var (a, b) = (points[i], points[(i + 1) % points.Length]);
            if (!area.Cut(a, b, out var from, out var to))
            {
                joins = false;
                continue;
            }

            if (!joins || from > 0)
            {
                stretches.Add([Clipper.Along(a, b, from)]);
            }

            stretches[^1].Add(Clipper.Along(a, b, to));
            joins = to == 1;
        }

        // A closed path that begins inside the area goes on where it ended.
        if (path.Closed && joins && stretches.Count > 1 && stretches[0][0] == points[0])
        {
            stretches[^1].AddRange(stretches[0].Skip(1));
            stretches.RemoveAt(0);
        }

        return stretches.Select(stretch => new PathItem([.. stretch], Closed: false, path.Thickness));
    }

    /// <summary>
    /// The part of a filled polygon inside, by the method of Sutherland and Hodgman (Communications of the ACM 17, 1974): one edge of the area after another.
    /// Parts of a hollow polygon may stay joined along the area's edge by a strip without area.
    /// </summary>
    public static ImmutableArray<(double X, double Y)> CutFill(ImmutableArray<(double X, double Y)> points, ClipArea area)
    {
        points = CutSide(points, point => point.X - area.Left);
        points = CutSide(points, point => area.Right - point.X);
        points = CutSide(points, point => point.Y - area.Top);
        return CutSide(points, point => area.Bottom - point.Y);
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
                kept.Add(Clipper.Along(a, b, from / (from - to)));
            }
        }

        return kept.DrainToImmutable();
    }
}
