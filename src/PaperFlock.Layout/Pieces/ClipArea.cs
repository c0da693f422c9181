namespace PaperFlock.Layout.Pieces;

/// <summary>
/// An area to cut to: closed at its left and upper edge, open at the others, so that areas side by side never share a line.
/// At the far edge of what is cut it is closed too, or a line there would be in no area.
/// </summary>
/// <param name="ClosedRight">The area reaches the far edge on the right; <paramref name="ClosedBottom"/> at the bottom.</param>
internal readonly record struct ClipArea(double Left, double Top, double Right, double Bottom, bool ClosedRight, bool ClosedBottom)
{
    public bool Contains(double x, double y) => Within(x, Left, Right, ClosedRight) && Within(y, Top, Bottom, ClosedBottom);

    /// <summary>Whether a rectangle lies wholly inside; touching the edges is inside.</summary>
    public bool Holds(Bounds box) =>
        box.X >= Left - Space.Epsilon && box.Y >= Top - Space.Epsilon && box.Right <= Right + Space.Epsilon && box.Bottom <= Bottom + Space.Epsilon;

    /// <summary>The part of a straight line from a to b that lies inside, by the method of Liang and Barsky (ACM Transactions on Graphics 3, 1984).</summary>
    /// <param name="from">Where it begins as a fraction of the way from a to b; <paramref name="to"/> where it ends.</param>
    /// <returns>Whether any of it does.</returns>
    public bool Cut((double X, double Y) a, (double X, double Y) b, out double from, out double to)
    {
        (from, to) = (0, 1);
        return Narrow(a.X, b.X, Left, Right, ClosedRight, ref from, ref to) && Narrow(a.Y, b.Y, Top, Bottom, ClosedBottom, ref from, ref to) && from < to;
    }

    public Bounds Cut(Bounds box)
    {
        double left = Math.Max(box.X, Left), top = Math.Max(box.Y, Top);
        return new Bounds(left, top, Math.Min(box.Right, Right) - left, Math.Min(box.Bottom, Bottom) - top);
    }

    private static bool Within(double at, double low, double high, bool closed) => at >= low && (at < high || (closed && at <= high + Space.Epsilon));

    private static bool Narrow(double a, double b, double low, double high, bool closed, ref double from, ref double to)
    {
        var run = b - a;
        if (run == 0)
        {
            return Within(a, low, high, closed);
        }

        var enters = ((run > 0 ? low : high) - a) / run;
        var leaves = ((run > 0 ? high : low) - a) / run;
        from = Math.Max(from, enters);
        to = Math.Min(to, leaves);
        return true;
    }
}
